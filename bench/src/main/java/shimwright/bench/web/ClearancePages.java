package shimwright.bench.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.Range;
import shimwright.rebuild.clearance.Decisions;
import shimwright.rebuild.clearance.Session;
import shimwright.rebuild.clearance.SharedShims;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Entry.PieceIn;
import shimwright.rebuild.job.Shop;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.Clearance.Method;
import shimwright.rebuild.unit.model.Clearance.Position;
import shimwright.rebuild.unit.model.Step.Phase;

/** The clearance session: trial pieces in, rounds read, pack chosen, closed and read again. */
final class ClearancePages {
    private final Desk desk;
    private final Door door;

    ClearancePages(Desk desk, Door door) {
        this.desk = desk;
        this.door = door;
    }

    void routes(RoutesConfig routes) {
        routes.get("/job/{job}/clearances", this::list);
        routes.get("/job/{job}/clearance/{clearance}", ctx -> session(ctx, List.of(), Map.of()));
        routes.post("/job/{job}/clearance/{clearance}/trial", this::trial);
        routes.post("/job/{job}/clearance/{clearance}/round", this::round);
        routes.post("/job/{job}/clearance/{clearance}/strike", this::strike);
        routes.post("/job/{job}/clearance/{clearance}/choose", this::choose);
        routes.post("/job/{job}/clearance/{clearance}/accept", this::accept);
    }

    private void list(Context ctx) {
        Pages.bench(ctx, desk, door).ifPresent(bench -> {
            List<Session> sessions = bench.unit().type().settingOrder().stream()
                    .map(id -> desk.session(bench, id))
                    .toList();
            door.show(
                    ctx,
                    "clearances",
                    door.page(ctx, "Clearances", "clearances", bench),
                    Map.of(
                            "sessions",
                            sessions,
                            "shared",
                            !SharedShims.groups(bench.unit()).isEmpty()));
        });
    }

    private static boolean has(Desk.OnBench bench, String clearance) {
        return bench.unit().type().clearances().stream().anyMatch(c -> c.id().equals(clearance));
    }

    private void session(Context ctx, List<Refusal> faults, Map<String, String> typed) {
        Optional<Desk.OnBench> found = Pages.bench(ctx, desk, door);
        if (found.isEmpty()) {
            return;
        }
        Desk.OnBench bench = found.get();
        String id = ctx.pathParam("clearance");
        if (!has(bench, id)) {
            Pages.lost(ctx, door, "This unit has no clearance " + id + ".");
            return;
        }
        Session session = desk.session(bench, id);
        Page page = door.page(ctx, session.clearance().name(), "clearances", bench, faults, typed);
        Map<String, Object> more = new LinkedHashMap<>();
        more.put("session", session);
        more.put("view", ClearanceView.of(bench, session, desk.shop(), page.show()));
        door.show(ctx, "clearance", page, more);
    }

    private interface Make {
        Entry.OfJob entry(Desk.OnBench bench, Session session, Form form);
    }

    private void keep(Context ctx, String said, boolean backToBuild, Make make) {
        Optional<Desk.OnBench> found = Pages.bench(ctx, desk, door);
        if (found.isEmpty()) {
            return;
        }
        Desk.OnBench bench = found.get();
        String id = ctx.pathParam("clearance");
        if (!has(bench, id)) {
            Pages.lost(ctx, door, "This unit has no clearance " + id + ".");
            return;
        }
        Pages.keep(
                ctx,
                desk,
                door,
                said,
                (job, form) -> make.entry(job, desk.session(job, id), form),
                this::session,
                (entry, form) -> backToBuild ? "/build" : "/clearance/" + id);
    }

    private static Phase phase(Form form, Session session) {
        String asked = form.raw("phase");
        for (Phase phase : Phase.values()) {
            if (phase.name().equalsIgnoreCase(asked)) {
                return phase;
            }
        }
        return session.current().phase();
    }

    private void trial(Context ctx) {
        keep(ctx, "Trial pieces kept", false, (bench, session, form) -> {
            Map<String, List<PieceIn>> pieces = new LinkedHashMap<>();
            Shop shop = desk.shop();
            for (Position position : session.clearance().positions()) {
                List<PieceIn> in = pieces(form, "in-" + position.id(), shop);
                if (in.isEmpty()) {
                    form.fault(position.where(), "no piece chosen", "Tap the pieces that are in for the trial");
                }
                pieces.put(position.id(), in);
            }
            return new Entry.PackIn(session.clearance().id(), phase(form, session), pieces);
        });
    }

