package shimwright.mechanics.fit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import shimwright.mechanics.published.TypedRow;

/** The rows on fits as they are asked of worksheets. */
public final class FitRows {
    private FitRows() {}

    /** Every bound row. */
    public static List<TypedRow> typed() {
        return CheckRow.all().stream()
                .filter(Bindings::has)
                .map(row -> new TypedRow(
                        row.id(),
                        printed(row),
                        String.valueOf(row.expected()),
                        row.inputs(),
                        given -> OptionalDouble.of(Bindings.value(row.with(new LinkedHashMap<>(given))))))
                .toList();
    }

    private static String printed(CheckRow row) {
        return row.inputs().entrySet().stream()
                        .map(input -> input.getKey() + "=" + input.getValue())
                        .collect(Collectors.joining("; "))
                + " " + row.quantity();
    }
}
