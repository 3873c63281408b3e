package shimwright.rebuild.act;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.ParsedQuantity;
import shimwright.mechanics.quantity.Quantities;
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
import shimwright.rebuild.workbench.Workbench;

/** Clearances: pieces named, rounds read, packs chosen, accepted. */
public final class ClearanceActs {
    private static final String NONE = "none";

    private ClearanceActs() {}

    private static Outcome<ActResult> session(
            Workbench bench, String clearance, Function<Session, Outcome<ActResult>> use) {
        return bench.clearance(clearance).isPresent()
                ? use.apply(bench.session(clearance))
                : Outcome.refused(new Refusal(
                        "clearance",
                        "clearance " + clearance,
                        "this unit has no such clearance",
                        "Go back to the clearances"));
    }

    private static Phase phase(String typed, Session session) {
        for (Phase phase : Phase.values()) {
            if (phase.name().equals(typed.toUpperCase(Locale.ROOT)) && phase != Phase.NONE) {
                return phase;
            }
        }
        return session.current().phase();
    }

    /** The pieces named at a place, by tag; those of this job may be named again. */
    private static List<PieceIn> pieces(Workbench bench, String tags, String key, List<Refusal> refusals) {
        List<PieceIn> in = new ArrayList<>();
        for (String tag : new LinkedHashSet<>(List.of(tags.strip().split("[\\s,+]+")))) {
            Shop.Piece piece = bench.shop().pieces().get(tag);
            if (piece != null) {
                in.add(new PieceIn(tag, piece.thickness(), piece.u()));
            } else if (!tag.isBlank()) {
                refusals.add(
                        new Refusal(key, "piece " + tag, "there is no such piece in the drawer", "Look at its tag"));
            }
        }
        return in;
    }

    /** Nothing is chosen for the place, so a blank means that no piece is in. */
    private static boolean unasked(Session session, Position position) {
        return !session.toName().contains(position.id()) && !session.known().containsKey(position.id());
    }

    /**
     * The pieces that are in while a clearance is read. A place left blank keeps the shim that the job has fitted there;
     * {@code none} says that none is in.
     */
    @MakesEntries(Entry.PackIn.class)
    public record NamePieces(
            @ActInput(value = "clearance", missing = "Go back to the clearances")
            String clearance,

            @ActInput("reading") String phase,
            @ActInput("pieces by place") Map<String, String> in)
            implements Act.OfJob {
        @Override
        public Outcome<ActResult> on(Workbench bench, ActContext around) {
            return session(bench, clearance, session -> {
                List<Refusal> refusals = new ArrayList<>();
                Map<String, List<PieceIn>> pieces = new LinkedHashMap<>();
                for (Position position : session.clearance().positions()) {
                    String typed = in.getOrDefault(position.id(), "").strip();
                    List<PieceIn> there = typed.equalsIgnoreCase(NONE)
                            ? List.of()
                            : pieces(bench, typed, "in." + position.id(), refusals);
                    boolean none = typed.equalsIgnoreCase(NONE)
                            || (typed.isEmpty() && position.fewest() == 0 && unasked(session, position));
                    if (none || !there.isEmpty()) {
                        pieces.put(position.id(), there);
                    }
                }
                Phase at = ClearanceActs.phase(phase, session);
                String number = bench.job().opened().number();
                return refusals.isEmpty()
                        ? Decisions.packIn(session, at, pieces, bench.shop(), number)
                                .flatMap(named -> IntakeActs.kept(bench, named, "Pieces kept"))
                        : Outcome.refused(refusals);
            });
        }

        @Override
        public boolean usesDrawer() {
            return true;
        }
    }

    /** What the i-th number of a round is called, from 1. */
    public static String label(Clearance clearance, int i) {
        return switch (clearance.method()) {
            case TRAVEL -> clearance.indicators() == 1 ? "travel" : "indicator " + i;
            case SERIES -> "reading";
            case PLACES -> "place " + i;
            case FEELER -> i == 1 ? "thickest feeler that enters" : "thinnest that does not enter";
            case DIFFERENCE -> clearance.difference().get(i - 1).name();
        };
    }

