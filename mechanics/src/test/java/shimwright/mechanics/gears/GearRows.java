package shimwright.mechanics.gears;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.published.PublishedFiles;
import shimwright.mechanics.published.TypedRow;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.mechanics.worksheet.Answer;

/** The rows on gears as they are asked of worksheets. */
public final class GearRows {
    private GearRows() {}

    /** Every bound row. */
    public static List<TypedRow> typed() {
        Map<String, GearChecksTest.Binding> bindings = GearChecksTest.bindings();
        return PublishedFiles.rows("gears").stream()
                .filter(row -> bindings.containsKey(row.get("id")))
                .map(row -> {
                    GearChecksTest.Binding bound = Objects.requireNonNull(bindings.get(row.get("id")));
                    String unit = bound.unit().isEmpty() ? row.get("unit") : bound.unit();
                    return new TypedRow(
                            row.get("id"),
                            row.get("inputs") + " " + row.get("quantity"),
                            row.get("expected"),
                            SheetCalls.inputs(bound.inputs()),
                            given -> {
                                Outcome<Answer> answer =
                                        SheetCalls.sheet(bound.sheet()).answer(given, UnitSystem.METRIC);
                                return answer.isOk()
                                        ? OptionalDouble.of(SheetCalls.in(
                                                SheetCalls.number(answer.orElseThrow(), bound.output()), unit))
                                        : OptionalDouble.empty();
                            });
                })
                .toList();
    }
}
