package shimwright.bench.web.plan;

import java.util.Map;
import java.util.stream.Collectors;
import shimwright.rebuild.plan.learn.Learning;

/** What was learnt of an order as its page words it. */
public final class LearnView {
    private LearnView() {}

    /** What a part waits for, by name; what nobody was asked is as it was seen. */
    public static String after(Learning learning, String part) {
        Map<String, Boolean> waits = learning.order().getOrDefault(part, Map.of());
        return learning.parts().stream()
                .filter(other -> waits.containsKey(other.id()))
                .map(other -> other.name() + (Boolean.TRUE.equals(waits.get(other.id())) ? "" : " (as seen)"))
                .collect(Collectors.joining("; "));
    }

    /** The answers so far, one letter each, but for the last. */
    public static String withoutLast(String answers) {
        return answers.isEmpty() ? "" : answers.substring(0, answers.length() - 1);
    }
}
