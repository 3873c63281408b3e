package shimwright.mechanics.thread;

import java.util.List;
import shimwright.mechanics.worksheet.Worksheet;

/** The worksheets of this topic. */
public final class ThreadSheets {
    public static final List<Worksheet<?, ?>> ALL = List.of(
            Threads.SHEET,
            Tightening.SHEET,
            NutFactors.SHEET,
            TorqueTools.SHEET,
            WrenchExtensions.SHEET,
            ThreadStrips.SHEET,
            BoltOrders.SHEET,
            ThreadWires.SHEET,
            TapDrills.SHEET);

    private ThreadSheets() {}
}
