package shimwright.mechanics.axial;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import shimwright.mechanics.conformity.Conformity;
import shimwright.mechanics.conformity.Limits;
import shimwright.mechanics.conformity.Rule;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;

/** The pack that makes the final clearance most surely lawful. */
public final class ShimPack {
    private static final double MOST_PACKS = 2e7;
    private static final String SOURCE = "JCGM 106:2012 7.4";

    private ShimPack() {}

    /**
     * wanted = trial + (aim − measured)/effect, the aim being the middle of the limits where none is given; every pack of the drawer by its probability of lying within the
     * limits ({@link PackSearch} for the order). A pack whose clearance stands outside a limit is never offered, however
     * near. Refused: no limit, limits the wrong way round, an aim outside them, an effect of 0, more pieces at least than at
     * most, a tag twice, or more than 20 million packs to look through.
     */
    public static Outcome<Worked<ShimPackResult>> work(ShimPackCase c) {
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
                    Readings.GUM + " 5.1.2");
            w.line("probability", "chance of lying within the limits", best.probability(), Kind.NUMBER, SOURCE);
        }
        if (c.drawer().stream().anyMatch(piece -> piece.thickness() == 0)) {
            w.caution("A piece in the drawer has no thickness: measure it.");
        }
        String advice = new PackAdvice(c, prediction, rule, wanted).advice(offers);
        return Outcome.ok(w.worked(new ShimPackResult(wanted, window[0], window[1], offers, advice)));
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

    private static double wanted(ShimPackCase c, Prediction prediction, Rule rule, Working w) {
        Limits limits = prediction.limits();
        Double given = c.aim();
        double aim;
        if (given != null) {
            aim = w.line("aim", "as given", given, Kind.LENGTH);
        } else if (limits.closed()) {
            aim = w.line("aim", "middle of the limits", (limits.low() + limits.high()) / 2, Kind.LENGTH);
        } else {
            double piece = c.drawer().stream().mapToDouble(Piece::u).max().orElse(0);
            double guard =
                    Conformity.guardBand(rule.probability(), prediction.u(piece * piece), Double.POSITIVE_INFINITY);
            aim = Double.isInfinite(limits.low())
                    ? w.line("aim", "upper limit − z × u", limits.high() - guard, Kind.LENGTH, "JCGM 106:2012 8.3.2")
                    : w.line("aim", "lower limit + z × u", limits.low() + guard, Kind.LENGTH, "JCGM 106:2012 8.3.2");
        }
        return w.line("wanted thickness", "trial + (aim − measured) / effect", prediction.thickness(aim), Kind.LENGTH);
    }

    private static List<Refusal> faults(ShimPackCase c) {
        List<Refusal> refusals = new ArrayList<>();
        ConformitySheet.faultOf(c.lower(), c.upper()).ifPresent(refusals::add);
        if (Math.abs(c.effect()) < 0.01) {
            refusals.add(
                    new Refusal("effect", "a shim that does not move the clearance cannot set it", "Usually -1 or 1"));
        }
        Double aim = c.aim();
        if (aim != null && refusals.isEmpty() && !new Limits(c.lower(), c.upper()).hold(aim)) {
            refusals.add(new Refusal("aim", "it does not lie between the limits", "Aim inside them"));
        }
        if (c.minPieces() > c.maxPieces()) {
            refusals.add(new Refusal(
                    "minPieces", "is " + c.minPieces() + ", more than maxPieces " + c.maxPieces(), "Swap them"));
        }
        Set<String> tags = new HashSet<>();
        for (Piece piece : c.drawer()) {
            if (!tags.add(piece.id())) {
                refusals.add(new Refusal(
                        "drawer", "\"" + piece.id() + "\" stands there twice", "Give each piece its own tag"));
            }
        }
        if (packs(c.drawer().size(), c.maxPieces()) > MOST_PACKS) {
            refusals.add(new Refusal(
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
