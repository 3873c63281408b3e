package shimwright.mechanics.fit;

import java.util.List;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.worksheet.Output;

/**
 * Result of {@code interference}. "Tightest" pairs the largest shaft with the smallest bore, "loosest" the other way.
 * Lengths in metres, diametral, interference positive; pressures, stresses in Pa, tension positive.
 *
 * @param measuredTightest interference by size at 20 °C
 * @param measuredLoosest the same of the loosest pair; may be negative
 * @param perDiameter tightest interference over joint diameter
 * @param smoothing lost as the roughness is pressed flat
 * @param heatLoss lost between 20 °C and work; negative when gained
 * @param speedLoss lost by turning
 * @param tightest what is left at work of the tightest
 * @param loosest what is left at work of the loosest
 * @param highestPressure joint pressure of the tightest, the greater of as fitted at 20 °C and at work
 * @param lowestPressure joint pressure of the loosest, the smaller of the two
 * @param hub stresses of the hub at the highest pressure
 * @param shaft stresses of the shaft at the highest pressure
 * @param torque held at the lowest pressure with low friction and the slip factor, N·m
 * @param axialForce held likewise, N
 * @param pressForceLow least to expect at full travel: loosest pair at 20 °C, low friction, N
 * @param pressForceHigh most to expect at full travel: tightest pair at 20 °C, high friction, N
 * @param stopForce force at which even high friction says the hub is at its limit, N
 * @param hubGrowth by which the outside of the hub grows
 * @param shaftBoreShrink by which the bore of the shaft closes
 * @param curve force over travel
 */
public record PressFit(
        @Output(kind = Kind.LENGTH, decimals = 4, meaning = "interference by size, tightest")
        double measuredTightest,

        @Output(kind = Kind.LENGTH, decimals = 4, meaning = "interference by size, loosest")
        double measuredLoosest,

        @Output(decimals = 6, meaning = "tightest interference per diameter")
        double perDiameter,

        @Output(kind = Kind.LENGTH, decimals = 4, meaning = "lost to roughness")
        double smoothing,

        @Output(kind = Kind.LENGTH, decimals = 4, meaning = "lost to heat at work")
        double heatLoss,

        @Output(kind = Kind.LENGTH, decimals = 4, meaning = "lost to speed")
        double speedLoss,

        @Output(kind = Kind.LENGTH, decimals = 4, meaning = "interference at work, tightest")
        double tightest,

        @Output(kind = Kind.LENGTH, decimals = 4, meaning = "interference at work, loosest")
        double loosest,

        @Output(kind = Kind.PRESSURE, meaning = "highest joint pressure")
        double highestPressure,

        @Output(kind = Kind.PRESSURE, meaning = "lowest joint pressure")
        double lowestPressure,

        @Output(meaning = "hub at the highest pressure") Hub hub,
        @Output(meaning = "shaft at the highest pressure") Shaft shaft,

        @Output(kind = Kind.TORQUE, meaning = "torque surely held")
        double torque,

        @Output(kind = Kind.FORCE, meaning = "axial force surely held")
        double axialForce,

        @Output(kind = Kind.FORCE, unit = "kN", decimals = 2, meaning = "press force to expect, least")
        double pressForceLow,

        @Output(kind = Kind.FORCE, unit = "kN", decimals = 2, meaning = "press force to expect, most")
        double pressForceHigh,

        @Output(kind = Kind.FORCE, unit = "kN", decimals = 2, meaning = "stop and look at")
        double stopForce,

        @Output(kind = Kind.LENGTH, decimals = 4, meaning = "hub outside grows by")
        double hubGrowth,

        @Output(kind = Kind.LENGTH, decimals = 4, meaning = "shaft bore closes by")
        double shaftBoreShrink,

        @Output(meaning = "press force over travel") List<Point> curve) {
    public PressFit {
        curve = List.copyOf(curve);
    }

    /** How a part stands against its yield strength. */
    public enum Strength {
        HOLDS,
        WITHOUT_MARGIN,
        YIELDS
    }

    /**
     * The hub.
     *
     * @param hoop hoop stress at the joint
     * @param hoopOutside hoop stress at the outside
     * @param equivalent equivalent stress at the joint by the criterion
     * @param elasticPressure joint pressure at which it begins to yield
     * @param strength against yield with the yield factor
     */
    public record Hub(
            @Output(kind = Kind.PRESSURE, decimals = 1, meaning = "hoop stress at the joint")
            double hoop,

            @Output(kind = Kind.PRESSURE, decimals = 1, meaning = "hoop stress at the outside")
            double hoopOutside,

            @Output(kind = Kind.PRESSURE, decimals = 1, meaning = "equivalent stress at the joint")
            double equivalent,

            @Output(kind = Kind.PRESSURE, decimals = 1, meaning = "joint pressure at which it yields")
            double elasticPressure,

            @Output(meaning = "against yield") Strength strength) {}

    /**
     * The shaft.
     *
     * @param hoop hoop stress at the joint
     * @param hoopBore hoop stress at the bore; null when solid
     * @param equivalent greatest equivalent stress by the criterion
     * @param strength against yield with the yield factor
     */
    public record Shaft(
            @Output(kind = Kind.PRESSURE, decimals = 1, meaning = "hoop stress at the joint")
            double hoop,

            @Output(kind = Kind.PRESSURE, decimals = 1, meaning = "hoop stress at the bore") @Nullable
            Double hoopBore,

            @Output(kind = Kind.PRESSURE, decimals = 1, meaning = "equivalent stress")
            double equivalent,

            @Output(meaning = "against yield") Strength strength) {}

    /**
     * One point of the press card.
     *
     * @param travel length in engagement
     * @param low least force to expect, N
     * @param high most force to expect, N
     */
    public record Point(
            @Output(kind = Kind.LENGTH, decimals = 1, meaning = "travel")
            double travel,

            @Output(kind = Kind.FORCE, unit = "kN", decimals = 2, meaning = "least")
            double low,

            @Output(kind = Kind.FORCE, unit = "kN", decimals = 2, meaning = "most")
            double high) {}
}
