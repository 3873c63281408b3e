package shimwright.mechanics.axial.shim;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.conformity.Conformity;
import shimwright.mechanics.conformity.Limits;
import shimwright.mechanics.conformity.Rule;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.mechanics.worksheet.Input;
import shimwright.mechanics.worksheet.Output;
import shimwright.mechanics.worksheet.Worksheet;

/** The pack that makes the final clearance most surely within its limits. */
public final class ShimPack {
    private static final double MOST_PACKS = 2e7;
    private static final String SOURCE = "JCGM 106:2012 7.4";

    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
                    "shim-pack",
                    "Shim pack",
                    "The pack of the drawer that makes a clearance most surely within its limits.",
                    List.of(
                            "JCGM 106:2012 7.4, 8.3.2",
                            "JCGM 100:2008 (GUM) 5.1.2, G.4",
                            "order of packs: common practice, no source"),
                    Case.class,
                    Result.class,
                    ShimPack::work)
            .drawn(ShimPictures::shimPack);

    private ShimPack() {}

    /**
     * A clearance measured with a trial pack, its limits, and the drawer to choose the final pack from.
     *
     * @param measured clearance on the trial pack, m; preload is negative
     * @param uMeasured its standard uncertainty, m
     * @param nu degrees of freedom of that; positive infinity when taken as certain, null likewise
     * @param trialThickness thickness of the trial pack, m
     * @param uTrial its standard uncertainty, m
     * @param effect change of the clearance per thickness: −1 when thicker closes, +1 when thicker opens; not 0
     * @param lower lower limit of the clearance, m; null when open
     * @param upper upper limit of the clearance, m; null when open
     * @param aim clearance aimed at, m, between the limits; null for their middle
     * @param ruleProbability conformance probability that proves
     * @param drawer the pieces to choose from, each used once
     * @param minPieces fewest in a pack
     * @param maxPieces most in a pack
     * @param offers how many packs to name
     */
    public record Case(
            @Input(
                    kind = Kind.LENGTH,
                    meaning = "clearance measured on the trial pack, preload negative",
                    min = -10,
                    max = 10,
                    example = "0.2783 mm",
                    u = "uMeasured",
                    nu = "nu")
            double measured,

            @Input(kind = Kind.LENGTH, meaning = "its standard uncertainty", min = 0, max = 0.01, example = "0.005 mm")
            double uMeasured,

            @Input(meaning = "degrees of freedom of that", min = 1) @Nullable
            Double nu,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "thickness of the trial pack",
                    min = 0,
                    max = 1,
                    example = "0.797 mm",
                    u = "uTrial")
            double trialThickness,

            @Input(kind = Kind.LENGTH, meaning = "its standard uncertainty", min = 0, max = 0.01, orElse = "0.002 mm")
            double uTrial,

            @Input(
                    meaning = "-1 when a thicker pack closes the clearance, 1 when it opens it",
                    min = -10,
                    max = 10,
                    example = "-1")
            double effect,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "lower limit of the clearance",
                    min = -10,
                    max = 10,
                    example = "0.02 mm")
            @Nullable
            Double lower,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "upper limit of the clearance",
                    min = -10,
                    max = 10,
                    example = "0.08 mm")
            @Nullable
            Double upper,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "clearance aimed at, the middle of the limits where none is given",
                    min = -10,
                    max = 10)
            @Nullable
            Double aim,

            @Input(meaning = "probability that counts as proof", min = 0.501, max = 0.9999, orElse = "0.95")
            double ruleProbability,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "pieces in the drawer, measured",
                    fewest = 0,
                    most = 120,
                    example =
                            "d52-01: 0.251; d52-02: 0.3027; d52-03: 0.352; d52-04: 0.3977; d52-05: 0.447; d52-06: 0.502; "
                                    + "d52-08: 0.6023; d52-09: 0.681; d52-10: 0.797")
            List<Piece> drawer,

            @Input(meaning = "fewest pieces in a pack", min = 0, max = 6, orElse = "1")
            int minPieces,

            @Input(meaning = "most pieces in a pack", min = 1, max = 6, orElse = "2")
            int maxPieces,

            @Input(meaning = "packs to name", min = 1, max = 20, orElse = "3")
            int offers) {
        public Case {
            drawer = List.copyOf(drawer);
        }
    }

    /**
     * Which pack to fit.
     *
     * @param wantedThickness for the middle of the limits, m; with one limit open, for the clearance that is just proven
     * @param leastThickness thinnest pack whose clearance lies within, m; negative infinity when there is none
     * @param mostThickness thickest, m; positive infinity when there is none
     * @param offers best first; empty when none lies within
     * @param advice what to do, in a sentence or two
     */
    public record Result(
            @Output(kind = Kind.LENGTH, meaning = "wanted thickness")
            double wantedThickness,

            @Output(kind = Kind.LENGTH, meaning = "thinnest that lies within", infinite = "no limit")
            double leastThickness,

            @Output(kind = Kind.LENGTH, meaning = "thickest that lies within", infinite = "no limit")
            double mostThickness,

            @Output(kind = Kind.LENGTH, meaning = "offers") List<PackOffer> offers,
            @Output(meaning = "advice") String advice) {
        public Result {
            offers = List.copyOf(offers);
        }
    }

    /**
     * wanted = trial + (aim − measured)/effect, the aim being the middle of the limits where none is given; every pack of the drawer by its probability of lying within the
     * limits ({@link PackSearch} for the order). A pack whose clearance stands outside a limit is never offered, however
     * near. Refused: no limit, limits the wrong way round, an aim outside them, an effect of 0, more pieces at least than at
     * most, a tag twice, or more than 20 million packs to look through.
     */
    public static Outcome<Worked<Result>> work(Case c) {
        List<Refusal> refusals = faults(c);
        if (!refusals.isEmpty()) {
            return Outcome.refused(refusals);
        }
        Working w = new Working();
        Prediction prediction = Prediction.of(c);
        Rule rule = new Rule(c.ruleProbability(), true);
        double wanted = wanted(c, prediction, rule, w);
        double[] window = prediction.window();
        if (Double.isFinite(window[0])) {
            w.line("thinnest pack", "trial + (limit − measured) / effect", window[0], Kind.LENGTH);
        }
        if (Double.isFinite(window[1])) {
            w.line("thickest pack", "trial + (limit − measured) / effect", window[1], Kind.LENGTH);
        }
        PackSearch search = new PackSearch(c.drawer(), prediction, wanted, c.aim() != null);
        List<PackOffer> offers = new ArrayList<>();
        for (PackSearch.Pack pack : search.best(c.minPieces(), c.maxPieces(), c.offers())) {
            offers.add(offer(search, pack, prediction, rule));
        }
        if (!offers.isEmpty()) {
            PackOffer best = offers.get(0);
            w.line("pack", String.join(" + ", best.pieces()), best.thickness(), Kind.LENGTH);
            w.line("clearance", "measured + effect × (pack − trial)", best.predicted(), Kind.LENGTH);
            w.line(
                    "u",
                    "√(u measured² + effect² × (u pack² + u trial²))",
                    best.u(),
                    Kind.LENGTH,
                    "JCGM 100:2008 (GUM) 5.1.2");
            w.line("probability", "chance of lying within the limits", best.probability(), Kind.NUMBER, SOURCE);
        }
        if (c.drawer().stream().anyMatch(piece -> piece.thickness() == 0)) {
            w.caution("A piece in the drawer has no thickness: measure it.");
        }
        String advice = new PackAdvice(c, prediction, rule, wanted).advice(offers);
        return Outcome.ok(w.worked(new Result(wanted, window[0], window[1], offers, advice)));
    }

    private static PackOffer offer(PackSearch search, PackSearch.Pack pack, Prediction prediction, Rule rule) {
        double clearance = prediction.clearance(pack.thickness());
        double u = prediction.u(pack.variance());
        double nu = prediction.freedom(u);
        return new PackOffer(
                search.pieces(pack).stream().map(Piece::id).toList(),
                pack.thickness(),
                Math.sqrt(pack.variance()),
                clearance,
                u,
                nu,
                pack.probability(),
                Conformity.verdict(clearance, u, nu, prediction.limits(), rule),
                search.rarity(pack));
    }

    private static double wanted(Case c, Prediction prediction, Rule rule, Working w) {
        Limits limits = prediction.limits();
        Double given = c.aim();
        double aim;
        if (given != null) {
            aim = w.line("aim", "as given", given, Kind.LENGTH);
        } else if (limits.closed()) {
            aim = w.line("aim", "middle of the limits", (limits.low() + limits.high()) / 2, Kind.LENGTH);
        } else {
            double piece = c.drawer().stream().mapToDouble(Piece::u).max().orElse(0);
            double u = prediction.u(piece * piece);
            double guard = Conformity.guardBand(rule.probability(), u, prediction.freedom(u));
            aim = Double.isInfinite(limits.low())
                    ? w.line("aim", "upper limit − t × u", limits.high() - guard, Kind.LENGTH, "JCGM 106:2012 8.3.2")
                    : w.line("aim", "lower limit + t × u", limits.low() + guard, Kind.LENGTH, "JCGM 106:2012 8.3.2");
        }
        return w.line("wanted thickness", "trial + (aim − measured) / effect", prediction.thickness(aim), Kind.LENGTH);
    }

    private static List<Refusal> faults(Case c) {
        List<Refusal> refusals = new ArrayList<>();
        Limits.fault(c.lower(), c.upper()).ifPresent(refusals::add);
        if (Math.abs(c.effect()) < 0.01) {
            refusals.add(
                    Refusal.of("effect", "a shim that does not move the clearance cannot set it", "Usually -1 or 1"));
        }
        Double aim = c.aim();
        if (aim != null && refusals.isEmpty() && !new Limits(c.lower(), c.upper()).hold(aim)) {
            refusals.add(Refusal.of("aim", "it does not lie between the limits", "Aim inside them"));
        }
        if (c.minPieces() > c.maxPieces()) {
            refusals.add(Refusal.of(
                    "minPieces", "is " + c.minPieces() + ", more than maxPieces " + c.maxPieces(), "Swap them"));
        }
        Set<String> tags = new HashSet<>();
        for (Piece piece : c.drawer()) {
            if (!tags.add(piece.id())) {
                refusals.add(Refusal.of(
                        "drawer", "\"" + piece.id() + "\" stands there twice", "Give each piece its own tag"));
            }
        }
        if (packs(c.drawer().size(), c.maxPieces()) > MOST_PACKS) {
            refusals.add(Refusal.of(
                    "maxPieces",
                    c.drawer().size() + " pieces make too many packs of up to " + c.maxPieces(),
                    "Allow fewer pieces in a pack"));
        }
        return refusals;
    }

    private static double packs(int pieces, int most) {
        double all = 0;
        double packs = 1;
        for (int k = 1; k <= Math.min(most, pieces); k++) {
            packs = packs * (pieces - k + 1) / k;
            all += packs;
        }
        return all;
    }
}
