package shimwright.mechanics.thread;

import org.jspecify.annotations.Nullable;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.Units;

/**
 * Basic sizes of a 60° thread: metric (ISO 68-1:1998, ISO 724:1993) or unified (ASME B1.1). Lengths in m.
 *
 * @param diameter nominal major diameter
 * @param pitch axial distance of the crests
 * @param unified whether it is an inch thread given by threads per inch
 */
record ThreadForm(double diameter, double pitch, boolean unified) {
    private static final double INCH = 0.0254;
    /** Coarsest pitch, as a share of the diameter, that leaves half the section at the root. */
    private static final double COARSEST = 0.4;

    /**
     * From what was typed.
     *
     * @param diameter nominal, m
     * @param pitch m, for metric threads
     * @param perInch threads per inch, for unified threads
     * @return refused unless exactly one of pitch and perInch is given, and where the pitch does not suit the diameter
     */
    static Outcome<ThreadForm> of(double diameter, @Nullable Double pitch, @Nullable Double perInch) {
        if (pitch != null && perInch != null) {
            return Outcome.refused(
                    Refusal.of("pitch", "pitch and threads per inch are both given", "Give one of them"));
        }
        if (pitch == null && perInch == null) {
            return Outcome.refused(Refusal.of(
                    "pitch", "not given", "Needed: pitch=1.5 mm, or perInch=20 for an inch thread; use a pitch gauge"));
        }
        double p = pitch != null ? pitch : INCH / perInchOf(perInch);
        if (p > COARSEST * diameter) {
            return Outcome.refused(Refusal.of(
                    pitch != null ? "pitch" : "perInch",
                    "a pitch of " + Quantities.brief(p, Units.MM) + " is too coarse for a diameter of "
                            + Quantities.brief(diameter, Units.MM),
                    "Look at both units"));
        }
        return Outcome.ok(new ThreadForm(diameter, p, perInch != null));
    }

    private static double perInchOf(@Nullable Double perInch) {
        return perInch == null ? Double.NaN : perInch;
    }

    /** Height of the sharp triangle, H = (√3/2) P. */
    double height() {
        return Math.sqrt(3) / 2 * pitch;
    }

    /** Basic pitch diameter, d − 3/4 H. */
    double pitchDiameter() {
        return diameter - 0.75 * height();
    }

    /** Basic minor diameter of the hole, d − 5/4 H. */
    double minor() {
        return diameter - 1.25 * height();
    }

    /** Root of the bolt: metric d − 17/12 H, unified d − 3/2 H. */
    double root() {
        return diameter - (unified ? 1.5 : 17.0 / 12) * height();
    }

    /** Diameter of the stress area: metric (d2 + d3)/2 (ISO 898-1:2013 9.1.6), unified d − 9√3/16 P (ASME B1.1). */
    double stressDiameter() {
        return unified ? diameter - 9 * Math.sqrt(3) / 16 * pitch : (pitchDiameter() + root()) / 2;
    }

    /** Tensile stress area, m². */
    double stressArea() {
        return Math.PI / 4 * stressDiameter() * stressDiameter();
    }

    /** How it is called: {@code M10x1.5}, {@code 0.25 in - 20}. */
    String designation() {
        return unified
                ? Quantities.brief(diameter, Units.IN) + " - " + Quantities.brief(INCH / pitch, Units.ONE)
                : "M" + Quantities.brief(diameter * 1000, Units.ONE) + "x" + Quantities.brief(pitch * 1000, Units.ONE);
    }
}
