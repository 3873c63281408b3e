package shimwright.mechanics.thread;

import java.util.List;
import shimwright.mechanics.conformity.Verdict;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.worksheet.Output;

/** The deviation of the wrench at every setting. */
public record TorqueToolResult(
        @Output(meaning = "permissible deviation", unit = "%", decimals = 1)
        double permissible,

        @Output(meaning = "worst deviation", unit = "%", decimals = 2)
        double worst,

        @Output(meaning = "wrench") Verdict verdict,
        @Output(meaning = "settings") List<Row> rows) {

    /** One setting. */
    public record Row(
            @Output(kind = Kind.TORQUE, meaning = "set") double set,

            @Output(meaning = "deviation", unit = "%", decimals = 2)
            double deviation,

            @Output(kind = Kind.TORQUE, meaning = "lowest reading that passes")
            double lowest,

            @Output(kind = Kind.TORQUE, meaning = "highest reading that passes")
            double highest) {}
}
