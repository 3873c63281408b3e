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
    /** Lines that are remembered: those of a unit or two, which stay as they are while the same is known. */
    private static final int REMEMBERED = 300;

    private static final Map<Asked, Said> SAID = new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Asked, Said> eldest) {
            return size() > REMEMBERED;
        }
    };

    /** All that a line depends on. */
    private record Asked(String sheet, Map<String, String> typed, List<String> tells, UnitSystem units) {}

    private record Said(Optional<String> line, List<String> asks) {}

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
        return said(units).asks();
    }

    /** What it says in a line; empty where it has no answer yet. */
    public Optional<String> says(UnitSystem units) {
        return said(units).line();
    }

    private Said said(UnitSystem units) {
        Asked asked = new Asked(sheet.name(), typed(), tells, units);
        synchronized (SAID) {
            Said before = SAID.get(asked);
            if (before != null) {
                return before;
            }
        }
        Said said = said(answer(units));
        synchronized (SAID) {
            SAID.put(asked, said);
        }
        return said;
    }

    private Said said(Outcome<Answer> answer) {
        return new Said(
                answer instanceof Outcome.Ok<Answer> ok ? Optional.of(line(ok.value())) : Optional.empty(),
                answer.refusals().stream()
                        .filter(refusal -> !facts.containsKey(refusal.key()))
                        .map(Refusal::place)
                        .distinct()
                        .toList());
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
