package shimwright.mechanics.axial;

import java.util.List;
import shimwright.mechanics.axial.bevel.BacklashShift;
import shimwright.mechanics.axial.bevel.PinionDepth;
import shimwright.mechanics.axial.reading.EndPlay;
import shimwright.mechanics.axial.reading.Readings;
import shimwright.mechanics.axial.shim.Drawer;
import shimwright.mechanics.axial.shim.ShimPack;
import shimwright.mechanics.axial.stack.DepthStack;
import shimwright.mechanics.axial.stack.Growth;
import shimwright.mechanics.worksheet.Worksheet;

/** The worksheets of this topic. */
public final class AxialSheets {
    /** All of them. */
    public static final List<Worksheet<?, ?>> ALL = List.of(
            Readings.SHEET,
            EndPlay.SHEET,
            DepthStack.SHEET,
            Growth.SHEET,
            ShimPack.SHEET,
            Drawer.SHEET,
            BacklashShift.SHEET,
            PinionDepth.SHEET);

    private AxialSheets() {}
}
