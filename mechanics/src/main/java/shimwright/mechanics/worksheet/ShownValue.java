package shimwright.mechanics.worksheet;

import java.util.List;
import shimwright.mechanics.measure.Contribution;

/**
 * One output as a person reads it.
 *
 * @param field what it is
 * @param path its key, with dots into records
 * @param text value with its standard uncertainty, in the units asked for; empty where entries or a budget say it
 * @param budget what its uncertainty comes from, by input; empty without uncertainty
 * @param entries the parts of a record, or of each record of a list
 */
public record ShownValue(
        SheetField field, String path, String text, List<Contribution> budget, List<List<ShownValue>> entries) {
    public ShownValue {
        budget = List.copyOf(budget);
        entries = entries.stream().map(List::copyOf).toList();
    }
}