    /** One round of readings. */
    @MakesEntries(Entry.RoundRead.class)
    public record ReadRound(
            @ActInput(value = "clearance", missing = "Go back to the clearances")
            String clearance,

            @ActInput("reading") String phase,
            @ActInput("gauge") String gauge,

            @ActInput("gauge of the second length, where two are read")
            String second,

            @ActInput(value = "readings", missing = "Type what the gauge shows")
            List<String> v)
            implements Act.OfJob {
        @Override
        public Outcome<ActResult> on(Workbench bench, ActContext around) {
            return session(bench, clearance, session -> {
                Clearance of = session.clearance();
                if (v.size() > of.numbers()) {
                    return Outcome.refused(new Refusal(
                            "v",
                            of.name(),
                            v.size() + " numbers typed, a round has " + of.numbers(),
                            "Type one round at a time"));
                }
                Phase at = ClearanceActs.phase(phase, session);
                List<String> gauges = gauges(session, at);
                List<Outcome<Double>> read = new ArrayList<>();
                for (int i = 1; i <= of.numbers(); i++) {
                    String with = gauges.get(Math.min(i, gauges.size()) - 1);
                    double reach =
                            bench.shop().inUse(with).map(Shop.Gauge::range).orElse(1.0);
                    read.add(Quantities.parse(
                                    i <= v.size() ? v.get(i - 1) : "",
                                    Kind.LENGTH,
                                    around.units().display(Kind.LENGTH).unit(),
                                    "",
                                    new Range(of.method() == Method.SERIES ? -reach : 0, reach))
                            .placed("v[" + (i - 1) + "]", label(of, i))
                            .map(ParsedQuantity::si));
                }
                return Outcome.all(read)
                        .flatMap(si -> Decisions.round(session, at, gauges, bench.shop(), si, String.join(" | ", v)))
                        .flatMap(round -> IntakeActs.kept(bench, round, "Kept"));
            });
        }

        /** The gauges that were in the hand: those said, else those at hand, else those that the file names. */
        private List<String> gauges(Session session, Phase at) {
            List<String> said = List.of(gauge, second);
            List<String> gauges = new ArrayList<>();
            List<String> named = session.clearance().gauges(at);
            for (int i = 0; i < named.size(); i++) {
                Shop.Gauge hand = i < session.inHand().size() ? session.inHand().get(i) : null;
                gauges.add(!said.get(i).isBlank() ? said.get(i) : hand == null ? named.get(i) : hand.id());
            }
            return gauges;
        }
    }

    /** The pack for a clearance. */
    @MakesEntries(Entry.PackChosen.class)
    public record ChoosePack(
            @ActInput(value = "clearance", missing = "Go back to the clearances")
            String clearance,

            @ActInput("pieces") String pack,
            @ActInput("reason") String because)
            implements Act.OfJob {
        @Override
        public Outcome<ActResult> on(Workbench bench, ActContext around) {
            return session(bench, clearance, session -> {
                List<Refusal> refusals = new ArrayList<>();
                List<PieceIn> pieces = pieces(bench, pack, "pack", refusals);
                return refusals.isEmpty()
                        ? Decisions.choose(session, pieces, because)
                                .flatMap(chosen -> IntakeActs.kept(bench, chosen, "Pack kept. Fit it and read again"))
                        : Outcome.refused(refusals);
            });
        }

        @Override
        public String input(String key) {
            return key.startsWith("at.") ? "pack" : key;
        }

        @Override
        public boolean usesDrawer() {
            return true;
        }
    }

    /** Packs for all clearances that share shims. */
    @MakesEntries(Entry.PackChosen.class)
    public record ChooseTogether(
            @ActInput(value = "clearance", missing = "Go back to the clearances")
            String clearance,

            @ActInput("pieces by place") Map<String, String> at,
            @ActInput("reason") String because)
            implements Act.OfJob {
        @Override
        public Outcome<ActResult> on(Workbench bench, ActContext around) {
            List<String> group = SharedShims.groups(bench.unit()).stream()
                    .filter(one -> one.contains(clearance))
                    .findFirst()
                    .orElse(List.of());
            if (group.isEmpty()) {
                return Outcome.refused(new Refusal(
                        "clearance",
                        "clearance " + clearance,
                        "it shares no shim with another",
                        "Choose its pack on its own page"));
            }
            List<Refusal> refusals = new ArrayList<>();
            Map<String, List<PieceIn>> pieces = new LinkedHashMap<>();
            at.forEach((place, tags) -> pieces.put(place, pieces(bench, tags, "at." + place, refusals)));
            return refusals.isEmpty()
                    ? SharedShims.choose(bench.unit(), bench.job(), bench.shop(), group, pieces, because)
                            .map(chosen -> new ActResult(bench.job().id(), List.copyOf(chosen), "Packs kept"))
                    : Outcome.refused(refusals);
        }

        @Override
        public boolean usesDrawer() {
            return true;
        }
    }

    /** A clearance is accepted as it was read. */
    @MakesEntries(Entry.ClearanceAccepted.class)
    public record AcceptClearance(
            @ActInput(value = "clearance", missing = "Go back to the clearances")
            String clearance,

            @ActInput("reason") String because)
            implements Act.OfJob {
        @Override
        public Outcome<ActResult> on(Workbench bench, ActContext around) {
            return session(
                    bench,
                    clearance,
                    session -> Decisions.accept(session, because)
                            .flatMap(accepted -> IntakeActs.kept(bench, accepted, "Accepted")));
        }
    }
}
