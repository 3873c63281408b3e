package shimwright.mechanics.tooth;

import java.util.List;
import shimwright.mechanics.worksheet.Worksheet;

/** The worksheets of this topic. */
public final class ToothSheets {
    /** All of them. */
    public static final List<Worksheet<?, ?>> ALL = List.of(
            InvoluteSheet.SHEET,
            ToothThickness.SHEET,
            OverPins.SHEET,
            BetweenPins.SHEET,
            Span.SHEET,
            SplineRework.SHEET,
            SplineTolerance.SHEET,
            SplineStrength.SHEET,
            CylindricalGearPair.SHEET,
            Backlash.SHEET,
            Ratios.SHEET,
            TurnCount.SHEET,
            MeshFrequencies.SHEET,
            ToothStrength.SHEET,
            RoadSpeed.SHEET,
            BevelSlopes.SHEET,
            CrownShift.SHEET);

    private ToothSheets() {}
}
