package shimwright.rebuild.inspect;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.Shop;
import shimwright.rebuild.unit.model.Measurable;
import shimwright.rebuild.unit.model.Statistic;
import shimwright.rebuild.unit.model.UnitType.Check;

/**
 * Readings of one check or wear limit as they were taken.
 *
 * @param values SI, in the order of the named pieces, all of one piece together and as many of each
 * @param gauge what they were read with; empty where nobody said, and then the uncertainty is not known
 * @param before for a limit relative to another check: the readings of that check, laid out in the same way
 * @param confirmed the reason for which readings of an unlikely size are right all the same; empty where nobody
 *     confirmed them
 */
public record GaugeReadings(List<Double> values, Optional<GaugeError> gauge, List<Double> before, String confirmed) {
    public GaugeReadings {
        values = List.copyOf(values);
        before = List.copyOf(before);
    }

    /** Readings alone. */
    public static GaugeReadings of(List<Double> values) {
        return new GaugeReadings(values, Optional.empty(), List.of(), "");
    }

    /**
     * Readings with the gauge they were read with, where the shop knows it and it reads such quantities.
     *
     * @param gauge mark of the gauge; empty for the one that the unit file names
     * @param reason why an unlikely size is right all the same; empty where nobody says so
     */
    public static GaugeReadings taken(
            List<Double> values, Measurable measured, Shop shop, String gauge, String reason) {
        GaugeReadings readings = of(values).confirmedBecause(reason);
        return shop.inUse(gauge.isBlank() ? measured.gauge() : gauge)
                .filter(known -> known.kind() == measured.kind().quantity())
                .map(known -> readings.with(GaugeError.of(known)))
                .orElse(readings);
    }

    /** The same, read with this gauge. */
    public GaugeReadings with(GaugeError read) {
        return new GaugeReadings(values, Optional.of(read), before, confirmed);
    }

    /** The same beside the readings of the check to which the limits are relative. */
    public GaugeReadings after(List<Double> earlier) {
        return new GaugeReadings(values, gauge, earlier, confirmed);
    }

    /** The same, confirmed for this reason. */
    public GaugeReadings confirmedBecause(String reason) {
        return new GaugeReadings(values, gauge, before, reason);
    }

    /** The same beside what the job last read of the check to which the limits are relative; alike where there is none. */
    public GaugeReadings after(Job job, Check check) {
        return job.checks().values().stream()
                .filter(read -> check.relativeTo()
                        .equals(read.what().hold() + "/" + read.what().check()))
                .max(Comparator.comparingLong(Job.Said::number))
                .map(read -> after(read.what().values()))
                .orElse(this);
    }

    /** True where a person stands behind an unlikely size. */
    boolean isConfirmed() {
        return !confirmed.isBlank();
    }

    /**
     * The readings by piece, under an empty name where the file names none; refused with how many are missing, or where
     * they cannot be shared out evenly.
     */
    static Outcome<Map<String, List<Double>>> byPiece(Measurable measured, List<Double> values) {
        List<String> fields = measured.fields();
        int each = measured.readingsEach();
        int wanted = each * fields.size();
        boolean pair = measured.judgedOn() == Statistic.DIFFERENCE && fields.size() == 1;
        if (values.size() < wanted) {
            int missing = wanted - values.size();
            return Outcome.refused(new Refusal(
                    "values", measured.what(), values.size() + " of " + wanted + " readings", more(measured, missing)));
        }
        if (values.size() % fields.size() != 0 || (pair && values.size() != 2)) {
            return Outcome.refused(new Refusal(
                    "values",
                    measured.what(),
                    values.size() + " readings" + (pair ? "" : " of " + fields.size() + " pieces"),
                    pair ? "Read two: the first less the second counts" : "Read each piece as often as the others"));
        }
        int share = values.size() / fields.size();
        Map<String, List<Double>> pieces = new LinkedHashMap<>();
        for (int i = 0; i < fields.size(); i++) {
            pieces.put(fields.get(i), new ArrayList<>(values.subList(i * share, (i + 1) * share)));
        }
        return Outcome.ok(pieces);
    }

    private static String more(Measurable measured, int missing) {
        if (!measured.pieces().isEmpty()) {
            return "Read " + measured.readingsEach() + " of each: " + String.join(", ", measured.pieces());
        }
        return "Read " + missing + (missing == 1 ? " more place" : " more places");
    }
}
