package shimwright.mechanics.joints;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.apache.commons.csv.CSVRecord;
import shimwright.mechanics.published.PublishedFiles;
import shimwright.mechanics.published.TypedRow;

/** The rows on joints as they are asked of worksheets. */
public final class JointRows {
    private JointRows() {}

    /** Every row bound to a worksheet and answered by a number. */
    public static List<TypedRow> typed() {
        Map<String, String> printed = new LinkedHashMap<>();
        for (CSVRecord row : PublishedFiles.rows("joints")) {
            printed.put(row.get("id"), row.get("inputs") + " " + row.get("quantity"));
        }
        List<TypedRow> typed = new ArrayList<>();
        for (JointRow row : JointRow.all()) {
            for (Binding binding : Binding.all()) {
                if (binding.ids().contains(row.id()) && !binding.sheet().equals("unit")) {
                    typed.add(new TypedRow(
                            row.id(),
                            printed.getOrDefault(row.id(), ""),
                            row.expected(),
                            binding.given(row),
                            given -> number(binding, row, given)));
                }
            }
        }
        return typed;
    }

    private static OptionalDouble number(Binding binding, JointRow row, Map<String, String> given) {
        try {
            return binding.answer(row, given) instanceof Double number
                    ? OptionalDouble.of(number)
                    : OptionalDouble.empty();
        } catch (IllegalStateException refused) {
            return OptionalDouble.empty();
        }
    }
}
