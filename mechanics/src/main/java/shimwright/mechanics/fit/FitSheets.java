package shimwright.mechanics.fit;

import java.util.List;
import shimwright.mechanics.worksheet.Worksheet;

/** The worksheets of this topic. */
public final class FitSheets {
    /** All of them. */
    public static final List<Worksheet<?, ?>> ALL = List.of(
            LimitsAndFits.SHEET,
            Interference.SHEET,
            HeatToFit.SHEET,
            TimeToGrab.SHEET,
            HousingGrip.SHEET,
            PressedInBush.SHEET,
            NeedleFit.SHEET,
            BearingClearance.SHEET);

    private FitSheets() {}
}
