package shimwright.rebuild.unit.file;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import shimwright.rebuild.unit.fault.Place;
import shimwright.rebuild.unit.fault.ProblemCollector;
import shimwright.rebuild.unit.fault.Spelling;

/** The ids a file defines, by list, and the places that refer to them. */
final class IdReferences {
    private record Reference(String list, String id, Place place) {}

    private final Map<String, Set<String>> definitions = new LinkedHashMap<>();
    private final List<Reference> references = new ArrayList<>();

    /** Notes that a list is there, even if it is empty or partly broken. */
    void list(String list) {
        definitions.computeIfAbsent(list, key -> new LinkedHashSet<>());
    }

    void define(String list, String id) {
        definitions.computeIfAbsent(list, key -> new LinkedHashSet<>()).add(id);
    }

    void refer(String list, String id, Place place) {
        references.add(new Reference(list, id, place));
    }

    /** Reports an id that stands twice in one list for the same variant. */
    static void unique(
            List<Map.Entry<String, Set<String>>> ids, List<Place> places, String what, ProblemCollector problems) {
        Map<String, List<Integer>> seen = new LinkedHashMap<>();
        for (int i = 0; i < ids.size(); i++) {
            int now = i;
            for (int earlier : seen.getOrDefault(ids.get(i).getKey(), List.of())) {
                if (overlap(ids.get(earlier).getValue(), ids.get(i).getValue())) {
                    problems.add(
                            places.get(now),
                            what + " \"" + ids.get(now).getKey() + "\" stands twice, first on line "
                                    + places.get(earlier).line(),
                            "Give one of them another id, or restrict them with only to different variants");
                    break;
                }
            }
            seen.computeIfAbsent(ids.get(i).getKey(), key -> new ArrayList<>()).add(i);
        }
    }

    private static boolean overlap(Set<String> one, Set<String> two) {
        return one.isEmpty() || two.isEmpty() || !Collections.disjoint(one, two);
    }

    /** Reports every reference to an id that its list does not hold. */
    void check(ProblemCollector problems) {
        for (Reference reference : references) {
            Set<String> names = definitions.getOrDefault(reference.list(), Set.of());
            if (!names.contains(reference.id())) {
                String words = reference.list().replace('_', ' ');
                problems.add(
                        reference.place(),
                        "\"" + reference.id() + "\" is not among the " + words,
                        Spelling.hint(reference.id(), names, words));
            }
        }
    }
}
