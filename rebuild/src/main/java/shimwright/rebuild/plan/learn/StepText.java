package shimwright.rebuild.plan.learn;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/** What was learnt, written as steps of a unit file. */
public final class StepText {
    private StepText() {}

    /**
     * The order in which the steps are written: possible by what was learnt, and of what is free those of one group (a shaft, a
     * cover) one after another. The first is the first of the order seen.
     *
     * @param group of a part; an empty text for none
     */
    public static List<RemovedParts> grouped(Learning learning, Function<RemovedParts, String> group) {
        Map<String, Map<String, Boolean>> order = learning.order();
        List<RemovedParts> left = new ArrayList<>(learning.parts());
        List<RemovedParts> laid = new ArrayList<>();
        Set<String> gone = new LinkedHashSet<>();
        String last = "";
        while (!left.isEmpty()) {
            List<RemovedParts> ready = left.stream()
                    .filter(off -> gone.containsAll(
                            order.getOrDefault(off.id(), Map.of()).keySet()))
                    .toList();
            String same = last;
            RemovedParts next = ready.stream()
                    .filter(off -> !same.isEmpty() && group.apply(off).equals(same))
                    .findFirst()
                    .orElse(ready.get(0));
            laid.add(next);
            left.remove(next);
            gone.add(next.id());
            last = group.apply(next);
        }
        return List.copyOf(laid);
    }

    /**
     * The steps as the list under {@code steps:} of a unit file, in YAML. What is known is written as blocked, what was only
     * seen as habit. The times are not known and stand at 10 min each until someone takes them; a remark says so.
     *
     * @param learning what was learnt
     * @param laid the parts in the order of writing, such as {@link #grouped}
     * @param prefix of the step ids, letters
     * @param station id of the station where they are done; of the unit file
     */
    public static String yaml(Learning learning, List<RemovedParts> laid, String prefix, String station) {
        Map<String, String> ids = new LinkedHashMap<>();
        laid.forEach(off -> ids.put(off.id(), prefix + String.format(Locale.ROOT, "%02d", ids.size() + 1)));
        Map<String, Map<String, Boolean>> order = learning.order();
        StringBuilder text = new StringBuilder(
                "  # From a strip-down, turned round. No times were taken: 10 min stands for every one.\n");
        for (RemovedParts off : laid) {
            text.append("  - id: ").append(ids.get(off.id())).append('\n');
            text.append("    todo: ").append(quoted("Fit: " + off.name())).append('\n');
            text.append("    at: ").append(station).append('\n');
            String after = order.getOrDefault(off.id(), Map.of()).entrySet().stream()
                    .map(e -> ids.get(e.getKey()) + ": " + (e.getValue() ? "blocked" : "habit"))
                    .collect(Collectors.joining(", "));
            if (!after.isEmpty()) {
                text.append("    after: {").append(after).append("}\n");
            }
            text.append("    duration: 10 min\n");
            if (!off.items().isEmpty()) {
                text.append("    installs: [")
                        .append(String.join(", ", off.items()))
                        .append("]\n");
            }
        }
        return text.toString();
    }

    private static String quoted(String text) {
        StringBuilder quoted = new StringBuilder("\"");
        text.codePoints().forEach(c -> {
            if (c == '"' || c == '\\') {
                quoted.append('\\').appendCodePoint(c);
            } else {
                quoted.appendCodePoint(Character.isISOControl(c) ? ' ' : c);
            }
        });
        return quoted.append('"').toString();
    }
}
