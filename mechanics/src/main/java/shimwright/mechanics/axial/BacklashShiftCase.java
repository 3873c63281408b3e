package shimwright.mechanics.axial;

import java.util.List;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.worksheet.Input;

/**
 * Backlash round the crown wheel before and after a known shift of it.
 *
 * @param before by place, m
 * @param after by place, m, after the shift
 * @param shift distance the crown moved towards the pinion, m, greater than 0
 * @param theory change of backlash per shift from the tooth geometry; null when not known
 * @param wanted mean backlash wanted, m; null when only the slope is wanted
 * @param agreeWithin largest spread round the crown that counts as agreeing, m
 */
public record BacklashShiftCase(
        @Input(
                kind = Kind.LENGTH,
                meaning = "backlash by place before",
                min = 0,
                max = 0.01,
                fewest = 3,
                most = 100,
                example = "0.355 0.360 0.365 0.365 0.355 0.350 0.345 0.350 mm")
        List<Double> before,

        @Input(
                kind = Kind.LENGTH,
                meaning = "backlash by place after",
                min = 0,
                max = 0.01,
                fewest = 3,
                most = 100,
                example = "0.270 0.275 0.280 0.275 0.270 0.260 0.255 0.260 mm")
        List<Double> after,

        @Input(
                kind = Kind.LENGTH,
                meaning = "shift of the crown wheel towards the pinion",
                min = 1e-6,
                max = 0.01,
                example = "0.102 mm")
        double shift,

        @Input(meaning = "change of backlash per shift by geometry", min = 0.1, max = 5, example = "0.8647") @Nullable
        Double theory,

        @Input(kind = Kind.LENGTH, meaning = "mean backlash wanted", min = 0, max = 0.01, example = "0.15 mm") @Nullable
        Double wanted,

        @Input(
                kind = Kind.LENGTH,
                meaning = "places that differ by no more than this agree",
                min = 1e-6,
                max = 0.01,
                orElse = "0.05 mm")
        double agreeWithin) {
    public BacklashShiftCase {
        before = List.copyOf(before);
        after = List.copyOf(after);
    }
}
