package shimwright.rebuild.unit.fault;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Gathers the problems of one file. */
public final class ProblemCollector {
    /** More than this nobody reads; the rest is counted. */
    public static final int SHOWN = 200;

    private final String file;
    private final Set<Problem> found = new LinkedHashSet<>();
    private final Set<Problem> remarks = new LinkedHashSet<>();

    public ProblemCollector(String file) {
        this.file = file;
    }

    /** Keeps a problem, unless the same stands there already. */
    public void add(Place place, String fact, String hint) {
        found.add(new Problem(file, place.line(), place.column(), fact, hint));
    }

    /** Something that is no fault and should still be looked at. */
    public void remark(Place place, String fact, String hint) {
        remarks.add(new Problem(file, place.line(), place.column(), fact, hint));
    }

    /** What should be looked at, by place. */
    public List<Problem> remarks() {
        return remarks.stream().sorted().toList();
    }

    /** Nothing found yet, for the same file. */
    public ProblemCollector fresh() {
        return new ProblemCollector(file);
    }

    /** How many problems were kept. */
    public int count() {
        return found.size();
    }

    /** All problems by place; beyond {@link #SHOWN} one more that says how many are left out. */
    public List<Problem> sorted() {
        List<Problem> sorted = new ArrayList<>(found);
        Collections.sort(sorted);
        if (sorted.size() <= SHOWN) {
            return List.copyOf(sorted);
        }
        List<Problem> shown = new ArrayList<>(sorted.subList(0, SHOWN));
        Problem next = sorted.get(SHOWN);
        shown.add(new Problem(
                file,
                next.line(),
                next.column(),
                "from here on there are " + (sorted.size() - SHOWN) + " more problems",
                "Mend those above and check the file again"));
        return List.copyOf(shown);
    }
}
