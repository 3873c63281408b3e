package shimwright.mechanics.worksheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shimwright.mechanics.diagram.Diagram;
import shimwright.mechanics.measure.Budget;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.mechanics.working.Line;

/**
 * What a worksheet answers at the door, in words and as data.
 *
 * @param sheet the worksheet
 * @param given the case it answers
 * @param result its result record
 * @param working its lines
 * @param cautions its sentences to read
 * @param budgets uncertainty from inputs typed with ±, by output path
 * @param system units of the texts
 * @param simulation draws, where they were asked for
 */
public record Answer(
        Worksheet<?, ?> sheet,
        Record given,
        Record result,
        List<Line> working,
        List<String> cautions,
        Map<String, Budget> budgets,
        UnitSystem system,
        Optional<Simulation> simulation) {
    public Answer {
        working = List.copyOf(working);
        cautions = List.copyOf(cautions);
        budgets = Map.copyOf(budgets);
    }

    /** Without draws. */
    public Answer(
            Worksheet<?, ?> sheet,
            Record given,
            Record result,
            List<Line> working,
            List<String> cautions,
            Map<String, Budget> budgets,
            UnitSystem system) {
        this(sheet, given, result, working, cautions, budgets, system, Optional.empty());
    }

    /** The same with draws; their cautions take the place of the advice to draw. */
    Answer with(Simulation draws) {
        List<String> all = new ArrayList<>(cautions);
        all.removeIf(caution -> caution.endsWith(HigherOrderTerms.ADVICE));
        all.addAll(draws.cautions());
        return new Answer(sheet, given, result, working, all, budgets, system, Optional.of(draws));
    }

    /** The same where draws gave nothing; the reason takes the place of the advice to draw. */
    Answer without(String reason) {
        List<String> all = new ArrayList<>(cautions);
        all.replaceAll(caution -> caution.replace(HigherOrderTerms.ADVICE, reason));
        return new Answer(sheet, given, result, working, all, budgets, system, simulation);
    }

    /**
     * Maps, lists, texts, numbers, booleans and nulls only: {@code {"worksheet", "result": {name: {"value" (SI),
     * "unit", "text", "u"}}, "working": […], "cautions": […]}}. A result that carries uncertainty from its inputs has a
     * {@code "budget"} as well; with draws there is {@code "monteCarlo"}.
     */
    public Map<String, Object> json() {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("worksheet", sheet.name());
        json.put("result", new Render(system, budgets).json(sheet.outputs(), result, ""));
        json.put("working", working.stream().map(this::json).toList());
        json.put("cautions", cautions);
        simulation.ifPresent(draws -> json.put("monteCarlo", new RenderDraws(sheet, draws, system).json()));
        return json;
    }

    private Map<String, Object> json(Line line) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("symbol", line.symbol());
        json.put("expression", line.expression());
        json.put("value", line.value());
        json.put("unit", line.kind().siSymbol());
        json.put("text", finely(line));
        json.put("source", line.source());
        return json;
    }

    /** The results in order, as a person reads them. */
    public List<ShownValue> shown() {
        return new Render(system, budgets).shown(sheet.outputs(), result, "");
    }

    /** The draws in sentences, the first how they were drawn, then one for each result; empty without draws. */
    public List<String> drawn() {
        return simulation
                .map(draws -> new RenderDraws(sheet, draws, system).lines())
                .orElse(List.of());
    }

    /** What there is to look at; empty for a sheet without pictures. */
    public List<Diagram> diagrams() {
        return sheet.diagrams(given, result);
    }

    /** The value of a line of working: one digit more than a result, so that it can be followed. */
    public String finely(Line line) {
        UnitSystem.Display display = system.display(line.kind());
        return Quantities.print(line.value(), display.unit(), display.decimals() + 1);
    }

    /** The same for a person: results, uncertainty by input, working, cautions. */
    public String text() {
        StringBuilder out = new StringBuilder();
        out.append(sheet.title()).append('\n');
        new Render(system, budgets).text(sheet.outputs(), result, "  ", "", out);
        simulation.ifPresent(draws -> new RenderDraws(sheet, draws, system).text(out));
        if (!working.isEmpty()) {
            out.append("\nWorking\n");
            for (Line line : working) {
                out.append("  ").append(line.symbol());
                if (!line.expression().isEmpty()) {
                    out.append(" = ").append(line.expression());
                }
                out.append(" = ").append(finely(line));
                out.append(line.source().isEmpty() ? "" : "   [" + line.source() + "]")
                        .append('\n');
            }
        }
        if (!cautions.isEmpty()) {
            out.append("\nMind\n");
            cautions.forEach(caution -> out.append("  - ").append(caution).append('\n'));
        }
        return out.toString();
    }
}
