package shimwright.bench.walk;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Names of parts as a mechanic takes them: "hub 3/4" and "hub of 3rd and 4th" are one, sizes in a name tell no part. */
final class PartNames {
    private static final Set<String> EMPTY =
            Set.of("of", "the", "its", "with", "and", "under", "in", "a", "on", "what", "to", "that", "it");
    /** Gears by number, and words that the trade uses for one thing; common practice, no source. */
    private static final Map<String, String> ONE_WORD = Map.of(
            "1", "1st", "2", "2nd", "3", "3rd", "4", "4th", "5", "5th", "r", "reverse", "carrier", "case", "cage",
            "needle");
    /** Somebody takes two names for one where they say the same kind of thing and share more than this. */
    private static final double ALIKE = 0.5;

    private PartNames() {}

    /** The words that count. */
    static Set<String> words(String name) {
        String plain = name.toLowerCase(Locale.ROOT)
                .replaceAll("[0-9]+(\\.[0-9]+)?(x[0-9.]+)+", " ")
                .replace("bellhousing", "bell housing");
        return Arrays.stream(plain.split("[^a-z0-9]+"))
                .filter(word -> !word.isEmpty() && !EMPTY.contains(word))
                .map(word -> ONE_WORD.getOrDefault(word, word))
                .map(word -> word.length() > 3 && word.endsWith("s") ? word.substring(0, word.length() - 1) : word)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    static boolean same(String one, String other) {
        return words(one).equals(words(other));
    }

    /** How alike two names are, 0 to 1. */
    static double alike(String one, String other) {
        Set<String> both = new TreeSet<>(words(one));
        Set<String> all = new TreeSet<>(both);
        all.addAll(words(other));
        both.retainAll(words(other));
        return all.isEmpty() ? 0 : (double) both.size() / all.size();
    }

    /** What the thing is, apart from where it sits: the last word before "of", "with" and the like. */
    private static String head(String name) {
        String first = name.split(" (of|with|under|behind|between|in|for|that|to)( |$)")[0];
        List<String> words = Arrays.stream(first.split("[^A-Za-z0-9]+"))
                .flatMap(word -> words(word).stream())
                .filter(word -> !word.matches(".*[0-9].*"))
                .toList();
        return words.isEmpty() ? "" : words.get(words.size() - 1);
    }

    private static boolean like(String held, String line) {
        return head(held).equals(head(line)) && alike(held, line) > ALIKE;
    }

    /** The line of a list that somebody taps who holds a part: the likeliest, where any is like it at all. */
    static Optional<String> tapped(String held, List<String> lines) {
        return lines.stream()
                .filter(line -> like(held, line))
                .max(Comparator.comparingDouble(line -> alike(held, line)));
    }
}
