package shimwright.mechanics.fit;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.conformity.Verdict;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.mechanics.worksheet.Input;
import shimwright.mechanics.worksheet.Output;
import shimwright.mechanics.worksheet.Worksheet;

/** The worksheet {@code needle-fit}: housing bore and raceway for a drawn cup needle bearing. */
public final class NeedleFit {
    private static final String CLASSES =
            "a needle bearing maker's public catalog, bearing fit in housing and on shaft: N6 iron, R6 light alloy; h5, k5 with inner ring";
    private static final String INSCRIBED =
            "the same: needles' inscribed circle F8 once pressed in, housing stiff enough";

    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
            "needle-fit",
            "Drawn cup needle bearing",
            "Limits of housing bore and raceway for a pressed-in needle bearing, and the play its needles have.",
            List.of(CLASSES, INSCRIBED, "ISO 286-1:2010 Tables 1 to 5"),
            Case.class,
            Result.class,
            NeedleFit::work);

    private NeedleFit() {}

    /** What the cup is pressed into. */
    public enum Housing {
        STEEL_OR_IRON,
        LIGHT_ALLOY
    }

    /** Lengths in metres. */
    public record Case(
            @Input(
                    kind = Kind.LENGTH,
                    meaning = "under the needles, nominal",
                    min = 0.002,
                    max = 0.1,
                    example = "20 mm")
            double needles,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "outside of the cup, nominal",
                    min = 0.003,
                    max = 0.12,
                    example = "26 mm")
            double outside,

            @Input(meaning = "what it is pressed into", example = "light alloy")
            Housing housing,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "bore of the inner ring, nominal; left out where the needles run on the shaft",
                    min = 0.001,
                    max = 0.1)
            @Nullable
            Double ring,

            @Input(kind = Kind.LENGTH, meaning = "housing bore as measured", min = 0.002, max = 0.13) @Nullable
            Double bore,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "shaft as measured, at the raceway or under the ring",
                    min = 0.001,
                    max = 0.11)
            @Nullable
            Double raceway) {}

    /** Lengths in metres; play diametral. */
    public record Result(
            @Output(meaning = "class of the housing bore") String housingClass,

            @Output(kind = Kind.LENGTH, decimals = 4, meaning = "smallest housing bore")
            double boreMin,

            @Output(kind = Kind.LENGTH, decimals = 4, meaning = "largest housing bore")
            double boreMax,

            @Output(meaning = "class of the shaft") String shaftClass,

            @Output(kind = Kind.LENGTH, decimals = 4, meaning = "smallest shaft")
            double shaftMin,

            @Output(kind = Kind.LENGTH, decimals = 4, meaning = "largest shaft")
            double shaftMax,

            @Output(kind = Kind.LENGTH, decimals = 4, meaning = "least play of the needles on a raceway") @Nullable
            Double leastPlay,

            @Output(kind = Kind.LENGTH, decimals = 4, meaning = "most play of the needles on a raceway") @Nullable
            Double mostPlay,

            @Output(meaning = "housing bore") Verdict boreVerdict,
            @Output(meaning = "shaft") Verdict racewayVerdict) {}

    /**
     * Classes by the housing and whether an inner ring is there; without one the needles' inscribed circle (F8) less the raceway
     * is their play. What was measured is compared by number alone.
     *
     * @param c lengths in m
     * @return lengths in m; with an inner ring the shaft is that under the ring, of the ring's bore, and no play is worked out;
     *     refused: a cup no larger than its needles, a ring whose bore is no smaller than them, a size over 1 mm from its nominal one
     */
    static Outcome<Worked<Result>> work(Case c) {
        List<Refusal> refusals = new ArrayList<>();
        if (c.outside() <= c.needles()) {
            refusals.add(Refusal.of("outside", "the cup is no larger than its needles", "Look which is which"));
        }
        Double ring = c.ring();
        if (ring != null && ring >= c.needles()) {
            refusals.add(
                    Refusal.of("ring", "its bore is no smaller than the circle of the needles", "Look which is which"));
        }
        double under = ring == null ? c.needles() : ring;
        far(c.bore(), c.outside(), "bore", refusals);
        far(c.raceway(), under, "raceway", refusals);
        if (!refusals.isEmpty()) {
            return Outcome.refused(refusals);
        }
        Working w = new Working();
        String housing = c.housing() == Housing.LIGHT_ALLOY ? "R6" : "N6";
        String shaft = ring == null ? "h5" : "k5";
        return Iso286.of("outside", c.outside(), housing, true, w)
                .flatMap(bore -> Iso286.of(ring == null ? "needles" : "ring", under, shaft, false, w)
                        .flatMap(race -> Iso286.of("needles", c.needles(), "F8", true, w)
                                .map(circle -> fitted(c, housing, bore, shaft, race, circle, w))));
    }

    private static void far(@Nullable Double measured, double nominal, String key, List<Refusal> refusals) {
        if (measured != null && Math.abs(measured - nominal) > 1e-3) {
            refusals.add(Refusal.of(key, "it is more than 1 mm from its nominal size", "Look at the unit"));
        }
    }

    private static Worked<Result> fitted(
            Case c, String housing, SizeLimits bore, String shaft, SizeLimits race, SizeLimits circle, Working w) {
        boolean runsOnShaft = c.ring() == null;
        Double raceway = c.raceway();
        double largest = raceway == null ? race.largest() : raceway;
        double smallest = raceway == null ? race.smallest() : raceway;
        Double least = runsOnShaft
                ? w.line("least play", "smallest circle − raceway", circle.smallest() - largest, Kind.LENGTH, INSCRIBED)
                : null;
        Double most = runsOnShaft
                ? w.line("most play", "largest circle − raceway", circle.largest() - smallest, Kind.LENGTH, INSCRIBED)
                : null;
        w.caution(
                "The cup takes its shape from the housing: a worn or oval bore makes an oval bearing. It is not measured free.");
        w.caution(
                "Press on the stamped side with a shouldered mandrel, never on the needles, and not against a shoulder.");
        w.caution(
                "As a raceway the shaft is hardened and ground; a step or brinell mark there is a new shaft or a smaller needle.");
        return w.worked(new Result(
                housing,
                bore.smallest(),
                bore.largest(),
                shaft,
                race.smallest(),
                race.largest(),
                least,
                most,
                within(c.bore(), bore),
                within(c.raceway(), race)));
    }

    private static Verdict within(@Nullable Double measured, SizeLimits limits) {
        if (measured == null) {
            return Verdict.NOT_PROVEN;
        }
        return measured >= limits.smallest() && measured <= limits.largest() ? Verdict.IN : Verdict.OUT;
    }
}
