package shimwright.mechanics.history;

import java.util.List;
import shimwright.mechanics.worksheet.Worksheet;

/** The worksheets of this topic. */
public final class HistorySheets {
    /** All of them. */
    public static final List<Worksheet<?, ?>> ALL = List.of(Weibull.SHEET, PastJobs.SHEET, DrawerStock.SHEET);

    private HistorySheets() {}
}
