package shimwright.mechanics.lifting;

import java.util.List;
import shimwright.mechanics.worksheet.Worksheet;

/** The worksheets of this topic. */
public final class LiftingSheets {
    /** All of them. */
    public static final List<Worksheet<?, ?>> ALL = List.of(Lifting.SHEET);

    private LiftingSheets() {}
}
