package shimwright.rebuild.unit.fault;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import shimwright.mechanics.outcome.Refusal;

/** Gathers the problems of one file, each a refusal whose place is {@code file:line:column} and whose key the path there. */
public final class ProblemCollector {
    /** More than this nobody reads; the rest is counted. */
    public static final int SHOWN = 200;

    private static final Comparator<Found> BY_PLACE = Comparator.<Found>comparingInt(
                    found -> found.place().line())
            .thenComparingInt(found -> found.place().column())
            .thenComparing(Found::fact);

    private final String file;
    private final Set<Found> found = new LinkedHashSet<>();
    private final Set<Found> remarks = new LinkedHashSet<>();
    private Map<Place, String> keys = Map.of();

    private record Found(Place place, String fact, String hint) {}

    public ProblemCollector(String file) {
        this.file = file;
    }

    /** The path in the file of what stands at each place, once it is known. */
    public void keys(Map<Place, String> known) {
        keys = Map.copyOf(known);
    }

    /** Keeps a problem, unless the same stands there already. */
    public void add(Place place, String fact, String hint) {
        found.add(new Found(place, fact, hint));
    }

    /** Something that is no fault and should still be looked at. */
    public void remark(Place place, String fact, String hint) {
        remarks.add(new Found(place, fact, hint));
    }

    /** What should be looked at, by place. */
    public List<Refusal> remarks() {
        return remarks.stream().sorted(BY_PLACE).map(this::refusal).toList();
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
    public List<Refusal> sorted() {
        List<Found> sorted = found.stream().sorted(BY_PLACE).toList();
        List<Refusal> shown =
                new ArrayList<>(sorted.stream().limit(SHOWN).map(this::refusal).toList());
        if (sorted.size() > SHOWN) {
            shown.add(Refusal.at(
                    words(sorted.get(SHOWN).place()),
                    "from here on there are " + (sorted.size() - SHOWN) + " more problems",
                    "Mend those above and check the file again"));
        }
        return List.copyOf(shown);
    }

    private Refusal refusal(Found one) {
        return new Refusal(keys.getOrDefault(one.place(), ""), words(one.place()), one.fact(), one.hint());
    }

    private String words(Place place) {
        return file + ":" + place.line() + ":" + place.column();
    }
}
