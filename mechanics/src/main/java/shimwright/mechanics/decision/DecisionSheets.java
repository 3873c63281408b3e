package shimwright.mechanics.decision;

import java.util.List;
import shimwright.mechanics.worksheet.Worksheet;

/** The worksheets of this topic. */
public final class DecisionSheets {
    /** All of them. */
    public static final List<Worksheet<?, ?>> ALL =
            List.of(ConformitySheet.SHEET, DecisionRisk.SHEET, SeriesStatistics.SHEET);

    private DecisionSheets() {}
}
