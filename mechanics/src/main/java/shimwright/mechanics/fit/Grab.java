package shimwright.mechanics.fit;

import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.worksheet.Output;

/**
 * Result of {@code time-to-grab}; lengths in metres, times in seconds, temperatures in kelvin.
 *
 * @param length volume over area of the carried part
 * @param film film coefficient taken
 * @param biot Biot number
 * @param lumped whether one temperature for the whole part is allowed, Biot below 0.1
 * @param timeConstant in the air
 * @param timeInAir until the growth has fallen to what is needed
 * @param temperatureThen its temperature at that moment
 * @param temperatureOnArrival after the carry
 * @param growthOnArrival growth, or shrink, after the carry
 * @param inHand that growth less what is needed; negative: too late
 * @param contactTimeConstant once it touches the other part, order of magnitude
 * @param shoulderGap opens at the shoulder if the far end grips first at {@code start} and the part then cools
 */
public record Grab(
        @Output(kind = Kind.LENGTH, meaning = "volume over area")
        double length,

        @Output(kind = Kind.HEAT_TRANSFER, decimals = 1, meaning = "film coefficient")
        double film,

        @Output(meaning = "Biot number") double biot,
        @Output(meaning = "one temperature throughout") boolean lumped,

        @Output(kind = Kind.TIME, decimals = 1, meaning = "time constant in air")
        double timeConstant,

        @Output(kind = Kind.TIME, meaning = "time in air until it grabs")
        double timeInAir,

        @Output(kind = Kind.TEMPERATURE, meaning = "its temperature then")
        double temperatureThen,

        @Output(kind = Kind.TEMPERATURE, meaning = "its temperature on arrival")
        double temperatureOnArrival,

        @Output(kind = Kind.LENGTH, decimals = 4, meaning = "growth on arrival")
        double growthOnArrival,

        @Output(kind = Kind.LENGTH, decimals = 4, meaning = "in hand on arrival")
        double inHand,

        @Output(kind = Kind.TIME, decimals = 1, meaning = "time constant once it touches")
        double contactTimeConstant,

        @Output(kind = Kind.LENGTH, decimals = 4, meaning = "gap at the shoulder if the far end grips first")
        double shoulderGap) {}
