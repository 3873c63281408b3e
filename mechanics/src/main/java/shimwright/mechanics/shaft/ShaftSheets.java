package shimwright.mechanics.shaft;

import java.util.List;
import shimwright.mechanics.worksheet.Worksheet;

/** The worksheets of this topic. */
public final class ShaftSheets {
    /** All of them. */
    public static final List<Worksheet<?, ?>> ALL = List.of(
            ParallelKey.SHEET,
            CrossPin.SHEET,
            StraightSpline.SHEET,
            Serration.SHEET,
            RingGroove.SHEET,
            ClutchTorque.SHEET,
            ShaftBend.SHEET);

    private ShaftSheets() {}
}
