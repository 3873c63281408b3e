package shimwright.rebuild.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import shimwright.mechanics.quantity.Kind;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.Job.Said;
import shimwright.rebuild.unit.model.Measurable;
import shimwright.rebuild.unit.model.Unit;

/**
 * A size as it was read in this job.
 *
 * @param values every reading, SI
 * @param from which check or limit, and on which day
 */
record SizeRead(List<Double> values, String from) {
    /**
     * The newest reading of any of these.
     *
     * @param sources wear limits by id, checks as {@code H02/bore}; what reads several pieces says nothing of one and is passed over
     */
    static Optional<SizeRead> of(Job job, Unit unit, List<String> sources) {
        long newest = -1;
        Optional<SizeRead> read = Optional.empty();
        for (String source : sources) {
            for (Taken taken : taken(job, unit, source)) {
                if (taken.number() > newest && !taken.values().isEmpty()) {
                    newest = taken.number();
                    read = Optional.of(new SizeRead(taken.values(), source + ", read by " + taken.by()));
                }
            }
        }
        return read;
    }

    private record Taken(long number, String by, List<Double> values) {}

    private static List<Taken> taken(Job job, Unit unit, String source) {
        List<Taken> all = new ArrayList<>();
        String[] at = source.split("/", 2);
        Optional<? extends Measurable> measured = at.length == 2
                ? unit.type().holdPoints().stream()
                        .filter(hold -> hold.id().equals(at[0]))
                        .flatMap(hold -> hold.checks().stream())
                        .filter(check -> check.id().equals(at[1]))
                        .findFirst()
                : unit.type().wearLimits().stream()
                        .filter(wear -> wear.id().equals(source))
                        .findFirst();
        if (measured.isEmpty() || !measured.get().pieces().isEmpty()) {
            return all;
        }
        Measurable what = measured.get();
        for (Said<Entry.CheckRead> said : job.checks().values()) {
            if (at.length == 2
                    && said.what().hold().equals(at[0])
                    && said.what().check().equals(at[1])) {
                all.add(new Taken(
                        said.number(),
                        said.by(),
                        lengths(what, said.what().kind(), said.what().values())));
            }
        }
        for (Said<Entry.Found> said : job.found()) {
            if (said.what().limit().equals(source)) {
                all.add(new Taken(
                        said.number(),
                        said.by(),
                        lengths(what, said.what().kind(), said.what().values())));
            }
        }
        return all;
    }

    private static List<Double> lengths(Measurable what, Kind kind, List<Double> values) {
        return kind == Kind.LENGTH ? values.stream().map(what::value).toList() : List.of();
    }
}
