package shimwright.mechanics.axial;

import java.util.List;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.worksheet.Input;

/**
 * End play read with one or two indicators, the shaft pushed and pulled.
 *
 * @param rounds as in {@link ReadingsCase}, m
 * @param gauge the indicator's data
 * @param settleWithin as in {@link ReadingsCase}, m
 * @param minimum as in {@link ReadingsCase}
 * @param stylusAngle between stylus and the square position of a lever indicator, rad; 0 for a plunger along the shaft
 * @param axialForce push at each end, N; null when not noted
 * @param tiltAllowance what tilt of the shaft may add to or hide from one indicator alone, half-width, m
 */
public record EndPlayCase(
        @Input(
                kind = Kind.LENGTH,
                meaning = "travel by round, the two indicators of a round joined by /",
                min = -0.05,
                max = 0.05,
                most = 200,
                example = "0.24/0.32 0.25/0.31 0.24/0.31 mm")
        List<List<Double>> rounds,

        @Input(meaning = "the indicator") GaugeData gauge,

        @Input(
                kind = Kind.LENGTH,
                meaning = "rounds that differ by no more than this agree",
                min = 1e-7,
                max = 0.01,
                orElse = "0.02 mm")
        double settleWithin,

        @Input(meaning = "rounds that must agree at the end", min = 3, max = 20, orElse = "3")
        int minimum,

        @Input(
                kind = Kind.ANGLE,
                meaning = "slant of a lever stylus, 0 for a plunger along the shaft",
                min = 0,
                max = 1.1,
                orElse = "0°")
        double stylusAngle,

        @Input(kind = Kind.FORCE, meaning = "push at each end", min = 0, max = 5000) @Nullable
        Double axialForce,

        @Input(
                kind = Kind.LENGTH,
                meaning = "what tilt may add to one indicator alone, half-width; 0 when it stands on the shaft axis",
                min = 0,
                max = 0.005,
                orElse = "0.04 mm")
        double tiltAllowance) {
    public EndPlayCase {
        rounds = rounds.stream().map(List::copyOf).toList();
    }
}
