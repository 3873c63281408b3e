package shimwright.rebuild.unit.edit;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import shimwright.rebuild.unit.model.Origin;
import shimwright.rebuild.unit.model.Step;

/** New items and steps of a unit file, and ids that are free. */
final class TypeParts {
    /** Common practice, no source; the shop's own times take its place after the first job. */
    private static final double USUAL_MINUTES = 3 * 60;

    private TypeParts() {}

    /** A step of three minutes that fits items. */
    static Step step(String id, String todo, String at, Map<String, Step.Why> after, List<String> installs) {
        return new Step(
                id,
                todo,
                at,
                new Step.Order(after, Map.of()),
                new Step.Time(USUAL_MINUTES, Origin.Source.COMMON_PRACTICE.written()),
                List.of(),
                new Step.Undoing(Step.Undo.FREE, 0, List.of()),
                new Step.Care("", List.of(), "", ""),
                new Step.Parts(List.of(), installs, List.of(), List.of(), Map.of(), List.of()),
                new Step.Reading("", Step.Phase.NONE),
                List.of(),
                1,
                Set.of());
    }

    /** A map of a tree with its keys as texts. */
    static Map<String, Object> map(Object value) {
        Map<String, Object> map = new LinkedHashMap<>();
        ((Map<?, ?>) value).forEach((key, inner) -> map.put(key.toString(), inner));
        return map;
    }

    /** The name itself where it is the first of its kind, else with its number behind it. */
    static String counted(String name, Collection<String> before) {
        String one = name;
        for (int number = 2; before.contains(one); number++) {
            one = name + "~" + number;
        }
        return one;
    }

    /** A name as an id: small letters, digits and low lines. */
    static String idOf(String name) {
        String id = name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "_").replaceAll("^_|_$", "");
        return id.isEmpty() || Character.isDigit(id.charAt(0)) ? "part_" + id : id;
    }

    /** The beginning itself where it is a word and free, else with the first free number behind it. */
    static String freeId(String begin, Collection<String> taken) {
        if (begin.length() > 1 && !taken.contains(begin)) {
            return begin;
        }
        int number = 1;
        while (taken.contains(begin + number)) {
            number++;
        }
        return begin + number;
    }
}
