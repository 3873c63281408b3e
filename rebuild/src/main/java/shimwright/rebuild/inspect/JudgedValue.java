package shimwright.rebuild.inspect;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shimwright.rebuild.unit.model.Measurable;
import shimwright.rebuild.unit.model.Statistic;

/**
 * One value that is judged against limits.
 *
 * @param piece whose it is; empty where no pieces are named
 * @param value in SI
 * @param u standard uncertainty, 0 where the gauge is not known
 */
record JudgedValue(String piece, double value, double u) {

    /** The values to judge: every reading, or of each piece the mean or range, or the difference of two. */
    static List<JudgedValue> of(Measurable measured, Map<String, List<Double>> pieces, Optional<GaugeError> gauge) {
        double factor = Math.abs(measured.readingFactor());
        if (measured.judgedOn() == Statistic.DIFFERENCE) {
            return List.of(difference(measured, pieces, gauge));
        }
        List<JudgedValue> values = new ArrayList<>();
        pieces.forEach((piece, readings) -> {
            int n = readings.size();
            switch (measured.judgedOn()) {
                case MEAN -> {
                    double u = gauge.map(g -> g.ofMean(n)).orElse(0.0);
                    values.add(new JudgedValue(piece, measured.value(mean(readings)), factor * u));
                }
                case RANGE -> {
                    double u = gauge.map(GaugeError::ofRange).orElse(0.0);
                    values.add(new JudgedValue(piece, factor * range(readings), factor * u));
                }
                default -> {
                    double u = gauge.map(g -> g.ofMean(1)).orElse(0.0);
                    readings.forEach(r -> values.add(new JudgedValue(piece, measured.value(r), factor * u)));
                }
            }
        });
        return List.copyOf(values);
    }

    private static JudgedValue difference(
            Measurable measured, Map<String, List<Double>> pieces, Optional<GaugeError> gauge) {
        List<List<Double>> sides = List.copyOf(pieces.values());
        List<Double> first = sides.size() == 1 ? sides.get(0).subList(0, 1) : sides.get(0);
        List<Double> second = sides.size() == 1 ? sides.get(0).subList(1, 2) : sides.get(1);
        double u = gauge.map(g -> g.ofDifference(first.size(), second.size())).orElse(0.0);
        return new JudgedValue("", measured.value(mean(first) - mean(second)), Math.abs(measured.readingFactor()) * u);
    }

    static double mean(List<Double> values) {
        return values.stream().mapToDouble(v -> v).average().orElseThrow();
    }

    static double range(List<Double> values) {
        return values.stream().mapToDouble(v -> v).max().orElseThrow()
                - values.stream().mapToDouble(v -> v).min().orElseThrow();
    }

    /** The name of the piece before a sentence. */
    String named() {
        return piece.isEmpty() ? "" : piece + ": ";
    }
}
