package shimwright.mechanics.thread;

import java.util.Optional;
import shimwright.mechanics.reference.Table;

/**
 * Limits of size that decide how much thread there is to shear: metric 6g/6H (ISO 965-1:2013), unified 2A/2B (ASME
 * B1.1, formulas for an engagement of one diameter, from memory). Lengths in m.
 *
 * @param majorMax bolt, largest major diameter
 * @param majorMin bolt, smallest major diameter
 * @param pitchMin bolt, smallest pitch diameter
 * @param holePitchMax hole, largest pitch diameter
 * @param holeMinorMax hole, largest minor diameter
 * @param source where they stand
 */
record ThreadLimits(
        double majorMax, double majorMin, double pitchMin, double holePitchMax, double holeMinorMax, String source) {
    private static final Table BY_PITCH = Table.read("iso-965-1-2013/pitch-tolerances.csv");
    private static final Table BY_SIZE = Table.read("iso-965-1-2013/pitch-diameter-tolerances.csv");
    private static final double INCH = 0.0254;
    private static final double UM = 1e-6;

    /** The limits, where the tables or formulas reach. */
    static Optional<ThreadLimits> of(ThreadForm form) {
        return form.unified() ? unified(form) : metric(form);
    }

    /** A measured pitch counts for the printed one within half a percent; two printed ones are farther apart. */
    private static boolean samePitch(Table.Row row, double mm) {
        return Math.abs(row.number("pitch") - mm) <= 0.005 * mm;
    }

    private static Optional<ThreadLimits> metric(ThreadForm form) {
        double d = form.diameter() * 1000;
        double p = form.pitch() * 1000;
        Optional<Table.Row> crest =
                BY_PITCH.rows().stream().filter(row -> samePitch(row, p)).findFirst();
        Optional<Table.Row> flank = BY_SIZE.rows().stream()
                .filter(row -> d > row.number("over") && d <= row.number("upTo") && samePitch(row, p))
                .findFirst();
        if (crest.isEmpty() || flank.isEmpty()) {
            return Optional.empty();
        }
        double es = crest.get().number("es") * UM;
        double major = form.diameter() - es;
        return Optional.of(new ThreadLimits(
                major,
                major - crest.get().number("td") * UM,
                form.pitchDiameter() - es - flank.get().number("td2") * UM,
                form.pitchDiameter() + flank.get().number("td2i") * UM,
                form.minor() + crest.get().number("td1") * UM,
                "ISO 965-1:2013, 6g and 6H"));
    }

    /** Formulas in inches, printed values rounded to 0.0001 in, the hole's minor diameter, which holds from 1/4 in, to 0.001 in. */
    private static Optional<ThreadLimits> unified(ThreadForm form) {
        double d = form.diameter() / INCH;
        double p = form.pitch() / INCH;
        if (d < 0.2499 || d > 1.5001) {
            return Optional.empty();
        }
        double crest = Math.pow(p, 2.0 / 3);
        double flank = 0.0015 * Math.cbrt(d) + 0.0015 * Math.sqrt(d) + 0.015 * crest;
        double allowance = rounded(0.3 * flank);
        double major = d - allowance;
        double pitch = rounded(form.pitchDiameter() / INCH);
        return Optional.of(new ThreadLimits(
                major * INCH,
                (major - rounded(0.060 * crest)) * INCH,
                (pitch - allowance - rounded(flank)) * INCH,
                (pitch + rounded(1.3 * flank)) * INCH,
                Math.rint((form.minor() / INCH + 0.25 * p - 0.4 * p * p) * 1e3) / 1e3 * INCH,
                "ASME B1.1, 2A and 2B, formulas from memory"));
    }

    private static double rounded(double inches) {
        return Math.rint(inches * 1e4) / 1e4;
    }
}
