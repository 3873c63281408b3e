package shimwright.mechanics.oil;

import java.util.List;
import shimwright.mechanics.worksheet.Worksheet;

/** The worksheets of this topic. */
public final class OilSheets {
    public static final List<Worksheet<?, ?>> ALL = List.of(OilFills.SHEET, OilViscosity.SHEET);

    private OilSheets() {}
}
