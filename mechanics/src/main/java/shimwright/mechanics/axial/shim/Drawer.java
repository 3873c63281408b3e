package shimwright.mechanics.axial.shim;

import java.util.List;
import java.util.stream.Collectors;
import shimwright.mechanics.axial.shim.Drawer.Case.Effect;
import shimwright.mechanics.axial.shim.Drawer.Case.Loose;
import shimwright.mechanics.axial.shim.Drawer.Case.Need;
import shimwright.mechanics.axial.shim.Drawer.Case.Seat;
import shimwright.mechanics.axial.shim.Drawer.Result.Way;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.mechanics.worksheet.Input;
import shimwright.mechanics.worksheet.Output;
import shimwright.mechanics.worksheet.Worksheet;

/** Several clearances, one drawer: the best way to serve them all, or what to get where nothing in it will do. */
public final class Drawer {
    /** Up to so many ways the best is exact; of more it is so within the tolerance. */
    static final double EXACT_WAYS = 1e6;

    /** Of more ways than this those within the limits are not counted. */
    private static final double MOST_COUNTED = 2e7;

    /** Packs looked at before the search ends with what it has. */
    private static final long MOST_WORK = 60_000_000L;

    public static final Worksheet<Case, Result> SHEET = new Worksheet<Case, Result>(
                    "drawer",
                    "One drawer, several clearances",
                    "The shims for several clearances that share one drawer, chosen together.",
                    List.of(
                            "JCGM 106:2012 7.2, 7.4",
                            "JCGM 100:2008 5.2 (shared errors)",
                            "order of ways: common practice, no source"),
                    Case.class,
                    Result.class,
                    Drawer::work)
            .drawnWhenAsked();

    private Drawer() {}

    /**
     * Several clearances that take their shims from one drawer.
     *
     * @param needs the clearances as read with the trial pieces in
     * @param places where shims go, each with the trial thickness that was in when the clearances were read
     * @param effects what a thicker shim at a place does to a clearance
     * @param pieces what lies in the drawer
     * @param ruleProbability conformance probability that proves one clearance
     * @param offers how many ways to offer
     * @param micrometer what the one micrometer may be off by for all pieces alike, beside their own uncertainty, m
     * @param readWith pieces that were in when a clearance was read, where no trial thickness says it
     */
    public record Case(
            @Input(
                    kind = Kind.LENGTH,
                    meaning = "clearances: name, read value, standard uncertainty, lower, upper and aimed value",
                    most = 12,
                    example = "play: 0.2783 mm: 0.004 mm: 0.02 mm: 0.08 mm: 0.05 mm")
            List<Need> needs,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "places: name, family, trial thickness, fewest and most pieces",
                    most = 12,
                    example = "sI: SH52: 0.797 mm: 1: 2")
            List<Seat> places,

