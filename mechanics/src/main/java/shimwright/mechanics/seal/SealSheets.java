package shimwright.mechanics.seal;

import java.util.List;
import shimwright.mechanics.worksheet.Worksheet;

/** The worksheets of this topic. */
public final class SealSheets {
    public static final List<Worksheet<?, ?>> ALL = List.of(SealantBeads.SHEET, LeakProofs.SHEET, SealSeats.SHEET);

    private SealSheets() {}
}
