package shimwright.rebuild.plan.model;

import java.util.List;
import java.util.Set;

/**
 * An alternative: the tasks of exactly one option are done, those of the others are left out.
 *
 * @param id unique within the problem
 * @param options two or more, none of them empty, no task in two of them
 */
public record Either(String id, List<Set<String>> options) {
    public Either {
        options = options.stream().map(Set::copyOf).toList();
    }
}
