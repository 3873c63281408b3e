package shimwright.rebuild.sendout;

import static shimwright.rebuild.sendout.SentFacts.mm;

import java.util.Collections;
import java.util.List;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.seal.SealSeats;
import shimwright.mechanics.working.Working;

/**
 * Between which diameters a round part is to be finished, in metres.
 *
 * @param lower no part of it smaller
 * @param upper no part of it larger
 */
record FinishedSize(double lower, double upper) {
    /** Sheets are read to a thousandth of a millimetre, so limits are that, rounded inwards. */
    private static final double STEP = 1e-6;

    /** A reading of the mate may be off by so many standard uncertainties, as in guard bands of JCGM 106:2012. */
    private static final double COVERAGE = 2;

    /** What the size of a round part follows from, by the names of {@link OtherWork#facts}. */
    static List<String> asks(OtherWork work) {
        return switch (work.size()) {
            case TO_ITS_MATE -> List.of("mate", "mateU", "fitLeast", "fitMost");
            case TYPED -> List.of("sizeLeast", "sizeMost");
            case FOR_A_SEAL -> List.of("shaft", "bore");
            case NONE -> List.of();
        };
    }

    static Outcome<FinishedSize> of(OtherWork work, SentFacts facts, Working working) {
        return switch (work.size()) {
            case TO_ITS_MATE -> toMate(work, facts, working);
            case TYPED -> typed(facts);
            case FOR_A_SEAL -> forSeal(facts, working);
            case NONE -> throw new IllegalStateException(work + " has no size");
        };
    }

    /** What has the play that is wanted to every reading of the mate, whatever the true size behind the reading is. */
    private static Outcome<FinishedSize> toMate(OtherWork work, SentFacts facts, Working w) {
        double guard = w.line("guard", "2 u of the mate", COVERAGE * facts.number("mateU"), Kind.LENGTH, "JCGM 106");
        double small =
                w.line("smallest mate", "least reading", Collections.min(facts.read("mate")), Kind.LENGTH, "measured");
        double large = w.line(
                "largest mate", "greatest reading", Collections.max(facts.read("mate")), Kind.LENGTH, "measured");
        double least = facts.number("fitLeast");
        double most = facts.number("fitMost");
        boolean shaft = work.shape() == OtherWork.Shape.SHAFT;
        double lower = w.line(
                "finished size, least",
                shaft ? "largest mate − most play + guard" : "largest mate + least play + guard",
                inwards(shaft ? large - most + guard : large + least + guard, true),
                Kind.LENGTH);
        double upper = w.line(
                "finished size, most",
                shaft ? "smallest mate − least play − guard" : "smallest mate + most play − guard",
                inwards(shaft ? small - least - guard : small + most - guard, false),
                Kind.LENGTH);
        return lower <= upper
                ? Outcome.ok(new FinishedSize(lower, upper))
                : Outcome.refused(new Refusal(
                        "more.fitMost",
                        "play wanted",
                        "no size has it to the mate as measured: its readings lie " + mm(large - small)
                                + " apart and are known to " + mm(guard),
                        "Measure the mate better, allow more play, or have the mate worked as well"));
    }

    private static Outcome<FinishedSize> typed(SentFacts facts) {
        FinishedSize size = new FinishedSize(facts.number("sizeLeast"), facts.number("sizeMost"));
        return size.lower() < size.upper()
                ? Outcome.ok(size)
                : Outcome.refused(new Refusal(
                        "more.sizeMost",
                        "finished size at most",
                        mm(size.upper()) + " is not above " + mm(size.lower()),
                        "Nobody grinds to one size: say from which to which"));
    }

    /** The track of a rotary lip seal: h11 of ISO 286-1 as ISO 6194-1 has it, by the sheet of the seal seat. */
    private static Outcome<FinishedSize> forSeal(SentFacts facts, Working w) {
        double shaft = facts.number("shaft");
        return SealSeats.work(new SealSeats.Case(
                        shaft, facts.number("bore"), SealSeats.Case.Outside.METAL, null, null, null, null, 0, 0))
                .map(worked -> new FinishedSize(w.include(worked).shaftMin(), shaft))
                .reworded(refusal -> refusal.placed("more." + refusal.key(), refusal.place()));
    }

    private static double inwards(double metres, boolean up) {
        double steps = metres / STEP;
        double whole = Math.rint(steps);
        // what lies on a thousandth but for the last bits stays there
        double rounded = Math.abs(steps - whole) < 1e-6 ? whole : up ? Math.ceil(steps) : Math.floor(steps);
        return rounded * STEP;
    }

    /** The play that it has to the readings of a mate, in words. */
    String play(OtherWork work, List<Double> mate) {
        boolean shaft = work.shape() == OtherWork.Shape.SHAFT;
        double least = shaft ? Collections.min(mate) - upper : lower - Collections.max(mate);
        double most = shaft ? Collections.max(mate) - lower : upper - Collections.min(mate);
        return least >= 0
                ? mm(least) + " to " + mm(most) + " of play: it goes home by hand, clean and oiled"
                : most <= 0
                        ? mm(-most) + " to " + mm(-least)
                                + " tight: what heat and force it takes stands at the joint of its step"
                        : "from " + mm(-least) + " tight to " + mm(most)
                                + " of play: by hand or with a little heat, never by the hammer";
    }
}
