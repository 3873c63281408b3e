package shimwright.mechanics.bearing;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.Units;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.mechanics.worksheet.Input;
import shimwright.mechanics.worksheet.Output;
import shimwright.mechanics.worksheet.Worksheet;

/** The worksheet {@code bearing-life}: basic rating life under a duty, reliability, and life of a set of bearings. */
public final class BearingLife {
    private static final String ISO = "ISO 281:2007";
    private static final double WEIBULL_SLOPE = 1.5;
    private static final double MILLION = 1e6;

    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
            "bearing-life",
            "Bearing rating life",
            "Basic rating life of a rolling bearing under its duty, with reliability, and the life of a whole set.",
            List.of(
                    "ISO 281:2007, basic rating life and life modification for reliability",
                    "life of a set: Lundberg and Palmgren 1947, bearing makers' rule"),
            Case.class,
            Result.class,
            BearingLife::work);

    private BearingLife() {}

    /** Rolling elements; they give the exponent of the life. */
    public enum Elements {
        BALL(3),
        ROLLER(10.0 / 3);

        private final double exponent;

        Elements(double exponent) {
            this.exponent = exponent;
        }
    }

    /** Which factors for a reliability above 90 %. */
    public enum Edition {
        /** With a least life: 0.64 at 95 %, 0.25 at 99 %. */
        ISO_281_2007,
        /** Before: 0.62 at 95 %, 0.21 at 99 %. */
        ISO_281_1990
    }

    /** A part of the duty; forces in newtons, rotation in rad/s. */
    public record Load(
            @Input(kind = Kind.FORCE, meaning = "radial load", min = 0, max = 1e7, example = "2500 N")
            double radial,

            @Input(kind = Kind.ROTATION, meaning = "speed", min = 0.01, max = 5000, example = "720 rpm")
            double speed,

            @Input(kind = Kind.FORCE, meaning = "axial load", orElse = "0 N", min = 0, max = 1e7)
            double axial,

            @Input(meaning = "share of the time", orElse = "1", min = 0, max = 1e6)
            double share) {}

    /** Forces in newtons, times in seconds. */
    public record Case(
            @Input(meaning = "rolling elements", example = "ball")
            Elements elements,

            @Input(kind = Kind.FORCE, meaning = "basic dynamic load rating C", min = 1, max = 1e8, example = "7350 N")
            double rating,

            @Input(
                    meaning = "loads: radial: speed: axial: share of time",
                    most = 50,
                    example = "2500 N: 720 rpm: 1000 N: 1")
            List<Load> loads,

            @Input(meaning = "factor X of the radial load", orElse = "1", min = 0, max = 5)
            double factorX,

            @Input(meaning = "factor Y of the axial load", orElse = "0", min = 0, max = 10)
            double factorY,

            @Input(meaning = "reliability wanted", orElse = "90 %", min = 0.5, max = 0.9995, unit = "%")
            double reliability,

            @Input(meaning = "edition of the reliability factors", orElse = "iso 281 2007")
            Edition edition,

            @Input(kind = Kind.TIME, meaning = "life wanted", min = 3600, max = 1e10, unit = "h") @Nullable
            Double wantedLife,

            @Input(
                    kind = Kind.TIME,
                    meaning = "rating lives of the other bearings of the set",
                    fewest = 0,
                    min = 1,
                    max = 1e12,
                    unit = "h",
                    most = 30)
            List<Double> others,

            @Input(
                    meaning = "Weibull slope for the set: 1.5 as ISO 281 takes it, makers' rule 10/9 ball, 9/8 roller",
                    orElse = "1.5",
                    min = 0.5,
                    max = 5)
            double slope) {}

    /** Forces in newtons, times in seconds. */
    public record Result(
            @Output(kind = Kind.FORCE, meaning = "equivalent load, mean over the duty", decimals = 1)
            double load,

            @Output(kind = Kind.ROTATION, meaning = "mean speed", decimals = 1)
            double speed,

            @Output(meaning = "basic rating life L10, million revolutions", decimals = 2)
            double revolutions,

            @Output(kind = Kind.TIME, meaning = "basic rating life L10", unit = "h", decimals = 1)
            double life,

            @Output(meaning = "reliability factor a1", decimals = 3)
            double reliabilityFactor,

            @Output(kind = Kind.TIME, meaning = "life at the reliability wanted", unit = "h", decimals = 1)
            double reliableLife,

            @Output(kind = Kind.TIME, meaning = "rating life of the whole set", unit = "h", decimals = 1)
            double systemLife,

            @Output(kind = Kind.FORCE, meaning = "load rating needed for the life wanted", decimals = 1) @Nullable
            Double neededRating) {}

    /**
     * Rating life.
     *
     * @param c the case; P = the larger of radial and X·radial + Y·axial; shares of time are normed to their sum
     * @return refused where no load acts or all shares are 0. Source: ISO 281:2007, 5 to 7 and 9.3; duty by the power
     *     mean; set by (Σ L^−e)^(−1/e)
     */
    public static Outcome<Worked<Result>> work(Case c) {
        Duty duty = duty(c);
        List<Refusal> faults = new ArrayList<>();
        if (!(duty.time() > 0)) {
            faults.add(Refusal.of("loads", "all shares of time are 0", "Give each load its share, such as 0.2"));
        } else if (!(duty.damage() > 0)) {
            faults.add(Refusal.of("loads", "no load acts", "Give the radial load in newtons"));
        }
        if (!faults.isEmpty()) {
            return Outcome.refused(faults);
        }
        double p = c.elements().exponent;
        Working w = new Working();
        double speed = w.line("mean speed", "Σ(speed × share) / Σ share", duty.turns() / duty.time(), Kind.ROTATION);
        double mean = w.line(
                "equivalent load P",
                "(Σ(P^p × speed × share) / Σ(speed × share))^(1/p)",
                Math.pow(duty.damage() / duty.turns(), 1 / p),
                Kind.FORCE,
                ISO);
        double revolutions =
                w.line("L10, million revolutions", "(C/P)^p", Math.pow(c.rating() / mean, p), Kind.NUMBER, ISO);
        if (!(revolutions < 1e15)) {
            return Outcome.refused(
                    Refusal.of("loads", "the load is nothing against the rating", "Look at the units of the load"));
        }
        double perSecond = speed / (2 * Math.PI);
        double life = w.line("L10", "10⁶ × revolutions / speed", revolutions * MILLION / perSecond, Kind.TIME, ISO);
        double a1 = w.line(
                "a1",
                expression(c.edition()),
                factor(c),
                Kind.NUMBER,
                c.edition() == Edition.ISO_281_2007 ? ISO : "ISO 281:1990");
        double sum = Math.pow(life, -c.slope());
        for (double other : c.others()) {
            sum += Math.pow(other, -c.slope());
        }
        double system = w.line(
                "life of the set",
                "(Σ L^−e)^(−1/e)",
                Math.pow(sum, -1 / c.slope()),
                Kind.TIME,
                "product of reliabilities; bearing makers' rule");
        Double wanted = c.wantedLife();
        Double needed = wanted == null
                ? null
                : (Double) w.line(
                        "rating needed",
                        "P × (revolutions wanted / (a1 × 10⁶))^(1/p)",
                        mean * Math.pow(wanted * perSecond / MILLION / a1, 1 / p),
                        Kind.FORCE,
                        ISO);
        cautions(c, w, mean);
        return Outcome.ok(w.worked(new Result(mean, speed, revolutions, life, a1, a1 * life, system, needed)));
    }

    /** Sums over the duty: shares, share × speed, and share × speed × P^p. */
    private record Duty(double time, double turns, double damage) {}

    private static Duty duty(Case c) {
        double time = 0;
        double turns = 0;
        double damage = 0;
        for (Load load : c.loads()) {
            time += load.share();
            turns += load.share() * load.speed();
            damage += load.share() * load.speed() * Math.pow(equivalent(c, load), c.elements().exponent);
        }
        return new Duty(time, turns, damage);
    }

    private static double equivalent(Case c, Load load) {
        return Math.max(load.radial(), c.factorX() * load.radial() + c.factorY() * load.axial());
    }

    private static String expression(Edition edition) {
        String plain = "(ln(1/R)/ln(1/0.9))^(1/1.5)";
        return edition == Edition.ISO_281_2007 ? "0.05 + 0.95 × " + plain : plain;
    }

    private static double factor(Case c) {
        double plain = Math.pow(Math.log(1 / c.reliability()) / Math.log(1 / 0.9), 1 / WEIBULL_SLOPE);
        return c.edition() == Edition.ISO_281_2007 ? 0.05 + 0.95 * plain : plain;
    }

    private static void cautions(Case c, Working w, double mean) {
        w.caution("A rating life is for a new bearing. It tells which bearing is the weak one and whether a substitute"
                + " carries the load, not whether a used one may stay.");
        if (mean > 0.5 * c.rating()) {
            w.caution("The load is over half of the rating, " + Quantities.print(c.rating(), Units.NEWTON, 0)
                    + ": the life formula does not hold there.");
        }
        boolean thrust = c.loads().stream().anyMatch(load -> load.axial() > 0);
        if (thrust && c.factorY() == 0) {
            w.caution("An axial load is given but its factor Y is 0: take X and Y from the bearing's table.");
        }
    }
}
