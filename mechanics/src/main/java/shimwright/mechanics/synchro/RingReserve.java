package shimwright.mechanics.synchro;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.mechanics.worksheet.Input;
import shimwright.mechanics.worksheet.Output;
import shimwright.mechanics.worksheet.Worksheet;

/** The worksheet {@code ring-reserve}: how much wear is left in a blocker ring. */
public final class RingReserve {
    private static final String SHOP = "common practice, no source";
    private static final double DISTORTED = 1e-4;

    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
            "ring-reserve",
            "Blocker ring reserve",
            "Wear left in a blocker ring from the gap to the dog teeth, its spread, and the distance it may still go.",
            List.of("cone geometry", SHOP),
            Case.class,
            Result.class,
            RingReserve::work);

    private RingReserve() {}

    /** Lengths in metres, angles in radians. */
    public record Case(
            @Input(
                    kind = Kind.LENGTH,
                    meaning = "gap between ring and dog teeth, ring seated and turned home, at several places",
                    min = 0,
                    max = 0.02,
                    most = 24,
                    example = "0.90 0.94 0.92 mm")
            List<Double> gaps,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "gap of a new ring on this cone",
                    min = 1e-5,
                    max = 0.02,
                    example = "1.30 mm")
            double newGap,

            @Input(kind = Kind.LENGTH, meaning = "service limit of the gap", min = 0, max = 0.02, example = "0.80 mm")
            double limit,

            @Input(kind = Kind.ANGLE, meaning = "cone half angle", min = 0.02, max = 0.6, example = "6.5°") @Nullable
            Double coneHalfAngle,

            @Input(kind = Kind.LENGTH, meaning = "largest spread allowed round the ring", min = 0, max = 0.01) @Nullable
            Double spreadLimit,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "gap lost over the wear distance, as a positive number",
                    min = 1e-7,
                    max = 0.02)
            @Nullable
            Double wearRate,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "distance over which that much is lost",
                    orElse = "100000 km",
                    min = 1e3,
                    max = 1e10,
                    unit = "km")
            double wearDistance,

            @Input(meaning = "oiled ring pressed on its cone by hand does not turn", orElse = "not tried")
            Grip grip) {}

    /** The hand test of a ring. */
    public enum Grip {
        HOLDS,
        SLIPS,
        NOT_TRIED
    }

    /** Lengths in metres. */
    public record Result(
            @Output(kind = Kind.LENGTH, meaning = "smallest gap, which counts")
            double smallest,

            @Output(kind = Kind.LENGTH, meaning = "spread round the ring")
            double spread,

            @Output(kind = Kind.LENGTH, meaning = "gap left to the limit, negative below it")
            double left,

            @Output(meaning = "share of the reserve used", unit = "%", decimals = 1)
            double used,

            @Output(
                    kind = Kind.LENGTH,
                    meaning = "material lost from the cone, on the radius, both faces together",
                    decimals = 4)
            @Nullable
            Double radialLoss,

            @Output(kind = Kind.LENGTH, meaning = "distance left at this wear", unit = "km", decimals = 0) @Nullable
            Double distanceLeft,

            @Output(meaning = "the ring passes gap, spread and grip")
            boolean passes) {}

    /**
     * Reserve of a ring by its gap.
     *
     * @param c the case; the smallest gap counts, radial loss = gap lost × tan(half angle)
     * @return refused where the gap of a new ring is not above the limit. Source: cone geometry; limits are the unit's
     *     own, no universal figure exists
     */
    public static Outcome<Worked<Result>> work(Case c) {
        List<Refusal> faults = new ArrayList<>();
        if (!(c.newGap() > c.limit())) {
            faults.add(Refusal.of(
                    "newGap",
                    "is not above the limit, so there is no reserve to share",
                    "Look at both; where a maker's standard starts at the limit, measure a new ring on this cone"));
            return Outcome.refused(faults);
        }
        Working w = new Working();
        double smallest = w.line(
                "smallest gap",
                "of " + c.gaps().size() + " places",
                c.gaps().stream().mapToDouble(Double::doubleValue).min().orElseThrow(),
                Kind.LENGTH);
        double largest =
                c.gaps().stream().mapToDouble(Double::doubleValue).max().orElseThrow();
        double spread = w.line("spread", "largest − smallest", largest - smallest, Kind.LENGTH);
        double left = w.line("left", "smallest − limit", smallest - c.limit(), Kind.LENGTH);
        double used = w.line(
                "share used",
                "(new − now) / (new − limit)",
                (c.newGap() - smallest) / (c.newGap() - c.limit()),
                Kind.NUMBER,
                SHOP);
        Double angle = c.coneHalfAngle();
        Double loss = angle == null
                ? null
                : (Double) w.line(
                        "radial loss",
                        "(new − now) × tan(half angle)",
                        (c.newGap() - smallest) * Math.tan(angle),
                        Kind.LENGTH,
                        "cone geometry");
        Double rate = c.wearRate();
        Double distance = rate == null
                ? null
                : (Double) w.line(
                        "distance left",
                        "left / wear × its distance",
                        Math.max(0, left) / rate * c.wearDistance(),
                        Kind.LENGTH,
                        SHOP);
        Double spreadLimit = c.spreadLimit();
        boolean spreadOut = spreadLimit != null && spread > spreadLimit;
        cautions(c, w, spread, left);
        boolean passes = left >= 0 && !spreadOut && c.grip() != Grip.SLIPS;
        return Outcome.ok(w.worked(new Result(smallest, spread, left, used, loss, distance, passes)));
    }

    private static void cautions(Case c, Working w, double spread, double left) {
        if (left < 0) {
            w.caution("Below the limit: the ring would touch the dog teeth before it grips. Replace it.");
        }
        if (c.gaps().size() < 3) {
            w.caution("Measured at fewer than three places: a distorted ring would not show.");
        }
        if (spread > DISTORTED && c.spreadLimit() == null) {
            w.caution("The gap differs by over 0.1 mm round the ring: ring distorted, cone bent or not seated (trade"
                    + " figure).");
        }
        if (c.grip() == Grip.NOT_TRIED) {
            w.caution("Try the grip as well: oil it, press it on by hand, twist. Gap and grip fail apart.");
        }
        if (c.grip() == Grip.SLIPS) {
            w.caution("The ring slips by hand: glazed or worn thread. Replace it whatever the gap.");
        }
    }
}
