package shimwright.mechanics.thread;

import java.util.List;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.worksheet.Input;

/** A torque wrench on a test device. */
public record TorqueToolCase(
        @Input(kind = Kind.TORQUE, meaning = "largest torque of the wrench", min = 0.01, max = 1e5, example = "100 N·m")
        double capacity,

        @Input(
                meaning = "what was set and what the test device read",
                most = 100,
                example = "20 N·m: 20.3 N·m; 60 N·m: 60.9 N·m; 100 N·m: 98.8 N·m")
        List<Check> checks,

        @Input(meaning = "permissible deviation, where another than the standard's is agreed", min = 0.001, max = 0.5)
        @Nullable
        Double limit) {

    /** One comparison. */
    public record Check(
            @Input(kind = Kind.TORQUE, meaning = "set on the wrench", min = 1e-3, max = 1e5, example = "60 N·m")
            double set,

            @Input(kind = Kind.TORQUE, meaning = "read on the device", min = 1e-3, max = 1e5, example = "60.9 N·m")
            double reference) {}
}
