package shimwright.rebuild.complaint;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.Job.Said;
import shimwright.rebuild.unit.model.Unit;

/**
 * An earlier box of the type of which is known what was wrong with it. It counts as one case, whatever number of things it had; one that
 * came back is one more.
 *
 * @param job its number
 * @param causes what it was, in words, by the suspect's id
 * @param how it is known: {@code found}, {@code worn} or {@code came back}
 */
public record CaseBefore(String job, Map<String, String> causes, How how) {
    /** How it is known what was wrong. */
    public enum How {
        /** Somebody looked for it and found it. */
        FOUND,
        /** Nobody said what it was; these were outside their limits. */
        WORN,
        /** It came back after the hand-back, and the cause was found. */
        CAME_BACK
    }

    public CaseBefore {
        causes = Collections.unmodifiableMap(new LinkedHashMap<>(causes));
    }

    /**
     * What is known of a box: what somebody looked for and found; where nobody said and something was complained of, what was outside
     * its limits; and for each time that it came back the cause, unless it lay in its use or is not known.
     *
     * @param unit by which it is read
     * @return nothing where nothing is known
     */
    static List<CaseBefore> of(Unit unit, Job job) {
        List<CaseBefore> cases = new ArrayList<>();
        String number = job.opened().number();
        Map<String, String> found = new LinkedHashMap<>();
        job.inspection().looked().values().stream()
                .map(Said::what)
                .filter(looked -> looked.seen() == Entry.Seen.FOUND)
                .forEach(looked -> found.put(looked.suspect(), looked.name()));
        if (!found.isEmpty()) {
            cases.add(new CaseBefore(number, found, How.FOUND));
        } else if (job.inspection().complaint() != null) {
            Map<String, String> worn = spokenOf(JobEvidence.outside(unit, job));
            if (!worn.isEmpty()) {
                cases.add(new CaseBefore(number, worn, How.WORN));
            }
        }
        job.end().returned().keySet().stream()
                .flatMap(id -> Optional.ofNullable(job.end().explained().get(id)).stream())
                .filter(why -> counts(why.what().lies()))
                .map(why -> new CaseBefore(number, explained(unit, why.what()), How.CAME_BACK))
                .forEach(cases::add);
        return List.copyOf(cases);
    }

    /** True for what says something of the next box: not how this one was used, and not what nobody knows. */
    private static boolean counts(Entry.LiesIn lies) {
        return lies == Entry.LiesIn.THE_PART || lies == Entry.LiesIn.OUR_WORK;
    }

    private static Map<String, String> explained(Unit unit, Entry.ReturnExplained why) {
        Map<String, String> causes = spokenOf(List.of(why.name()));
        if (causes.isEmpty()) {
            causes = spokenOf(unit.type().items().stream()
                    .filter(item -> why.items().contains(item.id()))
                    .map(item -> item.name())
                    .toList());
        }
        return causes.isEmpty() ? Map.of(Entry.SuspectLooked.OTHER + why.name(), why.name()) : causes;
    }

    /** The causes of the general list that names speak of. */
    private static Map<String, String> spokenOf(Iterable<String> names) {
        Map<String, String> causes = new LinkedHashMap<>();
        names.forEach(
                name -> CauseTables.shipped().spokenOf(name).ifPresent(cause -> causes.put(cause.id(), cause.name())));
        return causes;
    }

    /** In how many of the cases it was so, and in which boxes, as a person would say it. */
    static String count(List<CaseBefore> so, List<CaseBefore> all) {
        return "it was so in " + so.size() + " of " + all.size() + (all.size() == 1 ? " case" : " cases") + " before ("
                + so.stream().map(CaseBefore::said).distinct().collect(Collectors.joining(", ")) + ")";
    }

    private String said() {
        return switch (how) {
            case FOUND -> job;
            case WORN -> job + ", worn there";
            case CAME_BACK -> job + ", which came back";
        };
    }

    /** What earlier boxes had, the most frequent first: name and in how many cases. */
    public static Map<String, Long> summed(List<CaseBefore> all) {
        Map<String, Long> counts = all.stream()
                .flatMap(box -> box.causes().values().stream().distinct())
                .collect(Collectors.groupingBy(name -> name, LinkedHashMap::new, Collectors.counting()));
        Map<String, Long> sorted = new LinkedHashMap<>();
        counts.entrySet().stream()
                .sorted(Map.Entry.<String, Long>comparingByValue().reversed())
                .forEach(one -> sorted.put(one.getKey(), one.getValue()));
        return sorted;
    }
}
