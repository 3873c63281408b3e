package shimwright.mechanics.tooth;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.outcome.Refusal;

/** Checks inputs of which one stands for the others. */
final class ExactlyOne {
    private ExactlyOne() {}

    /** Adds a refusal unless exactly one of the values is there. */
    static void one(List<Refusal> faults, List<String> names, @Nullable Double... values) {
        List<String> given = new ArrayList<>();
        for (int i = 0; i < values.length; i++) {
            if (values[i] != null) {
                given.add(names.get(i));
            }
        }
        if (given.size() == 1) {
            return;
        }
        String known = String.join(", ", names);
        faults.add(Refusal.of(
                names.get(0),
                given.isEmpty() ? "none of " + known + " given" : String.join(" and ", given) + " given together",
                "Give exactly one of: " + known));
    }
}
