package shimwright.mechanics.axial.shim;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import shimwright.mechanics.conformity.Limits;
import shimwright.mechanics.conformity.Rule;
import shimwright.mechanics.conformity.Verdict;
import shimwright.mechanics.quantity.InSentence;

/** What to do with the offers, or without any: fit, buy, grind, or measure again, with numbers. */
record PackAdvice(ShimPack.Case c, Prediction prediction, Rule rule, double wanted) {
    private static final double MOST_GROUND = 0.3e-3;

    String advice(List<PackOffer> offers) {
        if (offers.isEmpty()) {
            return none();
        }
        PackOffer best = offers.get(0);
        String pack = (best.pieces().isEmpty() ? "no shim" : String.join(" + ", best.pieces())) + ", "
                + InSentence.length(best.thickness());
        String expected = InSentence.length(best.predicted()) + " expected, " + InSentence.percent(best.probability())
                + " sure to lie within " + band() + ".";
        if (best.verdict() == Verdict.IN) {
            return "Fit " + pack + ": " + expected;
        }
        return "Best is " + pack + ": " + expected + " That is not proof. " + settle(best) + better();
    }

    private String band() {
        Limits limits = prediction.limits();
        if (limits.closed()) {
            return InSentence.length(limits.low()) + " to " + InSentence.length(limits.high());
        }
        return Double.isInfinite(limits.low())
                ? "at most " + InSentence.length(limits.high())
                : "at least " + InSentence.length(limits.low());
    }

    /** How well the clearance, or the shims, must be known for the best pack to be proven. */
    private String settle(PackOffer best) {
        Limits limits = prediction.limits();
        if (!(best.predicted() > limits.low() && best.predicted() < limits.high())) {
            return "It stands on a limit.";
        }
        if (!proven(best, 0, Double.POSITIVE_INFINITY)) {
            double shims = Math.abs(prediction.effect()) * Math.hypot(best.uThickness(), prediction.uTrial());
            return "No reading can settle it: the shims alone are known only to " + InSentence.uncertainty(shims)
                    + ". Measure them finer.";
        }
        if (proven(best, prediction.uMeasured(), Double.POSITIVE_INFINITY)) {
            return "The uncertainty itself rests on too few rounds: read more.";
        }
        double needed = 0;
        double much = prediction.uMeasured();
        for (int i = 0; i < 60; i++) {
            double middle = (needed + much) / 2;
            boolean enough = proven(best, middle, prediction.nu());
            needed = enough ? middle : needed;
            much = enough ? much : middle;
        }
        long times = (long) Math.ceil(Math.pow(prediction.uMeasured() / needed, 2) - 1e-9);
        String rounds = times > 20
                ? "a finer gauge"
                : "about " + times + " times as many rounds if they scatter, else a finer gauge";
        return "It takes a clearance known to " + InSentence.uncertainty(needed) + " (now "
                + InSentence.uncertainty(prediction.uMeasured()) + "): " + rounds + ".";
    }

    /** Whether the pack would be proven by a clearance known so well, with so many degrees of freedom. */
    private boolean proven(PackOffer pack, double uMeasured, double nu) {
        Prediction known = new Prediction(
                prediction.measured(),
                uMeasured,
                nu,
                prediction.trial(),
                prediction.uTrial(),
                prediction.effect(),
                prediction.limits());
        return known.probability(pack.thickness(), pack.uThickness() * pack.uThickness()) >= rule.probability();
    }

    /** A piece to buy, where one of the wanted thickness would be proven. */
    private String better() {
        return wanted > 0 && ideal() >= rule.probability()
                ? " Or buy one of " + InSentence.length(wanted) + ": " + InSentence.percent(ideal()) + " sure."
                : "";
    }

    private double ideal() {
        double piece = c.drawer().stream().mapToDouble(Piece::u).max().orElse(prediction.uTrial());
        return prediction.probability(wanted, piece * piece);
    }

    private String none() {
        double[] window = prediction.window();
        if (window[1] < 0) {
            return "No pack can do it: it would have to be thinner than nothing by " + InSentence.length(-window[1])
                    + ". Look for a wrong part, or the wrong sign of the effect.";
        }
        StringBuilder advice = new StringBuilder("No pack of the drawer lies within: it must be ");
        double least = Math.max(0, window[0]);
        advice.append(
                Double.isInfinite(window[1])
                        ? InSentence.length(least) + " or more. "
                        : InSentence.length(least) + " to " + InSentence.length(window[1]) + ". ");
        advice.append("Buy ").append(InSentence.length(Math.max(0, wanted)));
        grind(window[1]).ifPresent(advice::append);
        advice.append('.');
        if (ideal() < rule.probability()) {
            advice.append(" Even that would be only ")
                    .append(InSentence.percent(ideal()))
                    .append(" sure: the clearance is known to ")
                    .append(InSentence.uncertainty(prediction.uMeasured()))
                    .append(" only. Measure finer first.");
        }
        return advice.toString();
    }

    /** The least grinding that brings one piece, alone or with one more, to the wanted thickness. */
    private Optional<String> grind(double most) {
        if (Double.isInfinite(most)) {
            return Optional.empty();
        }
        double least = Double.POSITIVE_INFINITY;
        Optional<String> advice = Optional.empty();
        for (List<Piece> pack : onesAndTwos()) {
            double off = pack.stream().mapToDouble(Piece::thickness).sum() - wanted;
            Piece ground = pack.get(pack.size() - 1);
            if (off > 0 && off < least && off <= MOST_GROUND && ground.thickness() > off) {
                least = off;
                String with =
                        pack.size() == 2 ? " and fit it with " + pack.get(0).id() : "";
                advice = Optional.of(
                        ", or grind " + ground.id() + " to " + InSentence.length(ground.thickness() - off) + with);
            }
        }
        return advice;
    }

    private List<List<Piece>> onesAndTwos() {
        List<Piece> drawer = c.drawer();
        List<List<Piece>> packs = new ArrayList<>();
        for (int i = 0; i < drawer.size(); i++) {
            if (c.minPieces() <= 1) {
                packs.add(List.of(drawer.get(i)));
            }
            for (int j = 0; j < i && c.maxPieces() >= 2 && c.minPieces() <= 2; j++) {
                Piece one = drawer.get(i);
                Piece two = drawer.get(j);
                packs.add(one.thickness() < two.thickness() ? List.of(one, two) : List.of(two, one));
            }
        }
        return packs;
    }
}
