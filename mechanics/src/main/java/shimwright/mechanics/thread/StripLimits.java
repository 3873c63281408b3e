package shimwright.mechanics.thread;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;

/**
 * The four diameters that decide the shear areas: as given, else from the tables. Lengths in m.
 *
 * @param majorMin bolt, smallest major diameter
 * @param pitchMin bolt, smallest pitch diameter
 * @param holePitchMax hole, largest pitch diameter
 * @param holeMinorMax hole, largest minor diameter
 * @param source where they stand
 */
record StripLimits(double majorMin, double pitchMin, double holePitchMax, double holeMinorMax, String source) {

    /** Refused where a diameter is neither given nor in a table, or where bolt and hole would not engage. */
    static Outcome<StripLimits> of(ThreadStrips.Case c, ThreadForm form) {
        Optional<ThreadLimits> table = ThreadLimits.of(form);
        List<Refusal> refusals = new ArrayList<>();
        double majorMin = one(c.limits().majorMin(), table.map(ThreadLimits::majorMin), "majorMin", refusals);
        double pitchMin = one(c.limits().pitchMin(), table.map(ThreadLimits::pitchMin), "pitchMin", refusals);
        double holePitch =
                one(c.limits().holePitchMax(), table.map(ThreadLimits::holePitchMax), "holePitchMax", refusals);
        double holeMinor =
                one(c.limits().holeMinorMax(), table.map(ThreadLimits::holeMinorMax), "holeMinorMax", refusals);
        if (refusals.isEmpty()) {
            double play = form.pitch() * Math.sqrt(3) / 2;
            boolean engage = majorMin > holeMinor
                    && holePitch - majorMin < play
                    && holeMinor - pitchMin < play
                    && majorMin <= form.diameter()
                    && pitchMin <= form.diameter();
            if (!engage) {
                refusals.add(Refusal.of(
                        "majorMin",
                        "with these diameters bolt and hole do not engage",
                        "Look at the four diameters against the nominal one"));
            }
        }
        boolean given = c.limits().majorMin() != null
                || c.limits().pitchMin() != null
                || c.limits().holePitchMax() != null
                || c.limits().holeMinorMax() != null;
        String source =
                given ? "diameters as given" : table.map(ThreadLimits::source).orElse("");
        return refusals.isEmpty()
                ? Outcome.ok(new StripLimits(majorMin, pitchMin, holePitch, holeMinor, source))
                : Outcome.refused(refusals);
    }

    private static double one(@Nullable Double given, Optional<Double> table, String place, List<Refusal> refusals) {
        if (given != null) {
            return given;
        }
        if (table.isEmpty()) {
            refusals.add(Refusal.of(
                    place, "no table here prints it for this thread", "Measure it, or type the limit of its standard"));
        }
        return table.orElse(Double.NaN);
    }

    /** Shear area of the hole's thread per length, at the bolt's smallest major diameter. */
    double holeAreaPerLength(double pitch) {
        return Math.PI / pitch * majorMin * (pitch / 2 + (majorMin - holePitchMax) / Math.sqrt(3));
    }

    /** Shear area of the bolt's thread per length, at the hole's largest minor diameter. */
    double boltAreaPerLength(double pitch) {
        return Math.PI / pitch * holeMinorMax * (pitch / 2 + (pitchMin - holeMinorMax) / Math.sqrt(3));
    }
}
