package shimwright.rebuild.complaint;

import java.util.List;
import java.util.Map;
import java.util.Set;
import shimwright.rebuild.job.Entry;

/**
 * What speaks for one cause or another in a job.
 *
 * @param answers to the questions of the check, by question; what could not be said is left out
 * @param symptoms of the unit file that the owner's words are, by id
 * @param looked what a look at a suspect came to, by suspect
 * @param outside names of what was measured outside its limit or is to be reworked or replaced; what one reading has within its
 *     limit clears nobody
 * @param before earlier boxes of the type of which is known what was wrong with them
 */
public record Evidence(
        Map<String, String> answers,
        Set<String> symptoms,
        Map<String, Entry.Seen> looked,
        Set<String> outside,
        List<CaseBefore> before) {
    public Evidence {
        answers = Map.copyOf(answers);
        symptoms = Set.copyOf(symptoms);
        looked = Map.copyOf(looked);
        outside = Set.copyOf(outside);
        before = List.copyOf(before);
    }

    /** Answers alone. */
    public static Evidence answers(Map<String, String> answers) {
        return new Evidence(answers, Set.of(), Map.of(), Set.of(), List.of());
    }
}
