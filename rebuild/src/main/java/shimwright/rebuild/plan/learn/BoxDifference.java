package shimwright.rebuild.plan.learn;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.Job.Said;
import shimwright.rebuild.unit.edit.UnitEdit;
import shimwright.rebuild.unit.model.Unit;
import shimwright.rebuild.unit.model.UnitType;

/**
 * Something in the box of a job that is not as its unit file says: it may be a variant, the file may be wrong, or it is peculiar to this
 * box.
 *
 * @param id short, the same as long as the strip-down says the same
 * @param sentence what is different
 * @param look where to look to tell such boxes apart
 * @param was what the file says there
 * @param is what this box shows there
 * @param change the file as this box has it; empty where a reading or a page of its own must say it
 * @param page below the job's address, where it is said otherwise; empty for none
 */
public record BoxDifference(
        String id, String sentence, String look, String was, String is, Optional<UnitEdit> change, String page) {
    /** What a note begins to be about that leaves a difference to this box alone. */
    private static final String PECULIAR = "differs ";

    public BoxDifference {
        sentence = sentence.substring(0, 1).toUpperCase(Locale.ROOT) + sentence.substring(1);
    }

    /** What the note is about that leaves it to this box alone. */
    public String about() {
        return PECULIAR + id;
    }

    /** The note that was left of it, the last one; empty where nothing was decided. */
    public Optional<Said<Entry.NoteMade>> left(Job job) {
        return job.notes().getOrDefault(about(), List.of()).stream().reduce((one, later) -> later);
    }

    /** Every difference of a job to its unit file, by kind and then in the order in which it was seen. */
    public static List<BoxDifference> of(Unit unit, Job job) {
        return new BoxComparison(unit, job).all();
    }

    /**
     * The variants of a file that are as the box is here, by the id of each difference.
     *
     * @param type the file with all its variants
     * @param differences of the job to its own variant
     */
    public static Map<String, List<String>> known(UnitType type, Job job, List<BoxDifference> differences) {
        Map<String, List<String>> known = new LinkedHashMap<>();
        differences.forEach(one -> known.put(one.id(), new ArrayList<>()));
        for (String variant :
                differences.isEmpty() ? Set.<String>of() : type.variants().keySet()) {
            Set<String> there = of(type.resolve(variant), job).stream()
                    .map(BoxDifference::id)
                    .collect(Collectors.toSet());
            known.forEach((id, variants) -> {
                if (!there.contains(id)) {
                    variants.add(variant);
                }
            });
        }
        return known;
    }

    /** Those about which nothing was decided. */
    public static List<BoxDifference> open(Unit unit, Job job) {
        return of(unit, job).stream().filter(one -> one.left(job).isEmpty()).toList();
    }
}
