package shimwright.mechanics.chart;

import java.util.List;
import shimwright.mechanics.worksheet.Worksheet;

/** The worksheets of this topic. */
public final class ChartSheets {
    /** All of them. */
    public static final List<Worksheet<?, ?>> ALL = List.of(Individuals.SHEET, Ewma.SHEET, Cusum.SHEET);

    private ChartSheets() {}
}
