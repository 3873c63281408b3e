package shimwright.mechanics.bearing;

import java.util.List;
import shimwright.mechanics.worksheet.Worksheet;

/** The worksheets of this topic. */
public final class BearingSheets {
    /** All of them. */
    public static final List<Worksheet<?, ?>> ALL = List.of(
            ShaftForces.SHEET,
            MeshForces.SHEET,
            BearingLife.SHEET,
            TaperPair.SHEET,
            RatingNeeded.SHEET,
            BearingFrequencies.SHEET,
            PreloadDrag.SHEET);

    private BearingSheets() {}
}
