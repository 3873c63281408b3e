package shimwright.mechanics.fit;

import java.util.List;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.worksheet.Output;

/**
 * Result of {@code heat-to-fit}; lengths in metres, diametral; temperatures in kelvin.
 *
 * @param outerTemperature to heat the outer part to
 * @param outerRise above the shop
 * @param innerTemperature of the inner part
 * @param cold how the inner part gets there
 * @param ceiling lowest ceiling of all that gets hot
 * @param room left under the ceiling, K
 * @param clearance counted on while fitting
 * @param boreGrowth growth of the outer bore at {@code outerTemperature}
 * @param innerShrink shrink of the inner part at {@code innerTemperature}; negative when it is warmer than the shop
 * @param growthAtCeiling growth of the outer bore at the ceiling
 * @param choices every cold that was looked at
 */
public record HeatPlan(
        @Output(kind = Kind.TEMPERATURE, meaning = "heat the outer part to")
        double outerTemperature,

        @Output(kind = Kind.TEMPERATURE_DIFFERENCE, meaning = "above the shop by")
        double outerRise,

        @Output(kind = Kind.TEMPERATURE, meaning = "inner part at")
        double innerTemperature,

        @Output(meaning = "inner part chilled by") Cold cold,

        @Output(kind = Kind.TEMPERATURE, meaning = "ceiling")
        double ceiling,

        @Output(kind = Kind.TEMPERATURE_DIFFERENCE, meaning = "left under the ceiling")
        double room,

        @Output(kind = Kind.LENGTH, decimals = 4, meaning = "clearance counted on")
        double clearance,

        @Output(kind = Kind.LENGTH, decimals = 4, meaning = "growth of the bore")
        double boreGrowth,

        @Output(kind = Kind.LENGTH, decimals = 4, meaning = "shrink of the inner part")
        double innerShrink,

        @Output(kind = Kind.LENGTH, decimals = 4, meaning = "growth of the bore at the ceiling")
        double growthAtCeiling,

        @Output(meaning = "choices") List<Choice> choices) {
    public HeatPlan {
        choices = List.copyOf(choices);
    }

    /**
     * One way to do it.
     *
     * @param cold how the inner part is chilled
     * @param innerTemperature what it reaches, K
     * @param outerNeeded what the outer part then needs, K
     * @param lawful whether that stays under the ceiling, and the cold suits the inner part
     */
    public record Choice(
            @Output(meaning = "cold") Cold cold,

            @Output(kind = Kind.TEMPERATURE, meaning = "inner part at")
            double innerTemperature,

            @Output(kind = Kind.TEMPERATURE, meaning = "outer part needs")
            double outerNeeded,

            @Output(meaning = "lawful") boolean lawful) {}
}
