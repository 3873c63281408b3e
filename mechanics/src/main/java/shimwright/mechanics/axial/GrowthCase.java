package shimwright.mechanics.axial;

import java.util.List;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.worksheet.Input;

/**
 * A play that changes when the unit warms.
 *
 * @param legs lengths shared by case and shaft
 * @param caseRise temperature of the case above that at which the play was measured, K
 * @param shaftRise temperature of the shaft above the same, K
 * @param coldPlay play as measured, m, preload negative; null when only the change is wanted
 */
public record GrowthCase(
        @Input(
                kind = Kind.LENGTH,
                meaning = "lengths shared by case and shaft",
                most = 20,
                example = "between the cups: 200 mm: 21.8: 11.3")
        List<GrowthLeg> legs,

        @Input(
                kind = Kind.TEMPERATURE_DIFFERENCE,
                meaning = "how much warmer the case gets",
                min = -80,
                max = 200,
                example = "60 K")
        double caseRise,

        @Input(
                kind = Kind.TEMPERATURE_DIFFERENCE,
                meaning = "how much warmer the shaft gets",
                min = -80,
                max = 200,
                example = "60 K")
        double shaftRise,

        @Input(kind = Kind.LENGTH, meaning = "play as measured, preload negative", min = -0.01, max = 0.01) @Nullable
        Double coldPlay) {
    public GrowthCase {
        legs = List.copyOf(legs);
    }
}
