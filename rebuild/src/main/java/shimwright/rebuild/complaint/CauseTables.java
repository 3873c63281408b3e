package shimwright.rebuild.complaint;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import shimwright.mechanics.reference.Table;

/**
 * What is known of complaints about manual gearboxes in general. The list that ships is common practice, without a source: shares and
 * weights are ours and say which is likelier, not how many in a hundred.
 *
 * @param questions of the check, in order
 * @param openings how far a box is apart, from the vehicle on
 * @param causes in the order of the file
 */
public record CauseTables(List<CheckQuestion> questions, List<StripDepth> openings, List<Cause> causes) {
    public CauseTables {
        questions = List.copyOf(questions);
        openings = List.copyOf(openings);
        causes = List.copyOf(causes);
    }

    private static final class Shipped {
        private static final CauseTables ALL = new CauseTables(readQuestions(), readOpenings(), readCauses());
    }

    /** The list that ships with the program, read when first asked for. */
    public static CauseTables shipped() {
        return Shipped.ALL;
    }

    /** The question of that id. */
    public Optional<CheckQuestion> question(String id) {
        return questions.stream().filter(question -> question.id().equals(id)).findFirst();
    }

    /** The opening of that id. */
    public Optional<StripDepth> opening(String id) {
        return openings.stream().filter(opening -> opening.id().equals(id)).findFirst();
    }

    /** The cause of that id. */
    public Optional<Cause> cause(String id) {
        return causes.stream().filter(cause -> cause.id().equals(id)).findFirst();
    }

    /** The first cause whose words are found in a name; empty where none speaks of it. */
    public Optional<Cause> spokenOf(String name) {
        return causes.stream()
                .filter(cause -> cause.words().matcher(name).find())
                .findFirst();
    }

    private static List<CheckQuestion> readQuestions() {
        Map<String, Map<String, String>> means = new LinkedHashMap<>();
        for (Table.Row row : Table.resource("/complaint/debris.csv").rows()) {
            means.computeIfAbsent(row.text("question"), question -> new LinkedHashMap<>())
                    .put(row.text("answer"), row.text("means"));
        }
        Map<String, CheckQuestion> read = new LinkedHashMap<>();
        for (Table.Row row : Table.resource("/complaint/questions.csv").rows()) {
            String id = row.text("question");
            CheckQuestion before = read.getOrDefault(
                    id, new CheckQuestion(id, row.text("asks"), Map.of(), means.getOrDefault(id, Map.of())));
            Map<String, String> answers = new LinkedHashMap<>(before.answers());
            answers.put(row.text("answer"), row.text("words"));
            read.put(id, new CheckQuestion(id, before.asks(), answers, before.means()));
        }
        return List.copyOf(read.values());
    }

    private static List<StripDepth> readOpenings() {
        return Table.resource("/complaint/openings.csv").rows().stream()
                .map(row -> new StripDepth(
                        row.text("opening"),
                        row.text("name"),
                        row.number("minutes"),
                        row.has("after") ? row.text("after") : "",
                        row.has("ends") ? List.of(row.text("ends").split(";")) : List.of()))
                .toList();
    }

    private static List<Cause> readCauses() {
        List<Cause> read = new ArrayList<>();
        for (Table.Row row : Table.resource("/complaint/causes.csv").rows()) {
            read.add(new Cause(
                    row.text("cause"),
                    row.text("name"),
                    row.text("look"),
                    row.number("minutes"),
                    row.text("after"),
                    row.number("sees"),
                    row.number("share"),
                    Pattern.compile("(?i)\\b(" + row.text("words") + ")"),
                    tells(row.text("tells"))));
        }
        return read;
    }

    /** {@code question=answer:weight;…} with bars between questions. */
    private static Map<String, Map<String, Double>> tells(String text) {
        Map<String, Map<String, Double>> tells = new LinkedHashMap<>();
        for (String one : text.split("\\|")) {
            String[] of = one.split("=", 2);
            Map<String, Double> weights = new LinkedHashMap<>();
            for (String answer : of[1].split(";")) {
                String[] pair = answer.split(":", 2);
                weights.put(pair[0], pair.length > 1 ? Double.parseDouble(pair[1]) : 1.0);
            }
            tells.put(of[0], Map.copyOf(weights));
        }
        return tells;
    }
}