            @Input(meaning = "clearance, place, change per thickness", most = 60, example = "play: sI: -1")
            List<Effect> effects,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "pieces: tag, family, thickness, standard uncertainty",
                    most = 400,
                    example = "d52-03: SH52: 0.352 mm: 0.002 mm; d52-09: SH52: 0.681 mm: 0.002 mm")
            List<Loose> pieces,

            @Input(meaning = "probability that counts as proof", min = 0.501, max = 0.9999, orElse = "0.95")
            double ruleProbability,

            @Input(meaning = "ways to offer", min = 1, max = 20, orElse = "3")
            int offers,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "what the one micrometer may be off by for all pieces alike, standard uncertainty",
                    min = 0,
                    max = 0.001,
                    orElse = "0 mm")
            double micrometer,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "pieces that were in at a reading: clearance, place, tag, thickness, uncertainty",
                    fewest = 0,
                    most = 200)
            List<ReadWith> readWith) {

        public Case {
            needs = List.copyOf(needs);
            places = List.copyOf(places);
            effects = List.copyOf(effects);
            pieces = List.copyOf(pieces);
            readWith = List.copyOf(readWith);
        }

        /**
         * A clearance, signed as play, as read with the trial pieces in.
         *
         * @param name short name
         * @param value m
         * @param u standard uncertainty of the value read, m
         * @param lower lower limit of the value, m
         * @param upper upper limit of the value, m
         * @param aim value aimed at, m
         * @param shared the part of u that all clearances with such a part share: the one indicator's own error, m
         */
        public record Need(
                @Input(meaning = "name", example = "play") String name,

                @Input(kind = Kind.LENGTH, meaning = "read value", min = -10, max = 10, example = "0.2783 mm", u = "u")
                double value,

                @Input(kind = Kind.LENGTH, meaning = "standard uncertainty", min = 0, max = 1, example = "0.004 mm")
                double u,

                @Input(kind = Kind.LENGTH, meaning = "lower limit", min = -10, max = 10, example = "0.02 mm")
                double lower,

                @Input(kind = Kind.LENGTH, meaning = "upper limit", min = -10, max = 10, example = "0.08 mm")
                double upper,

                @Input(kind = Kind.LENGTH, meaning = "aimed at", min = -10, max = 10, example = "0.05 mm")
                double aim,

                @Input(
                        kind = Kind.LENGTH,
                        meaning = "part of the uncertainty that is the one indicator's own",
                        min = 0,
                        max = 1,
                        orElse = "0 mm")
                double shared) {}

        /**
         * A place for shims.
         *
         * @param name short name
         * @param family what fits there
         * @param trial thickness that was in when the clearances were read, m
         * @param fewest pieces
         * @param most pieces
         * @param u standard uncertainty of the trial thickness, m
         */
        public record Seat(
                @Input(meaning = "name", example = "sI") String name,
                @Input(meaning = "family", example = "SH52") String family,

                @Input(kind = Kind.LENGTH, meaning = "trial thickness", min = 0, max = 1, example = "0.797 mm", u = "u")
                double trial,

                @Input(meaning = "fewest pieces", min = 0, max = 6, example = "1")
                int fewest,

                @Input(meaning = "most pieces", min = 1, max = 6, example = "2")
                int most,

                @Input(
                        kind = Kind.LENGTH,
                        meaning = "standard uncertainty of the trial thickness",
                        min = 0,
                        max = 0.01,
                        orElse = "0 mm")
                double u) {}

        /** What a place does to a clearance: its change per unit of added thickness. */
        public record Effect(
                @Input(meaning = "clearance", example = "play")
                String need,

                @Input(meaning = "place", example = "sI") String place,

                @Input(meaning = "change per thickness", min = -10, max = 10, example = "-1")
                double change) {}

        /** A piece that was in at a place when a clearance was read: its tag, and thickness and standard uncertainty, m. */
        public record ReadWith(
                @Input(meaning = "clearance", example = "play")
                String need,

                @Input(meaning = "place", example = "sI") String place,
                @Input(meaning = "tag", example = "d52-09") String piece,

                @Input(kind = Kind.LENGTH, meaning = "thickness", min = 1e-6, max = 1, example = "0.681 mm", u = "u")
                double thickness,

                @Input(kind = Kind.LENGTH, meaning = "standard uncertainty", min = 0, max = 0.01, example = "0.002 mm")
                double u) {}

        /** A loose piece: tag, family, thickness and its standard uncertainty, m. */
        public record Loose(
                @Input(meaning = "tag", example = "d52-03") String id,
                @Input(meaning = "family", example = "SH52") String family,

                @Input(kind = Kind.LENGTH, meaning = "thickness", min = 1e-6, max = 1, example = "0.352 mm", u = "u")
                double thickness,

                @Input(kind = Kind.LENGTH, meaning = "standard uncertainty", min = 0, max = 0.01, example = "0.002 mm")
                double u) {}
    }

    /**
     * Ways to serve all clearances from the drawer at once, the best first.
     *
     * @param offers empty where the drawer cannot serve them all
     * @param proven 1 where no way left out is better than those offered by more than the tolerance, 0 where there may be one
     * @param within how many ways leave every clearance within its limits by nominal; 0 where the ways are too many to count
     * @param wishes what to get or grind where the drawer does not do; empty where it does, or where no piece would help
     * @param advice what to do
     */
    public record Result(
            @Output(meaning = "ways, the best first") List<Way> offers,
            @Output(meaning = "1 where none is better") int proven,
            @Output(meaning = "ways within the limits") int within,
            @Output(meaning = "what to get") List<Wish> wishes,
            @Output(meaning = "advice") String advice) {

        public Result {
            offers = List.copyOf(offers);
            wishes = List.copyOf(wishes);
        }

        /**
         * One way.
         *
         * @param pieces place and tags, such as {@code sI=d52-03+d52-09}, in the order of the places
         * @param predicted what each clearance comes out at, m, in the order of the needs
         * @param probability that all of them are within limits, shared errors shared
         * @param distance sum of (distance from aim / room to the limit on that side)²
         */
        public record Way(
                @Output(meaning = "pieces") List<String> pieces,

                @Output(kind = Kind.LENGTH, meaning = "clearances", decimals = 4)
                List<Double> predicted,

                @Output(meaning = "probability that all are in")
                double probability,

                @Output(meaning = "distance from the aims") double distance) {
            public Way {
                pieces = List.copyOf(pieces);
                predicted = List.copyOf(predicted);
            }
        }

        /**
         * A piece to get: at this place, of this family, with all others as {@code advice} says.
         *
         * @param thickness that brings the clearances nearest to their aims, m
         * @param from thinnest that serves, m
         * @param to thickest that serves, m
         * @param grind tag of the piece of the drawer that is least thicker; empty where there is none
         * @param takeOff what would have to be ground off it, m
         */
        public record Wish(
                @Output(meaning = "place") String place,
                @Output(meaning = "family") String family,

                @Output(kind = Kind.LENGTH, meaning = "thickness")
                double thickness,

                @Output(kind = Kind.LENGTH, meaning = "thinnest that will do")
                double from,

                @Output(kind = Kind.LENGTH, meaning = "thickest that will do")
                double to,

                @Output(meaning = "piece to grind") String grind,

                @Output(kind = Kind.LENGTH, meaning = "to be ground off")
                double takeOff) {}
    }

    /**
     * Serves all clearances at once.
     *
     * <p>Each clearance comes out at {@code value + Σ effect × (thickness − trial)}. Its error is its own reading's, the
     * indicator's that all share, and that of every piece times its effect, which all clearances share that the piece bears on; a
     * piece that was in at the reading and stays cancels, and the micrometer's counts by the pieces more or fewer than then (JCGM
     * 100:2008 5.2). A way that leaves any clearance outside its limits by nominal is never offered. Order: probability that all are
     * within limits (JCGM 106:2012 7.2, 7.4, normal; differences under 0.001 are ties), then fewest pieces, then the
     * least {@code Σ((predicted − aim)/(room to the limit on that side))²}, then tags. No piece is taken twice. Up to a million ways
     * this is exact; of more no way left out is surer by more than 0.001, nor as sure with fewer pieces, nor as sure with as many and
     * nearer by more than 0.01; where errors are shared probabilities are good to 0.0002. Where nothing in the drawer is proven, the
     * fewest places are looked for at which one piece of another thickness would do.
     * Refused: names that do not match, limits the wrong way round, an aim outside them, a place without pieces of
     * its family, a shared part above the whole.
     */
    public static Outcome<Worked<Result>> work(Case c) {
        List<Refusal> faults = DrawerFaults.of(c);
        if (!faults.isEmpty()) {
            return Outcome.refused(faults);
        }
        Working w = new Working();
        DrawerModel m = new DrawerModel(c);
        double ways = ways(m);
        double tolerance = ways > EXACT_WAYS ? DrawerSearch.NEAR : 0;
        DrawerSearch search = new DrawerSearch(m, c.offers(), tolerance, MOST_WORK, DrawerWish.Free.none(m.places));
        List<Way> best = search.best().stream().map(DrawerSearch.Found::way).toList();
        w.line("ways", "product of the packs at each place", ways, Kind.NUMBER);
        int within = ways > MOST_COUNTED ? 0 : DrawerCount.of(m);
        if (ways <= MOST_COUNTED) {
            w.line("ways within the limits", "every clearance within its limits by nominal", within, Kind.NUMBER);
        }
        w.line("best proven", "1 where no other way is better", search.proven() ? 1 : 0, Kind.NUMBER);
        double needed = Math.pow(c.ruleProbability(), c.needs().size());
        double reached = best.isEmpty() ? 0 : best.get(0).probability();
        w.line("probability needed", "that of one to the power of the clearances", needed, Kind.NUMBER);
        for (Way way : best.isEmpty() ? best : best.subList(0, 1)) {
            for (int i = 0; i < c.needs().size(); i++) {
                w.line(
                        c.needs().get(i).name(),
                        "read + Σ effect × (chosen − trial)",
                        way.predicted().get(i),
                        Kind.LENGTH);
            }
            w.line("probability that all are in", "together", way.probability(), Kind.NUMBER, "JCGM 106:2012 7.4");
        }
        DrawerWish.Wished wished = reached < needed ? DrawerWish.of(m, needed, reached) : DrawerWish.Wished.NOTHING;
        return Outcome.ok(w.worked(new Result(
                best, search.proven() ? 1 : 0, within, wished.wishes(), advice(c, best, reached >= needed, wished))));
    }

    /** How many ways there are to lay pieces, whatever comes of it. */
    private static double ways(DrawerModel m) {
        double ways = 1;
        for (int p = 0; p < m.places; p++) {
            Seat place = m.c.places().get(p);
            double packs = 0;
            double choices = 1;
            for (int k = 0; k <= Math.min(place.most(), m.fit[p].length); k++) {
                packs += k >= place.fewest() ? choices : 0;
                choices *= (m.fit[p].length - k) / (k + 1.0);
            }
            ways *= Math.max(1, packs);
        }
        return ways;
    }

    private static String advice(Case c, List<Way> best, boolean proven, DrawerWish.Wished wished) {
        String get = wished.wishes().isEmpty() ? "" : " " + wished.sentence();
        if (best.isEmpty()) {
            return "Nothing in the drawer serves all of " + names(c) + " at once."
                    + (get.isEmpty()
                            ? " Nor would one piece of another thickness at each place: look at the readings."
                            : get);
        }
        String laid = String.join(", ", best.get(0).pieces());
        return proven
                ? "Lay " + laid + "."
                : "Closest is " + laid + ", but not every clearance is proven by it"
                        + (get.isEmpty() ? ": read more rounds." : "." + get);
    }

    private static String names(Case c) {
        return c.needs().stream().map(Need::name).collect(Collectors.joining(", "));
    }
}
