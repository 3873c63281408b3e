package shimwright.bench.web.shop;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import shimwright.rebuild.unit.model.Origin;

/**
 * A limit or torque of an entry of a unit file, with where it comes from.
 *
 * @param text what it is and its value, as the file has it
 * @param origin as the file has it; may be empty
 * @param guess true where it is a guess
 */
public record OriginNumber(String text, String origin, boolean guess) {
    private static final List<String> NUMBERS = List.of("torque", "lower", "upper", "limit", "spread");

    /** Those of an entry and of the checks in it. */
    static List<OriginNumber> of(Map<String, Object> entry) {
        List<OriginNumber> numbers = new ArrayList<>();
        add(entry, "", numbers);
        if (entry.get("checks") instanceof List<?> checks) {
            for (Object check : checks) {
                if (check instanceof Map<?, ?> one) {
                    add(one, one.get("what") instanceof String what ? what + ": " : "", numbers);
                }
            }
        }
        return List.copyOf(numbers);
    }

    private static void add(Map<?, ?> entry, String before, List<OriginNumber> numbers) {
        String text = NUMBERS.stream()
                .flatMap(key -> entry.get(key) instanceof String value ? Stream.of(key + " " + value) : Stream.empty())
                .collect(Collectors.joining(", "));
        if (!text.isEmpty()) {
            String origin = entry.get(Origin.KEY) instanceof String written ? written : "";
            numbers.add(new OriginNumber(before + text, origin, Origin.guess(origin)));
        }
    }
}
