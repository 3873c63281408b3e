package shimwright.mechanics.thread;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.thread.BoltOrders.Case.Pattern;
import shimwright.mechanics.thread.BoltOrders.Result.Stage;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.mechanics.worksheet.Input;
import shimwright.mechanics.worksheet.Output;
import shimwright.mechanics.worksheet.Worksheet;

/** Worksheet {@code bolt-order}. */
public final class BoltOrders {
    private static final String SHARES = "flange bolting practice: 30, 60, 100 %; 12 bolts and more 20, 40, 80, 100 %";
    private static final String MODEL = "linear elastic interaction, common practice, no source";
    private static final int FEW = 8;

    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
                    "bolt-order",
                    "Bolt order",
                    "Order and steps in which the bolts of a joint are tightened, from their count or their coordinates.",
                    List.of("ASME PCC-1, legacy cross pattern (from memory)", SHARES, MODEL),
                    Case.class,
                    Result.class,
                    BoltOrders::work)
            .drawn((c, r) -> ThreadPictures.boltOrder(c));

    private BoltOrders() {}

    /** The bolts of one joint, by count on a circle or by their coordinates. */
    public record Case(
            @Input(
                    meaning = "bolts evenly on a circle; 0 when coordinates are given",
                    orElse = "0",
                    max = 200,
                    example = "8")
            int count,

            @Input(meaning = "holes, in the order of their numbers", fewest = 0, most = 200)
            List<Hole> holes,

            @Input(meaning = "which way to go", orElse = "auto")
            Pattern pattern,

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

    /** Order and steps; the preloads that remain only where a loss to the neighbors was given. */
    public record Result(
            @Output(meaning = "order of tightening") String order,
            @Output(meaning = "shares of the full torque") String shares,
            @Output(meaning = "steps") List<Stage> stages,

            @Output(meaning = "lowest preload left", unit = "%", decimals = 1) @Nullable
            Double lowest,

            @Output(meaning = "mean preload left", unit = "%", decimals = 1) @Nullable
            Double mean) {

        /** One step over all bolts. */
        public record Stage(
                @Output(meaning = "share of the full torque", unit = "%", decimals = 0)
                double share,

                @Output(kind = Kind.TORQUE, meaning = "torque", decimals = 1) @Nullable
                Double torque) {}
    }

    /**
     * Star: opposite pairs, each next pair farthest from all done. Outward: from the dowels or the middle, side by
     * side. What remains: tightening a bolt by dF takes c dF from each loaded neighbor.
     *
     * @param c coordinates in m, torque in N·m, interaction c without unit
     * @return numbers from 1, or the names of the holes, joined by dashes; shares without unit; refused: count and
     *     coordinates both or neither, fewer than two bolts, two holes on one spot or of one name, a first bolt that is
     *     not there, an order that is not each bolt once
     */
    public static Outcome<Worked<Result>> work(Case c) {
        List<Refusal> refusals = checked(c);
        if (!refusals.isEmpty()) {
            return Outcome.refused(refusals);
        }
        Working w = new Working();
        HolePattern pattern =
                c.holes().isEmpty() ? HolePattern.circle(c.count()) : HolePattern.of(c.holes(), c.dowels());
        List<Integer> order = order(c, pattern);
        List<Integer> percent = shares(c, pattern.count());
        List<Stage> stages = new ArrayList<>();
        Double torque = c.torque();
        for (int share : percent) {
            w.line("step " + (stages.size() + 1), "share of the full torque", share / 100.0, Kind.NUMBER, SHARES);
            Double step = torque == null
                    ? null
                    : w.line("torque", "share × full torque", share / 100.0 * torque, Kind.TORQUE);
            stages.add(new Stage(share / 100.0, step));
        }
        double[] left = c.interaction() == null
                ? new double[0]
                : left(order, pattern.neighbours(), c.interaction(), c.passes());
        Double lowest = left.length == 0
                ? null
                : w.line(
                        "lowest left",
                        "c from each neighbor",
                        Arrays.stream(left).min().orElse(0),
                        Kind.NUMBER,
                        MODEL);
        Double mean = left.length == 0
                ? null
                : w.line("mean left", "", Arrays.stream(left).average().orElse(0), Kind.NUMBER, MODEL);
        cautions(percent, lowest, w);
        String names = order.stream().map(hole -> name(c, hole)).collect(Collectors.joining("-"));
        String shares = percent.stream().map(String::valueOf).collect(Collectors.joining("-"));
        return Outcome.ok(w.worked(new Result(names, shares, stages, lowest, mean)));
    }

    private static String name(Case c, int hole) {
        return c.holes().isEmpty()
                ? String.valueOf(hole + 1)
                : c.holes().get(hole).name();
    }

    private static List<Refusal> checked(Case c) {
        List<Refusal> refusals = new ArrayList<>();
        boolean both = c.count() != 0 && !c.holes().isEmpty();
        int count = c.holes().isEmpty() ? c.count() : c.holes().size();
        if (both) {
            refusals.add(Refusal.of("count", "count and coordinates are both given", "Give one of them"));
        } else if (count < 2) {
            refusals.add(
                    Refusal.of("count", count + " bolts need no order", "Give count=8, or the holes as name: x: y"));
        }
        if (c.start() < 0 || c.start() > count) {
            refusals.add(Refusal.of("start", "there is no bolt " + c.start(), "Give a number from 1 to " + count));
        }
        Set<String> names = new HashSet<>();
        Set<List<Double>> places = new HashSet<>();
        for (Case.Hole hole : c.holes()) {
            if (!names.add(hole.name())) {
                refusals.add(Refusal.of("holes", "\"" + hole.name() + "\" stands for two holes", "Rename one"));
            }
            if (!places.add(List.of(hole.x(), hole.y()))) {
                refusals.add(Refusal.of("holes", "\"" + hole.name() + "\" lies on another hole", "Look at x and y"));
            }
        }
        boolean each = new HashSet<>(c.order()).size() == c.order().size()
                && c.order().stream().allMatch(number -> number >= 1 && number <= count);
        if (!c.order().isEmpty() && (!each || c.order().size() != count)) {
            refusals.add(Refusal.of("order", "it does not name each bolt once", "Give the numbers 1 to " + count));
        }
        if (!c.dowels().isEmpty() && c.holes().isEmpty()) {
            refusals.add(Refusal.of("dowels", "dowels need the coordinates of the holes", "Give holes"));
        }
        if (c.stages() < 0 || c.count() < 0) {
            refusals.add(Refusal.of("stages", "a negative count", "Give 0 or more"));
        }
        return refusals;
    }

    static List<Integer> order(Case c, HolePattern pattern) {
        if (!c.order().isEmpty()) {
            return c.order().stream().map(number -> number - 1).toList();
        }
        boolean star = c.pattern() == Pattern.STAR
                || (c.pattern() == Pattern.AUTO && c.dowels().isEmpty() && pattern.ring());
        return star ? pattern.star(Math.max(0, c.start() - 1)) : pattern.outward(c.start() - 1);
    }

    /** In percent; between 9 and 11 bolts, where practice is silent, the finer steps. */
    private static List<Integer> shares(Case c, int count) {
        int stages = c.stages() > 0 ? c.stages() : count <= FEW ? 3 : 4;
        return switch (stages) {
            case 1 -> List.of(100);
            case 2 -> List.of(50, 100);
            case 3 -> List.of(30, 60, 100);
            default -> List.of(20, 40, 80, 100);
        };
    }

    /** Preloads left after full-torque rounds, as shares of the full preload. */
    private static double[] left(List<Integer> order, List<List<Integer>> neighbours, double c, int passes) {
        double[] preload = new double[order.size()];
        for (int pass = 0; pass < passes; pass++) {
            for (int bolt : order) {
                double gain = 1 - preload[bolt];
                preload[bolt] = 1;
                for (int neighbour : neighbours.get(bolt)) {
                    preload[neighbour] = Math.max(0, preload[neighbour] - (preload[neighbour] > 0 ? c * gain : 0));
                }
            }
        }
        return preload;
    }

    private static void cautions(List<Integer> percent, @Nullable Double lowest, Working w) {
        w.caution("Run all bolts in by hand first. After the last step go round in a circle at full torque until none "
                + "turns.");
        w.caution("With liquid sealant finish every round within its open time; loosen in the reverse order, in two "
                + "steps.");
        if (percent.size() == 1) {
            w.caution("Full torque in one step tilts a cover: use at least two.");
        }
        if (lowest != null && lowest < 0.9) {
            w.caution(
                    "One bolt keeps less than nine tenths of its preload: one more round at full torque brings it back.");
        }
    }
}
