package shimwright.bench.web.job;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shimwright.bench.desk.Desk;
import shimwright.bench.web.kit.ActReader;
import shimwright.bench.web.kit.Door;
import shimwright.bench.web.kit.Form;
import shimwright.bench.web.kit.Page;
import shimwright.bench.web.kit.Pages;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.act.Act;
import shimwright.rebuild.act.InspectActs;
import shimwright.rebuild.act.IntakeActs;
import shimwright.rebuild.act.ReuseActs;
import shimwright.rebuild.inspect.DamageWords;
import shimwright.rebuild.job.Entry;

/** Inspection, limit by limit and part by part: what was measured and seen, what becomes of it; with complaint and strip-down, whose strikes come here. */
public final class InspectPages {
    private static final String PARTS = "parts/";

    private final Desk desk;
    private final Door door;
    private final StripPages strip;
    private final ComplaintPages complaint;
    private final MarkPages marks;

    public InspectPages(Desk desk, Door door) {
        this.desk = desk;
        this.door = door;
        this.strip = new StripPages(desk, door);
        this.complaint = new ComplaintPages(desk, door);
        this.marks = new MarkPages(desk, door);
    }

    /** Lays the addresses of these pages. */
    public void routes(RoutesConfig routes) {
        complaint.routes(routes);
        strip.routes(routes);
        marks.routes(routes);
        routes.get("/job/{job}/inspect", ctx -> inspect(ctx, List.of(), Map.of()));
        routes.post("/job/{job}/inspect", ctx -> act(ctx, InspectActs.Inspect.class, this::inspect, this::onto));
        routes.post("/job/{job}/unread", ctx -> act(ctx, InspectActs.CannotRead.class, this::inspect, this::onto));
        routes.post(
                "/job/{job}/inspect/pieces",
                ctx -> act(ctx, InspectActs.InspectPieces.class, this::inspect, form -> further(ctx, form)));
        routes.post("/job/{job}/stakes", ctx -> act(ctx, ReuseActs.SayStakes.class, this::inspect, form -> "/inspect"));
        routes.post("/job/{job}/weigh", ctx -> act(ctx, ReuseActs.WeighPiece.class, this::weighed, this::weighedOn));
        routes.get("/job/{job}/parts", this::parts);
        routes.get("/job/{job}/parts/{part}", ctx -> part(ctx, List.of(), Map.of()));
        routes.post("/job/{job}/parts", ctx -> act(ctx, InspectActs.CheckPart.class, this::part, InspectPages::toPart));
        routes.post("/job/{job}/parts/judge", this::judgePart);
        routes.post("/job/{job}/observe", ctx -> act(ctx, IntakeActs.Observe.class, this::inspect, this::onto));
        routes.post("/job/{job}/judge", ctx -> act(ctx, InspectActs.Decide.class, this::inspect, this::onto));
        routes.post("/job/{job}/strike", ctx -> act(ctx, IntakeActs.Strike.class, this::struck, Pages::back));
    }

    private void act(Context ctx, Class<? extends Act.OfJob> type, Pages.Again again, Pages.Next next) {
        Pages.act(ctx, desk, door, type, again, next);
    }

    private void weighed(Context ctx, List<Refusal> faults, Map<String, String> typed) {
        if (typed.getOrDefault("limit", "").equals(Entry.Judged.PART)) {
            part(ctx, faults, typed);
        } else {
            inspect(ctx, faults, typed);
        }
    }

    private String weighedOn(Form form) {
        return form.raw("limit").equals(Entry.Judged.PART) ? toPart(form) : onto(form);
    }

    /** A part itself is judged, whatever was found on it. */
    private void judgePart(Context ctx) {
        Form form = door.form(ctx).with("limit", Entry.Judged.PART);
        Pages.act(
                ctx,
                desk,
                door,
                form,
                ActReader.read(InspectActs.Decide.class, form.with("pieces", form.raw("piece"))),
                this::part,
                InspectPages::toPart);
    }

    /** On to what is left of a limit, or to the next that nobody has read, at its first empty field. */
    private String further(Context ctx, Form form) {
        String limit = form.raw("limit");
        String next = desk.bench(ctx.pathParam("job"))
                .map(bench -> InspectView.next(bench.unit(), bench.job(), limit))
                .orElse(limit);
        return "/inspect?limit=" + Pages.encoded(next) + "#" + Pages.encoded(next);
    }

    private String onto(Form form) {
        String limit = form.raw("limit");
        return "/inspect" + (limit.isEmpty() ? "" : "?limit=" + Pages.encoded(limit) + "#" + Pages.encoded(limit));
    }

    /** What could not be struck or kept is said on the page that it was sent from, as far as that is one of these. */
    void struck(Context ctx, List<Refusal> faults, Map<String, String> typed) {
        String page = typed.getOrDefault("page", "");
        if (page.equals("strip")) {
            strip.strip(ctx, faults, typed);
        } else if (page.equals("complaint")) {
            complaint.complaint(ctx, faults, typed);
        } else if (page.startsWith(PARTS)) {
            Map<String, String> all = new LinkedHashMap<>(typed);
            all.put("piece", Pages.decoded(page.substring(PARTS.length())));
            part(ctx, faults, all);
        } else if (page.startsWith("picture/")) {
            marks.picture(ctx, faults, typed);
        } else {
            inspect(ctx, faults, typed);
        }
    }

    private void inspect(Context ctx, List<Refusal> faults, Map<String, String> typed) {
        Pages.bench(ctx, desk, door).ifPresent(bench -> {
            String open = ctx.queryParam("limit");
            String limit = typed.getOrDefault("limit", open == null ? "" : open);
            Page page = door.page(ctx, "Inspection", "inspect", bench, faults, typed);
            door.show(
                    ctx,
                    "inspect",
                    page,
                    Map.of("view", InspectView.of(bench, limit, page.show()), "damage", DamageWords.all()));
        });
    }

    private void parts(Context ctx) {
        Pages.bench(ctx, desk, door).ifPresent(bench -> {
            Page page = door.page(ctx, "Parts", "inspect", bench);
            door.show(ctx, "inspectparts", page, Map.of("parts", InspectView.parts(bench)));
        });
    }

    private void part(Context ctx, List<Refusal> faults, Map<String, String> typed) {
        Pages.bench(ctx, desk, door).ifPresent(bench -> {
            String id = ctx.pathParamMap().getOrDefault("part", typed.getOrDefault("piece", ""));
            Optional<InspectView.PartView> view = InspectView.part(bench, id);
            if (view.isEmpty()) {
                Pages.lost(ctx, door, "This unit has no such part.");
                return;
            }
            Page page = door.page(ctx, "Part", "inspect", bench, faults, typed);
            door.show(ctx, "inspectpart", page, Map.of("view", view.get(), "damage", DamageWords.all()));
        });
    }

    private static String toPart(Form form) {
        return "/parts/" + Pages.encoded(form.raw("piece"));
    }
}
