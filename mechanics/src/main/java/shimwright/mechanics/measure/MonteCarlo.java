package shimwright.mechanics.measure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.ForkJoinPool;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Propagation of distributions by drawing (JCGM 101:2008 clauses 5 and 7). Draws come in blocks of {@link
 * Sampling#BLOCK}, each with a stream of its own, and are put together in the order of the blocks: the answer has the
 * same bits on any number of threads.
 */
public final class MonteCarlo {
    private static final int FEWEST_BLOCKS = 2;

    private MonteCarlo() {}

    /** The function under study; called from several threads at once. */
    @FunctionalInterface
    public interface Model {
        /**
         * One draw.
         *
         * @param deviations of the inputs from their estimates, one per distribution; not to be kept
         * @param results to fill; NaN for a result that this draw does not have
         * @return false where the function has no value here
         */
        boolean at(double[] deviations, double[] results);
    }

    /**
     * What was drawn.
     *
     * @param results one per result of the model; null where some draw had none
     * @param draws that gave a value
     * @param refused draws without a value
     * @param settled whether the adaptive rule was met; true when it was not asked for
     */
    public record Run(List<@Nullable DrawSummary> results, int draws, int refused, boolean settled) {}

    /** One block: values by result, rising where whole; refused draws left out. */
    private static final class Block {
        private final double[][] values;
        private final int refused;

        Block(double[][] values, int refused) {
            this.values = values;
            this.refused = refused;
        }

        /** A NaN sorts behind every number. */
        boolean whole(int result) {
            double[] rising = values[result];
            return rising.length > 1 && Double.isFinite(rising[0]) && Double.isFinite(rising[rising.length - 1]);
        }
    }

    /** Mean, u and the ends of the shortest interval of each block, of one result. */
    private static final class Track {
        private final List<double[]> blocks = new ArrayList<>();
        private boolean whole = true;

        void add(Block block, int result, double coverage) {
            whole = whole && block.whole(result);
            if (whole) {
                double[] rising = block.values[result];
                Interval interval = Interval.shortest(rising, coverage);
                double mean = mean(rising);
                blocks.add(new double[] {mean, deviation(rising, mean), interval.low(), interval.high()});
            }
        }

        private double[] column(int at) {
            return blocks.stream().mapToDouble(block -> block[at]).toArray();
        }

        DrawSummary.Errors errors() {
            int h = blocks.size();
            if (!whole || h < FEWEST_BLOCKS) {
                return DrawSummary.Errors.NONE;
            }
            double[] s = new double[4];
            for (int i = 0; i < s.length; i++) {
                double[] column = column(i);
                s[i] = deviation(column, mean(column)) / Math.sqrt(h);
            }
            return new DrawSummary.Errors(s[0], s[1], s[2], s[3]);
        }

        /** Whether twice the error of each number is below δ/5, δ for one digit of u (7.9.4 step h, 8.2). */
        boolean stands() {
            boolean judged = blocks.size() >= FEWEST_BLOCKS;
            return !whole || (judged && 2 * errors().largest() <= DrawSummary.tolerance(mean(column(1)), 1) / 5);
        }
    }

    /**
     * Draws.
     *
     * @param inputs independent of each other
     * @param results how many results the model has
     * @param model the function
     * @param sampling as checked
     */
    public static Run run(List<? extends Distribution> inputs, int results, Model model, Sampling sampling) {
        ForkJoinPool pool = sampling.threads() > 1 ? new ForkJoinPool(sampling.threads()) : null;
        try {
            List<Block> blocks = new ArrayList<>();
            List<Track> tracks = Stream.generate(Track::new).limit(results).toList();
            boolean settled = !sampling.adaptive();
            while (blocks.size() < sampling.blocks() && !(settled && sampling.adaptive())) {
                int from = blocks.size();
                int to = sampling.adaptive()
                        ? Math.min(sampling.blocks(), from + sampling.threads())
                        : sampling.blocks();
                for (Block block : drawn(pool, from, to, inputs, results, model, sampling)) {
                    blocks.add(block);
                    for (int k = 0; k < results; k++) {
                        tracks.get(k).add(block, k, sampling.coverage());
                    }
                    if (sampling.adaptive() && tracks.stream().allMatch(Track::stands)) {
                        settled = true;
                        break;
                    }
                }
            }
            return summed(blocks, tracks, sampling, settled);
        } finally {
            if (pool != null) {
                pool.shutdown();
            }
        }
    }

    private static List<Block> drawn(
            @Nullable ForkJoinPool pool,
            int from,
            int to,
            List<? extends Distribution> inputs,
            int results,
            Model model,
            Sampling sampling) {
        Distribution[] each = inputs.toArray(Distribution[]::new);
        IntStream places = IntStream.range(from, to);
        if (pool == null) {
            return places.mapToObj(block -> block(block, each, results, model, sampling))
                    .toList();
        }
        return pool.submit(() -> places.parallel()
                        .mapToObj(block -> block(block, each, results, model, sampling))
                        .toList())
                .join();
    }

    private static Block block(int number, Distribution[] inputs, int results, Model model, Sampling sampling) {
        RandomStream stream = new RandomStream(sampling.seed(), number);
        int size = sampling.sizeOf(number);
        double[][] values = new double[results][size];
        double[] deviations = new double[inputs.length];
        double[] out = new double[results];
        int kept = 0;
        for (int i = 0; i < size; i++) {
            for (int k = 0; k < inputs.length; k++) {
                deviations[k] = inputs[k].draw(stream);
            }
            if (model.at(deviations, out)) {
                for (int k = 0; k < results; k++) {
                    values[k][kept] = out[k];
                }
                kept++;
            }
        }
        for (int k = 0; k < results; k++) {
            values[k] = kept == size ? values[k] : Arrays.copyOf(values[k], kept);
            Arrays.sort(values[k]);
        }
        return new Block(values, size - kept);
    }

    private static Run summed(List<Block> blocks, List<Track> tracks, Sampling sampling, boolean settled) {
        List<@Nullable DrawSummary> all = new ArrayList<>();
        for (int k = 0; k < tracks.size(); k++) {
            all.add(tracks.get(k).whole ? sampled(blocks, k, tracks.get(k), sampling.coverage()) : null);
        }
        int refused = blocks.stream().mapToInt(block -> block.refused).sum();
        int drawn = IntStream.range(0, blocks.size()).map(sampling::sizeOf).sum();
        return new Run(Collections.unmodifiableList(all), drawn - refused, refused, settled);
    }

    private static DrawSummary sampled(List<Block> blocks, int result, Track track, double coverage) {
        double[] sorted = blocks.stream()
                .flatMapToDouble(block -> Arrays.stream(block.values[result]))
                .toArray();
        Arrays.sort(sorted);
        double mean = mean(sorted);
        return new DrawSummary(
                mean,
                deviation(sorted, mean),
                Interval.shortest(sorted, coverage),
                Interval.symmetric(sorted, coverage),
                track.errors());
    }

    private static double mean(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        double first = sum / values.length;
        double rest = 0;
        for (double value : values) {
            rest += value - first;
        }
        return first + rest / values.length;
    }

    private static double deviation(double[] values, double mean) {
        double squares = 0;
        for (double value : values) {
            squares += (value - mean) * (value - mean);
        }
        return Math.sqrt(squares / (values.length - 1));
    }
}
