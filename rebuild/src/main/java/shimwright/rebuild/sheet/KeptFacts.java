package shimwright.rebuild.sheet;

import java.util.LinkedHashMap;
import java.util.Map;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.Job.Said;

/** What a person typed into a sheet of a job the last time it was kept: it is not asked again. */
final class KeptFacts {
    private KeptFacts() {}

    /** What was typed into that sheet about that thing, by input. */
    static Map<String, Fact> of(Job job, String about, String sheet) {
        Said<Entry.SheetWorked> said = job.worked().get(about + "/" + sheet);
        return said == null ? Map.of() : typed(said);
    }

    /** What of an entry was typed, by input. */
    static Map<String, Fact> typed(Said<Entry.SheetWorked> said) {
        Map<String, Fact> typed = new LinkedHashMap<>();
        said.what().given().forEach((input, text) -> {
            if (said.what().from().getOrDefault(input, "").equals(Entry.SheetWorked.TYPED)) {
                typed.put(input, new Fact(text, Fact.TYPED + said.by()));
            }
        });
        return typed;
    }
}
