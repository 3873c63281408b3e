package shimwright.mechanics.thread;

import java.util.List;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.worksheet.Input;

/** The bolts of one joint, by count on a circle or by their coordinates. */
public record BoltOrderCase(
        @Input(
                meaning = "bolts evenly on a circle; 0 when coordinates are given",
                orElse = "0",
                max = 200,
                example = "8")
        int count,

        @Input(meaning = "holes, in the order of their numbers", fewest = 0, most = 200)
        List<Hole> holes,

        @Input(meaning = "which way to go", orElse = "auto") Pattern pattern,

        @Input(meaning = "number of the first bolt; 0 leaves it to the sheet", orElse = "0", max = 200)
        int start,

        @Input(meaning = "dowels or bearing bores to start from", fewest = 0, most = 50)
        List<Point> dowels,

        @Input(kind = Kind.TORQUE, meaning = "full torque", min = 1e-3, max = 1e5, example = "20 N·m") @Nullable
        Double torque,

        @Input(meaning = "steps to full torque, 1 to 4; 0 chooses by the count", orElse = "0", max = 4)
        int stages,

        @Input(meaning = "own order to be judged, by number", fewest = 0, most = 200)
        List<Integer> order,

        @Input(meaning = "share of a bolt's gain that each loaded neighbor loses", min = 0, max = 0.45) @Nullable
        Double interaction,

        @Input(meaning = "rounds at full torque", orElse = "1", min = 1, max = 20)
        int passes) {

    /** A hole. */
    public record Hole(
            @Input(meaning = "name", example = "1") String name,

            @Input(kind = Kind.LENGTH, meaning = "x", min = -5, max = 5, example = "0 mm")
            double x,

            @Input(kind = Kind.LENGTH, meaning = "y", min = -5, max = 5, example = "50 mm")
            double y) {}

    /** A place without a bolt. */
    public record Point(
            @Input(kind = Kind.LENGTH, meaning = "x", min = -5, max = 5, example = "0 mm")
            double x,

            @Input(kind = Kind.LENGTH, meaning = "y", min = -5, max = 5, example = "50 mm")
            double y) {}

    /** Which way to go. */
    public enum Pattern {
        /** Star for a ring, outward for anything longer than wide. */
        AUTO,
        /** Opposite pairs, each next pair farthest from those done. */
        STAR,
        /** From the middle, or from the dowels, outward, side by side. */
        OUTWARD
    }
}
