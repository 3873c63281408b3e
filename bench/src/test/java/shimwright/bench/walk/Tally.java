package shimwright.bench.walk;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What somebody did on a tablet. A tap: a button, a link, a line of a list, a choice, getting into a field that is typed into. A
 * character: each that is typed; what a field holds already costs none. A question: each answer that is asked for besides which part
 * it is and is not left as it stands.
 */
final class Tally {
    private final Map<String, int[]> parts = new LinkedHashMap<>();
    private String now = "";

    /** From now on it is counted for this part of the work. */
    void at(String part) {
        now = part;
    }

    private int[] counts() {
        return parts.computeIfAbsent(now, none -> new int[3]);
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

    /** Taps, characters and questions by part of the work. */
    Map<String, int[]> parts() {
        return parts;
    }

    /** All of it in one line a part, the sum last. */
    String words() {
        StringBuilder words = new StringBuilder();
        int[] sum = new int[3];
        parts.forEach((part, counts) -> {
            line(words, part, counts);
            for (int i = 0; i < sum.length; i++) {
                sum[i] += counts[i];
            }
        });
        line(words, "all", sum);
        return words.toString();
    }

    private static void line(StringBuilder words, String part, int[] counts) {
        words.append(String.format("%-28s %5d taps %6d characters %5d questions%n", part, counts[0], counts[1], counts[2]));
    }
}
