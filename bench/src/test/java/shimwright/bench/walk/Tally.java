package shimwright.bench.walk;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * What somebody did on a tablet. A tap: a button, a link, a line of a list, a choice, getting into a field that is typed into. A
 * character: each that is typed; what a field holds already costs none. A question: each answer that is asked for besides which part
 * it is and is not left as it stands.
 */
final class Tally {
    private static final int KINDS = 3;

    private final Map<String, int[]> parts = new LinkedHashMap<>();
    private String now = "";

    /** From now on it is counted for this part of the work. */
    void at(String part) {
        now = part;
    }

    private int[] counts() {
        return parts.computeIfAbsent(now, none -> new int[KINDS]);
    }

    void tap(int taps) {
        counts()[0] += taps;
    }

    void typed(String text) {
        if (!text.isEmpty()) {
            counts()[0]++;
            counts()[1] += text.length();
        }
    }

    void asked(int questions) {
        counts()[2] += questions;
    }

    /** Taps, characters and questions. */
    List<Integer> sum() {
        List<Integer> sum = new ArrayList<>();
        for (int i = 0; i < KINDS; i++) {
            int kind = i;
            sum.add(parts.values().stream().mapToInt(counts -> counts[kind]).sum());
        }
        return sum;
    }

    /** All of it, one line a part. */
    String words() {
        StringBuilder words = new StringBuilder();
        parts.forEach((part, counts) -> line(words, part, counts));
        return words.toString();
    }

    private static void line(StringBuilder words, String part, int[] counts) {
        words.append(String.format(
                Locale.ROOT, "%-28s %5d taps %6d characters %5d questions%n", part, counts[0], counts[1], counts[2]));
    }
}
