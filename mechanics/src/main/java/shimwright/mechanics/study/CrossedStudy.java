package shimwright.mechanics.study;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hipparchus.distribution.continuous.FDistribution;
import shimwright.mechanics.measure.Statistics;
import shimwright.mechanics.study.GaugeStudy.Case.Round;

/**
 * Every person read every part the same number of times.
 *
 * @param persons in the order they first came
 * @param cells readings by person and part
 */
record CrossedStudy(List<String> persons, List<List<List<Double>>> cells) {

    /** From rounds of equal length, as many per person. */
    static CrossedStudy of(List<Round> rounds) {
        Map<String, List<List<Double>>> byPerson = new LinkedHashMap<>();
        for (Round round : rounds) {
            byPerson.computeIfAbsent(round.name(), name -> new ArrayList<>()).add(round.readings());
        }
        List<List<List<Double>>> cells = new ArrayList<>();
        byPerson.values().forEach(rows -> {
            List<List<Double>> parts = new ArrayList<>();
            for (int part = 0; part < rows.get(0).size(); part++) {
                int at = part;
                parts.add(rows.stream().map(row -> row.get(at)).toList());
            }
            cells.add(parts);
        });
        return new CrossedStudy(List.copyOf(byPerson.keySet()), cells);
    }

    int o() {
        return persons.size();
    }

    int p() {
        return cells.get(0).size();
    }

    int r() {
        return cells.get(0).get(0).size();
    }

    private List<Double> all() {
        return cells.stream().flatMap(List::stream).flatMap(List::stream).toList();
    }

    double personMean(int person) {
        return Statistics.mean(cells.get(person).stream().flatMap(List::stream).toList());
    }

    double partMean(int part) {
        return Statistics.mean(
                cells.stream().flatMap(parts -> parts.get(part).stream()).toList());
    }

    double range(int person, int part) {
        return Statistics.range(cells.get(person).get(part));
    }

    double meanRange() {
        List<Double> ranges = new ArrayList<>();
        for (int i = 0; i < o(); i++) {
            for (int j = 0; j < p(); j++) {
                ranges.add(range(i, j));
            }
        }
        return Statistics.mean(ranges);
    }

    /** Sums of squares of a two-way layout with repeats. */
    Squares squares() {
        double mean = Statistics.mean(all());
        double persons = 0;
        double parts = 0;
        double cross = 0;
        double repeats = 0;
        for (int j = 0; j < p(); j++) {
            parts += o() * r() * Math.pow(partMean(j) - mean, 2);
        }
        for (int i = 0; i < o(); i++) {
            double person = personMean(i);
            persons += p() * r() * Math.pow(person - mean, 2);
            for (int j = 0; j < p(); j++) {
                double cell = Statistics.mean(cells.get(i).get(j));
                cross += r() * Math.pow(cell - person - partMean(j) + mean, 2);
                for (double reading : cells.get(i).get(j)) {
                    repeats += Math.pow(reading - cell, 2);
                }
            }
        }
        int n = p();
        return new Squares(
                new Term("parts", n - 1, parts),
                new Term("persons", o() - 1, persons),
                new Term("persons with parts", (n - 1) * (o() - 1), o() > 1 ? cross : 0),
                new Term("repeats", n * o() * (r() - 1), repeats));
    }

    /** A line of the table: what, degrees of freedom, sum of squares. */
    record Term(String source, int freedom, double sum) {
        double mean() {
            return freedom == 0 ? 0 : sum / freedom;
        }

        /** F against another line, and the chance of so large a one; null where there is none. */
        GaugeStudy.Result.Row against(Term other) {
            if (other.freedom() == 0 || freedom == 0) {
                return plain();
            }
            double f = other.mean() == 0 ? (mean() == 0 ? 0 : Double.POSITIVE_INFINITY) : mean() / other.mean();
            return new GaugeStudy.Result.Row(source, freedom, sum, mean(), f, chance(other));
        }

        double chance(Term other) {
            if (mean() == 0) {
                return 1;
            }
            double f = mean() / other.mean();
            return Double.isInfinite(f)
                    ? 0
                    : Math.max(0, 1 - new FDistribution(freedom, other.freedom()).cumulativeProbability(f));
        }

        GaugeStudy.Result.Row plain() {
            return new GaugeStudy.Result.Row(source, freedom, sum, mean(), null, null);
        }

        Term with(Term other) {
            return new Term(other.source(), freedom + other.freedom(), sum + other.sum());
        }
    }

    /** The four lines. */
    record Squares(Term parts, Term persons, Term interaction, Term repeats) {}
}
