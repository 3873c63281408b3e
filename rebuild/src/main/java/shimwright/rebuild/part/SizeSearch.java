package shimwright.rebuild.part;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;

/** Finds parts by what a caliper reads. */
final class SizeSearch {
    private static final int MOST_SIZES = 3;
    /** What a caliper on a used part may be out, m; of thin things, m; and as a share of a large one. */
    private static final double OUT = 0.15e-3;

    private static final double OUT_OF_THIN = 0.08e-3;
    private static final double THIN = 4e-3;
    private static final double SHARE = 0.004;

    private record Scored(StandardPart part, double far, int unread) {}

    /** A part with what a caliper reads of it, by each way to measure it. */
    private record Measurable(StandardPart part, List<double[]> ways) {
        static Measurable of(StandardPart part) {
            return new Measurable(
                    part,
                    part.family().measured().stream()
                            .map(way -> way.stream()
                                    .map(part::size)
                                    .filter(OptionalDouble::isPresent)
                                    .mapToDouble(OptionalDouble::getAsDouble)
                                    .toArray())
                            .toList());
        }
    }

    private final List<Measurable> parts;

    SizeSearch(List<StandardPart> parts) {
        this.parts = parts.stream().map(Measurable::of).toList();
    }

    Outcome<StandardParts.Found> search(List<Double> measured) {
        List<Refusal> faults = new ArrayList<>();
        if (measured.isEmpty() || measured.size() > MOST_SIZES) {
            faults.add(Refusal.of(
                    "sizes", measured.size() + " sizes", "Measure one to three, such as bore, outside and width"));
        }
        measured.stream()
                .filter(size -> !(size > 0 && Double.isFinite(size)))
                .forEach(size -> faults.add(Refusal.of("sizes", "a size that is not above 0", "Type it once more")));
        if (!faults.isEmpty()) {
            return Outcome.refused(faults);
        }
        List<Scored> fitting = new ArrayList<>();
        for (Measurable one : parts) {
            best(one, measured)
                    .ifPresent(far -> fitting.add(new Scored(one.part(), far, unread(one.part(), measured.size()))));
        }
        if (fitting.isEmpty()) {
            return Outcome.refused(Refusal.of(
                    "sizes",
                    "no standard part of the tables has these sizes",
                    "Measure again, one of them less, or take the sizes as they are"));
        }
        fitting.sort(Comparator.comparingInt(Scored::unread).thenComparingDouble(Scored::far));
        return Outcome.ok(StandardParts.Found.of(fitting.stream()
                .map(one -> new Match(one.part(), Match.Certainty.FITS, List.of()))
                .toList()));
    }

    /** Sizes of a part's shortest way of measuring that were not measured: fewer are likelier meant. */
    private static int unread(StandardPart part, int measured) {
        return part.family().measured().stream()
                .mapToInt(way -> Math.abs(way.size() - measured))
                .min()
                .orElse(0);
    }

    private static OptionalDouble best(Measurable part, List<Double> measured) {
        double best = Double.POSITIVE_INFINITY;
        for (double[] sizes : part.ways()) {
            if (sizes.length >= measured.size()) {
                best = Math.min(best, far(sizes, measured, 0, new boolean[sizes.length]));
            }
        }
        return best < Double.POSITIVE_INFINITY ? OptionalDouble.of(best) : OptionalDouble.empty();
    }

    /** The least sum of squared deviations in tolerances over all ways to lay the readings on sizes; infinite where one is out. */
    private static double far(double[] sizes, List<Double> measured, int next, boolean[] taken) {
        if (next == measured.size()) {
            return 0;
        }
        double best = Double.POSITIVE_INFINITY;
        for (int i = 0; i < sizes.length; i++) {
            double off = Math.abs(measured.get(next) - sizes[i]) / tolerance(sizes[i]);
            if (!taken[i] && off <= 1) {
                taken[i] = true;
                best = Math.min(best, off * off + far(sizes, measured, next + 1, taken));
                taken[i] = false;
            }
        }
        return best;
    }

    /** How far a reading of a size may be out, in the unit of the size. */
    static double tolerance(double size) {
        return size < THIN ? OUT_OF_THIN : Math.max(OUT, SHARE * size);
    }
}
