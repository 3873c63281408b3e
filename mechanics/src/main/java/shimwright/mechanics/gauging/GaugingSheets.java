package shimwright.mechanics.gauging;

import java.util.List;
import shimwright.mechanics.worksheet.Worksheet;

/** The worksheets of this topic. */
public final class GaugingSheets {
    /** All of them. */
    public static final List<Worksheet<?, ?>> ALL =
            List.of(HousingAlignment.SHEET, OutsideTaper.SHEET, InsideTaper.SHEET, SineBar.SHEET, HardnessScales.SHEET);

    private GaugingSheets() {}
}
