package shimwright.mechanics.study;

import java.util.List;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.worksheet.Input;

/**
 * A loop of toleranced lengths.
 *
 * @param links the loop, in order
 * @param wanted tolerance ± of the gap that the free links should be scaled to, m
 * @param least smallest gap allowed, m
 * @param most largest gap allowed, m
 * @param draws how many loops are drawn; 99.73 % of fewer than 10,000 would hang on a dozen of them
 * @param seed of the draws
 */
public record ToleranceLoopCase(
        @Input(
                meaning = "the loop: name: size: tolerance: how much the gap grows per length",
                most = 60,
                example = "case: 250.40 mm: 0.05 mm: 1; shaft: 214.98 mm: 0.03 mm: -1; "
                        + "bearing: 17.70 mm: 0.06 mm: -1: rectangular; bearing: 17.70 mm: 0.06 mm: -1: rectangular")
        List<Link> links,

        @Input(kind = Kind.LENGTH, meaning = "tolerance ± wanted for the gap", min = 1e-9, max = 1) @Nullable
        Double wanted,

        @Input(kind = Kind.LENGTH, meaning = "smallest gap allowed", min = -10, max = 10) @Nullable
        Double least,

        @Input(kind = Kind.LENGTH, meaning = "largest gap allowed", min = -10, max = 10) @Nullable
        Double most,

        @Input(meaning = "loops to draw", orElse = "50000", min = 10_000, max = 1_000_000)
        int draws,

        @Input(meaning = "seed of the draws", orElse = "1", min = 0, max = 1e9)
        int seed) {
    public ToleranceLoopCase {
        links = List.copyOf(links);
    }

    /** How sizes lie between their limits. */
    public enum Spread {
        /** Normal, the limits three standard deviations out. */
        NORMAL,
        RECTANGULAR,
        TRIANGULAR,
        U_SHAPED
    }

    /**
     * One link.
     *
     * @param size nominal, m
     * @param tolerance upper deviation; the lower one is as large unless given, m
     * @param sensitivity change of the gap per change of the size, signed, not 0
     * @param shape how sizes lie between the limits
     * @param lower lower deviation, signed, m
     * @param shift how far the mean of a batch may sit off the middle, m
     * @param kept whether its tolerance must stay as it is
     */
    public record Link(
            @Input(meaning = "what it is", example = "case") String name,

            @Input(kind = Kind.LENGTH, meaning = "size", min = -10, max = 10, example = "250.4 mm")
            double size,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "tolerance ±, or upper deviation",
                    min = -1,
                    max = 1,
                    example = "0.05 mm")
            double tolerance,

            @Input(meaning = "growth of the gap per length, 1 opens, -1 closes", orElse = "1", min = -1000, max = 1000)
            double sensitivity,

            @Input(meaning = "how sizes lie between the limits", orElse = "normal")
            Spread shape,

            @Input(kind = Kind.LENGTH, meaning = "lower deviation, if not as large", min = -1, max = 1) @Nullable
            Double lower,

            @Input(kind = Kind.LENGTH, meaning = "possible shift of the mean", orElse = "0 mm", min = 0, max = 1)
            double shift,

            @Input(meaning = "tolerance must stay", orElse = "no")
            boolean kept) {

        double low() {
            return lower == null ? -tolerance : lower;
        }

        double middle() {
            return size + (tolerance + low()) / 2;
        }

        /** Half the tolerance zone. */
        double half() {
            return (tolerance - low()) / 2;
        }
    }
}
