package shimwright.rebuild.sheet;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.mechanics.worksheet.Answer;
import shimwright.mechanics.worksheet.ShownValue;
import shimwright.mechanics.worksheet.Worksheet;

/**
 * A worksheet for one thing of a job.
 *
 * @param about the thing, such as {@code fastener V4}
 * @param name of it in words
 * @param sheet the worksheet
 * @param facts what is known, by input
 * @param tells the outputs that say it in a line, by path
 */
public record JobSheet(String about, String name, Worksheet<?, ?> sheet, Map<String, Fact> facts, List<String> tells) {
    public JobSheet {
        facts = Map.copyOf(facts);
        tells = List.copyOf(tells);
    }

    /** What is known, as it would be typed. */
    public Map<String, String> typed() {
        Map<String, String> typed = new LinkedHashMap<>();
        facts.forEach((input, fact) -> typed.put(input, fact.text()));
        return typed;
    }

    /** What it answers with what is known; refused with all that is missing. */
    public Outcome<Answer> answer(UnitSystem units) {
        return sheet.answer(typed(), units);
    }

    /** What it still asks, in words; empty where it answers, or where what is known contradicts itself. */
    public List<String> asks(UnitSystem units) {
        return answer(units).refusals().stream()
                .filter(refusal -> !facts.containsKey(refusal.key()))
                .map(Refusal::place)
                .distinct()
                .toList();
    }

    /** What it says in a line; empty where it has no answer yet. */
    public Optional<String> says(UnitSystem units) {
        return answer(units) instanceof Outcome.Ok<Answer> ok ? Optional.of(line(ok.value())) : Optional.empty();
    }

    /** The outputs that tell, each with what it is. */
    private String line(Answer answer) {
        StringBuilder line = new StringBuilder();
        for (ShownValue shown : answer.shown()) {
            if (tells.contains(shown.path()) && !shown.text().isEmpty()) {
                line.append(line.isEmpty() ? "" : ", ")
                        .append(shown.field().label())
                        .append(' ')
                        .append(shown.text());
            }
        }
        return line.toString();
    }
}
