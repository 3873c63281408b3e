package shimwright.rebuild.learn;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import shimwright.mechanics.quantity.Kind;
import shimwright.rebuild.unit.edit.OwnTimes;
import shimwright.rebuild.unit.model.Origin;
import shimwright.rebuild.unit.model.Origin.Source;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.UnitType;

/** What steps took on the shop's own jobs, against what their file says. */
public final class StepTimes {
    /** A time that stands on any of these gives way to what was measured; printed and told ones stay. */
    private static final Set<Source> GIVE_WAY = Set.of(Source.COMMON_PRACTICE, Source.GUESS, Source.MEASURED);

    private StepTimes() {}

    /**
     * Own times in the place of usual ones: of each step the median of what it took on the jobs that were handed back.
     *
     * @param type whose steps these are
     * @param earlier what those jobs knew
     * @return empty where no time would change
     */
    public static Optional<OwnTimes> of(UnitType type, Memories earlier) {
        Map<String, Double> own = new LinkedHashMap<>();
        Set<String> jobs = new TreeSet<>();
        for (Step step : type.steps()) {
            List<Remembered> took = earlier.step(step.id()).stream()
                    .filter(one -> one.kind() == Kind.TIME && !one.values().isEmpty())
                    .toList();
            boolean usual =
                    Origin.of(step.origin()).source().filter(GIVE_WAY::contains).isPresent();
            if (usual && !took.isEmpty()) {
                double median = median(took);
                if (Math.abs(median - step.duration()) >= 1) {
                    own.put(step.id(), median);
                }
                took.forEach(one -> jobs.add(one.job()));
            }
        }
        String origin = Origin.text(
                Source.MEASURED.written(),
                (jobs.size() == 1 ? "job " : "the middle of jobs ") + String.join(", ", jobs));
        return own.isEmpty() ? Optional.empty() : Optional.of(new OwnTimes(own, origin));
    }

    private static double median(List<Remembered> took) {
        double[] seconds =
                took.stream().mapToDouble(one -> one.values().get(0)).sorted().toArray();
        int half = seconds.length / 2;
        return Arrays.stream(seconds, (seconds.length - 1) / 2, half + 1)
                .average()
                .orElseThrow();
    }
}
