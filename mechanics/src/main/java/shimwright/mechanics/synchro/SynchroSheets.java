package shimwright.mechanics.synchro;

import java.util.List;
import shimwright.mechanics.worksheet.Worksheet;

/** The worksheets of this topic. */
public final class SynchroSheets {
    /** All of them. */
    public static final List<Worksheet<?, ?>> ALL = List.of(RingReserve.SHEET, SynchroCapacity.SHEET, ConeForce.SHEET);

    private SynchroSheets() {}
}
