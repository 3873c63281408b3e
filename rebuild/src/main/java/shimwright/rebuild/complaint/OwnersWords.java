package shimwright.rebuild.complaint;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import shimwright.mechanics.reference.Table;
import shimwright.rebuild.unit.model.UnitType;

/**
 * What the owner's own words say of the check and of what is known of the unit. It is proposed, and counts once a person keeps it: words
 * that are denied in the same breath say nothing, and where two answers would hold the line says nothing of that question.
 *
 * @param symptoms of the unit, by id
 * @param answers by question, of the first complaint alone
 * @param others kinds of what else is complained of, by the answer's id
 */
public record OwnersWords(List<String> symptoms, Map<String, String> answers, List<String> others) {
    private static final String KIND = "kind";

    /** A denial holds for what follows it so closely. */
    private static final Pattern DENIED =
            Pattern.compile("(?i)\\b(no( \\w+)?|(not|never|without|nor|quiet|silent|\\w+n't)( \\w+){0,2}) $");

    /** Words that tell nothing apart. */
    private static final Set<String> EMPTY = Set.of(
            "a", "an", "and", "at", "all", "by", "in", "into", "is", "it", "of", "on", "one", "only", "or", "out",
            "that", "the", "to", "up", "when", "with", "will", "take", "taking");

    private static final List<String> ORDINALS =
            List.of("first", "second", "third", "fourth", "fifth", "sixth", "seventh");
    private static final List<String> FIGURES = List.of("1st", "2nd", "3rd", "4th", "5th", "6th", "7th");

    /** Of the words of a symptom, so many of three are in the owner's line. */
    private static final int TWO_OF_THREE = 2;

    private static final int STEM = 4;

    public OwnersWords {
        symptoms = List.copyOf(symptoms);
        answers = Collections.unmodifiableMap(new LinkedHashMap<>(answers));
        others = List.copyOf(others);
    }

    private record Way(String question, String answer, Pattern words) {}

    private static final class Shipped {
        private static final List<Way> WAYS = Table.resource("/complaint/owner.csv").rows().stream()
                .map(row -> new Way(
                        row.text("question"),
                        row.text("answer"),
                        Pattern.compile("(?i)\\b(" + row.text("words") + ")")))
                .toList();
    }

    /**
     * What the lines say; of a question the first line that speaks of it. A line that names another kind of trouble is another complaint:
     * its gear and its load are not those of the first.
     *
     * @param said what the owner said, a line each
     */
    public static OwnersWords of(UnitType type, List<String> said) {
        Map<String, String> answers = new LinkedHashMap<>();
        List<String> symptoms = new ArrayList<>();
        List<String> others = new ArrayList<>();
        for (String line : said) {
            Map<String, String> says = answers(line);
            String kind = says.getOrDefault(KIND, "");
            if (kind.isEmpty() || kind.equals(answers.getOrDefault(KIND, kind))) {
                says.forEach(answers::putIfAbsent);
            } else if (!others.contains(kind)) {
                others.add(kind);
            }
            type.symptoms().stream()
                    .filter(symptom -> speaksOf(line, symptom.says()))
                    .map(UnitType.Symptom::id)
                    .filter(id -> !symptoms.contains(id))
                    .forEach(symptoms::add);
        }
        return new OwnersWords(symptoms, answers, others);
    }

    /** Nothing is proposed. */
    public boolean isEmpty() {
        return symptoms.isEmpty() && answers.isEmpty();
    }

    /** Where several answers to a question are found, none holds; but words within those of an earlier answer of the table are that one's. */
    private static Map<String, String> answers(String line) {
        Map<String, Way> found = new LinkedHashMap<>();
        Map<String, int[]> places = new LinkedHashMap<>();
        for (Way way : Shipped.WAYS) {
            int[] place = place(line, way.words());
            int[] before = places.get(way.question());
            if (place.length == 0 || (before != null && within(place, before))) {
                continue;
            }
            if (before == null) {
                found.put(way.question(), way);
                places.put(way.question(), place);
            } else {
                found.remove(way.question());
            }
        }
        Map<String, String> answers = new LinkedHashMap<>();
        found.values().forEach(way -> answers.put(way.question(), way.answer()));
        // where oil comes out is asked of what leaks, and pace of what goes in badly
        if (!"leak".equals(answers.get(KIND))) {
            answers.remove("drips");
        }
        if (!Set.of("crunch", "stiff").contains(answers.getOrDefault(KIND, ""))) {
            answers.remove("haste");
        }
        return answers;
    }

    private static boolean within(int[] place, int[] other) {
        return place[0] >= other[0] && place[1] <= other[1];
    }

    private static int[] place(String line, Pattern words) {
        Matcher found = words.matcher(line);
        while (found.find()) {
            if (!DENIED.matcher(line.substring(0, found.start())).find()) {
                return new int[] {found.start(), found.end()};
            }
        }
        return new int[0];
    }

    private static boolean speaksOf(String line, String says) {
        List<String> said = stems(line);
        List<String> wanted = stems(says);
        long there = wanted.stream().filter(said::contains).count();
        return there >= TWO_OF_THREE && there * (TWO_OF_THREE + 1) >= wanted.size() * (long) TWO_OF_THREE;
    }

    private static List<String> stems(String text) {
        List<String> stems = new ArrayList<>();
        for (String word : text.toLowerCase(Locale.ROOT).split("[^\\p{L}\\p{N}]+")) {
            if (!word.isEmpty() && !EMPTY.contains(word)) {
                int ordinal = ORDINALS.indexOf(word);
                stems.add(ordinal >= 0 ? FIGURES.get(ordinal) : word.substring(0, Math.min(STEM, word.length())));
            }
        }
        return stems.stream().distinct().toList();
    }
}
