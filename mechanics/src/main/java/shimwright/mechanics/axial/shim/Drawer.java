package shimwright.mechanics.axial.shim;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
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

/** Several clearances, one drawer: every way within the limits is looked at, so the best offered is the best there is. */
public final class Drawer {
    /** More ways than this are not looked at one by one but by branch and bound. */
    static final long MOST_WAYS = 20_000_000L;

    /** More packs than this at a place are not made. */
    private static final int MOST_PACKS = 400_000;

    /** Packs that miss by this are looked at all the same, in metres. */
    private static final double SLACK = 1e-9;

    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
            "drawer",
            "One drawer, several clearances",
            "The shims for several clearances that share one drawer, chosen together.",
            List.of("JCGM 106:2012 7.4", "order of ways: common practice, no source"),
            Case.class,
            Result.class,
            Drawer::work);

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
            int offers) {

        public Case {
            needs = List.copyOf(needs);
            places = List.copyOf(places);
            effects = List.copyOf(effects);
            pieces = List.copyOf(pieces);
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
                double aim) {}

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
     * @param possible how many ways leave every clearance within its limits by nominal
     * @param advice one sentence
     */
    public record Result(
            @Output(meaning = "ways, the best first") List<Way> offers,
            @Output(meaning = "ways within the limits") int within,
            @Output(meaning = "advice") String advice) {

        public Result {
            offers = List.copyOf(offers);
        }

        /**
         * One way.
         *
         * @param pieces place and tags, such as {@code sI=d52-03+d52-09}, in the order of the places
         * @param predicted what each clearance comes out at, m, in the order of the needs
         * @param probability that all of them are within limits, their uncertainties taken as independent
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
    }

    /**
     * Serves all clearances at once.
     *
     * <p>Each clearance comes out at {@code value + Σ effect × (thickness − trial)} with {@code u² + Σ effect² × (Σ u piece²
     * + u trial²)} (JCGM 100:2008 5.1.2); a way that leaves any of them outside
     * its limits by nominal is never offered. Order: probability that all are within limits (product over the clearances, JCGM
     * 106:2012 7.4, normal; differences under 0.001 are ties), then fewest pieces, then the least {@code Σ((predicted −
     * aim)/(room to the limit on that side))²}, then tags. No piece is taken twice. Of more than 20 million ways those that
     * cannot be among the best are passed over, and the working says whether the best are proven. Refused: names that do not
     * match, limits the wrong way round, an aim outside them, a place without pieces of its family, more packs at a place than
     * can be laid out.
     */
    public static Outcome<Worked<Result>> work(Case c) {
        List<Refusal> faults = faults(c);
        if (!faults.isEmpty()) {
            return Outcome.refused(faults);
        }
        List<List<DrawerSearch.Pack>> packs =
                c.places().stream().map(place -> packs(c, place)).toList();
        long ways = 1;
        for (List<DrawerSearch.Pack> choices : packs) {
            ways = Math.min(MOST_WAYS + 1, ways * Math.max(1, choices.size()));
        }
        for (int p = 0; p < packs.size(); p++) {
            if (packs.get(p).size() > MOST_PACKS) {
                return Outcome.refused(new Refusal(
                        "places[" + p + "]",
                        c.places().get(p).name(),
                        "there are more than " + MOST_PACKS + " packs to lay there",
                        "Allow fewer pieces at this place, or leave out pieces that are far from what is wanted"));
            }
        }
        Working w = new Working();
        List<Way> best;
        int within;
        if (ways > MOST_WAYS) {
            DrawerBranch search = new DrawerBranch(c, packs);
            best = search.best();
            within = search.within();
            w.line("ways within the limits met", "branch and bound; there may be more", within, Kind.NUMBER);
            w.line("best proven", "1 where no other way is better", search.proven() ? 1 : 0, Kind.NUMBER);
        } else {
            DrawerSearch search = new DrawerSearch(c, packs);
            best = search.best();
            within = search.within();
            w.line("ways looked at", "product of the packs at each place", (double) ways, Kind.NUMBER);
            w.line("ways within the limits", "every clearance within its limits by nominal", within, Kind.NUMBER);
        }
        for (Way way : best.isEmpty() ? best : best.subList(0, 1)) {
            for (int i = 0; i < c.needs().size(); i++) {
                w.line(
                        c.needs().get(i).name(),
                        "read + Σ effect × (chosen − trial)",
                        way.predicted().get(i),
                        Kind.LENGTH);
            }
            w.line("probability that all are in", "product", way.probability(), Kind.NUMBER, "JCGM 106:2012 7.4");
        }
        return Outcome.ok(w.worked(new Result(best, within, advice(c, best))));
    }

    static List<DrawerSearch.Pack> packs(Case c, Seat place) {
        List<Loose> fit = c.pieces().stream()
                .filter(piece -> piece.family().equals(place.family()))
                .toList();
        List<DrawerSearch.Pack> packs = new ArrayList<>();
        grow(fit, 0, place, window(c, place), new ArrayList<>(), packs);
        return packs;
    }

    /** Thicknesses at a place that leave possible what depends on this place alone. */
    private static double[] window(Case c, Seat place) {
        double low = Double.NEGATIVE_INFINITY;
        double high = Double.POSITIVE_INFINITY;
        for (Need need : c.needs()) {
            List<Effect> on = c.effects().stream()
                    .filter(effect -> effect.need().equals(need.name()) && effect.change() != 0)
                    .toList();
            if (on.size() == 1 && on.get(0).place().equals(place.name())) {
                double change = on.get(0).change();
                double a = place.trial() + (need.lower() - need.value()) / change;
                double b = place.trial() + (need.upper() - need.value()) / change;
                low = Math.max(low, Math.min(a, b) - SLACK);
                high = Math.min(high, Math.max(a, b) + SLACK);
            }
        }
        return new double[] {low, high};
    }

    private static void grow(
            List<Loose> fit, int from, Seat place, double[] window, List<Loose> taken, List<DrawerSearch.Pack> packs) {
        double thickness = taken.stream().mapToDouble(Loose::thickness).sum();
        if (taken.size() >= place.fewest() && thickness >= window[0] && thickness <= window[1]) {
            packs.add(DrawerSearch.Pack.of(taken));
        }
        if (taken.size() == place.most() || thickness > window[1] || packs.size() > MOST_PACKS) {
            return;
        }
        for (int i = from; i < fit.size(); i++) {
            taken.add(fit.get(i));
            grow(fit, i + 1, place, window, taken, packs);
            taken.remove(taken.size() - 1);
        }
    }

    private static String advice(Case c, List<Way> best) {
        if (best.isEmpty()) {
            return "Nothing in the drawer serves all of " + names(c)
                    + " at once. Look at each alone to see which size is missing.";
        }
        boolean proven = best.get(0).probability()
                >= Math.pow(c.ruleProbability(), c.needs().size());
        return (proven ? "Lay " : "Closest is ")
                + String.join(", ", best.get(0).pieces())
                + (proven ? "." : ", but not every clearance is proven by it: read more rounds or get a size between.");
    }

    private static String names(Case c) {
        return c.needs().stream().map(Need::name).collect(Collectors.joining(", "));
    }

    private static List<Refusal> faults(Case c) {
        List<Refusal> faults = new ArrayList<>();
        Set<String> needs = new HashSet<>();
        for (int n = 0; n < c.needs().size(); n++) {
            Need need = c.needs().get(n);
            String key = "needs[" + n + "]";
            if (!needs.add(need.name())) {
                faults.add(Refusal.of("needs", need.name() + " stands there twice", "Give each its own name"));
            }
            if (need.lower() >= need.upper()) {
                faults.add(
                        new Refusal(key, need.name(), "its limits are the wrong way round", "Lower first, then upper"));
            } else if (need.aim() <= need.lower() || need.aim() >= need.upper()) {
                faults.add(new Refusal(key, need.name(), "its aim does not lie between its limits", "Aim inside"));
            }
        }
        Set<String> places = new HashSet<>();
        for (int p = 0; p < c.places().size(); p++) {
            Seat place = c.places().get(p);
            if (!places.add(place.name())) {
                faults.add(Refusal.of("places", place.name() + " stands there twice", "Give each its own name"));
            }
            long fit = c.pieces().stream()
                    .filter(piece -> piece.family().equals(place.family()))
                    .count();
            if (fit < place.fewest() || place.fewest() > place.most()) {
                faults.add(new Refusal(
                        "places[" + p + "]",
                        place.name(),
                        fit + " pieces of " + place.family() + " for at least " + place.fewest(),
                        "Add some"));
            }
        }
        Set<String> tags = new HashSet<>();
        for (Loose piece : c.pieces()) {
            if (!tags.add(piece.id())) {
                faults.add(
                        Refusal.of("pieces", piece.id() + " stands there twice", "A piece can lie in one place only"));
            }
        }
        for (Effect effect : c.effects()) {
            if (!needs.contains(effect.need()) || !places.contains(effect.place())) {
                faults.add(Refusal.of(
                        "effects",
                        effect.need() + " at " + effect.place() + " names something that is not there",
                        "Use the names of the clearances and places"));
            }
        }
        return faults;
    }
}