    static List<PieceIn> pieces(Form form, String field, Shop shop) {
        return pieces(form, field, shop, "");
    }

    /** The pieces named in a field; those chosen for the job of this number already may be named again. */
    static List<PieceIn> pieces(Form form, String field, Shop shop, String number) {
        List<PieceIn> in = new ArrayList<>();
        for (String tag : new LinkedHashSet<>(List.of(form.raw(field).split("[\\s,]+")))) {
            if (tag.isBlank()) {
                continue;
            }
            Shop.Piece piece = shop.pieces().get(tag);
            if (piece == null) {
                form.fault("piece " + tag, "there is no such piece in the drawer", "Look at its tag");
            } else if (!piece.freeFor(number)) {
                form.fault("piece " + tag, "it is in unit " + piece.takenBy() + " or gone", "Take another piece");
            } else {
                in.add(new PieceIn(tag, piece.thickness(), piece.u()));
            }
        }
        return in;
    }

    private void round(Context ctx) {
        keep(ctx, "", false, (bench, session, form) -> {
            Clearance clearance = session.clearance();
            int fields = fields(clearance);
            double reach = session.gauge() == null ? 1 : session.gauge().range();
            Range range = new Range(clearance.method() == Method.SERIES ? -reach : 0, reach);
            List<Double> values = new ArrayList<>();
            List<String> typed = new ArrayList<>();
            for (int i = 1; i <= fields; i++) {
                values.add(form.quantity("v" + i, Kind.LENGTH, label(clearance, i), range));
                typed.add(form.raw("v" + i));
            }
            if (clearance.method() == Method.FEELER && form.sound() && values.get(0) > values.get(1)) {
                form.fault(
                        "feelers",
                        "the one that enters is thicker than the one that does not",
                        "Type the one that enters first");
            }
            return new Entry.RoundRead(
                    clearance.id(), phase(form, session), clearance.gauge(), values, String.join(" | ", typed));
        });
    }

    /** How many numbers one round has. */
    static int fields(Clearance clearance) {
        return clearance.method() == Method.FEELER ? 2 : clearance.indicators();
    }

    /** What the i-th number of a round is called, from 1. */
    static String label(Clearance clearance, int i) {
        return switch (clearance.method()) {
            case TRAVEL -> clearance.indicators() == 1 ? "travel" : "indicator " + i;
            case SERIES -> "reading";
            case PLACES -> "place " + i;
            case FEELER -> i == 1 ? "thickest feeler that enters" : "thinnest that does not enter";
        };
    }

    private void strike(Context ctx) {
        keep(
                ctx,
                "Struck; it stays in the record",
                false,
                (bench, session, form) -> new Entry.RoundStruck(
                        form.needed("round", "reading", "Say which reading"),
                        form.needed("reason", "reason", "Say why it does not count; it stays in the record")));
    }

    private void choose(Context ctx) {
        keep(ctx, "Pack kept. Fit it and read again", true, (bench, session, form) -> {
            List<PieceIn> pieces = pieces(form, "pack", desk.shop());
            Outcome<Entry.PackChosen> decision = Decisions.choose(session, pieces, form.text("because", "reason"));
            decision.refusals().forEach(r -> form.fault(r.place(), r.fact(), r.hint()));
            return decision instanceof Outcome.Ok<Entry.PackChosen> ok
                    ? ok.value()
                    : new Entry.NoteMade("clearance " + session.clearance().id(), "");
        });
    }

    private void accept(Context ctx) {
        keep(ctx, "Accepted", true, (bench, session, form) -> {
            Outcome<Entry.ClearanceAccepted> decision = Decisions.accept(session, form.text("because", "reason"));
            decision.refusals().forEach(r -> form.fault(r.place(), r.fact(), r.hint()));
            return decision instanceof Outcome.Ok<Entry.ClearanceAccepted> ok
                    ? ok.value()
                    : new Entry.NoteMade("clearance " + session.clearance().id(), "");
        });
    }
}
