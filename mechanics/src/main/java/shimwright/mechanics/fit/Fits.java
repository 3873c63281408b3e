package shimwright.mechanics.fit;

import java.util.List;
import shimwright.mechanics.worksheet.Worksheet;

/** The worksheets of fits. */
public final class Fits {
    /** All of them. */
    public static final List<Worksheet<?, ?>> SHEETS = List.of(
            LimitsAndFits.SHEET,
            Interference.SHEET,
            HeatToFit.SHEET,
            TimeToGrab.SHEET,
            HousingGrip.SHEET,
            BearingClearance.SHEET);

    private Fits() {}
}
