package shimwright.rebuild.unit.fault;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
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
    private final boolean lines;
    private final Set<Found> found = new LinkedHashSet<>();
    private final Set<Found> remarks = new LinkedHashSet<>();
    private Supplier<Map<Place, String>> keys = Map::of;

    private record Found(Place place, String fact, String hint) {}

    public ProblemCollector(String file) {
        this(file, true);
    }

    private ProblemCollector(String file, boolean lines) {
        this.file = file;
        this.lines = lines;
    }

    /** Of a file that is not written yet: its problems have a path and no line. */
    public static ProblemCollector withoutLines(String file) {
        return new ProblemCollector(file, false);
    }

    /** How to find the path in the file of what stands at each place, once it can be known; asked where there is a problem. */
    public void keys(Supplier<Map<Place, String>> known) {
        keys = known;
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
        return refusals(remarks.stream().sorted(BY_PLACE).toList());
    }

    /** Nothing found yet, for the same file. */
    public ProblemCollector fresh() {
        return new ProblemCollector(file, lines);
    }

    /** How many problems were kept. */
    public int count() {
        return found.size();
    }

    /** All problems by place; beyond {@link #SHOWN} one more that says how many are left out. */
    public List<Refusal> sorted() {
        List<Found> sorted = found.stream().sorted(BY_PLACE).toList();
        List<Refusal> shown = new ArrayList<>(refusals(sorted.subList(0, Math.min(SHOWN, sorted.size()))));
        if (sorted.size() > SHOWN) {
            shown.add(Refusal.at(
                    words(sorted.get(SHOWN).place()),
                    "from here on there are " + (sorted.size() - SHOWN) + " more problems",
                    "Mend those above and check the file again"));
        }
        return List.copyOf(shown);
    }

    private List<Refusal> refusals(List<Found> all) {
        if (all.isEmpty()) {
            return List.of();
        }
        Map<Place, String> paths = keys.get();
        return all.stream()
                .map(one ->
                        new Refusal(paths.getOrDefault(one.place(), ""), words(one.place()), one.fact(), one.hint()))
                .toList();
    }

    private String words(Place place) {
        return lines ? file + ":" + place.line() + ":" + place.column() : file;
    }
}
