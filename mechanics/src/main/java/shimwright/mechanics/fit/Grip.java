package shimwright.mechanics.fit;

import org.jspecify.annotations.Nullable;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.worksheet.Output;

/**
 * Result of {@code housing-grip}; lengths in metres, diametral, interference positive; pressures in Pa; temperatures in K.
 *
 * @param coldTightest interference of race and seat at 20 °C, largest race in the smallest seat
 * @param coldLoosest smallest race in the largest seat
 * @param heatLoss lost as seat and race grow differently
 * @param relaxation lost as a squeezed sleeve opens because the housing lets go of it; 0 without a sleeve
 * @param hotTightest left at work
 * @param hotLoosest left at work
 * @param pressureCold seat pressure of the tightest at 20 °C
 * @param pressureHot seat pressure of the tightest at work
 * @param bossHoop greatest hoop stress in the boss, the greater of 20 °C and work
 * @param raceHoop hoop stress at the bore of the race, the greater compression of the two; negative
 * @param raceRelaxes by how much the bore of the race opens from 20 °C to work as the squeeze eases, heat growth apart
 * @param axialShift what that does along the axis of a taper roller bearing; null for others
 * @param lettingGo temperature at which the loosest grip is gone, all warming alike
 * @param lettingGoTightest the same of the tightest
 * @param verdict what is left at work
 * @param sleeve the sleeve in the housing; null without one
 */
public record Grip(
        @Output(kind = Kind.LENGTH, decimals = 4, meaning = "interference at 20 °C, tightest")
        double coldTightest,

        @Output(kind = Kind.LENGTH, decimals = 4, meaning = "interference at 20 °C, loosest")
        double coldLoosest,

        @Output(kind = Kind.LENGTH, decimals = 4, meaning = "lost to heat")
        double heatLoss,

        @Output(kind = Kind.LENGTH, decimals = 4, meaning = "lost as the sleeve opens")
        double relaxation,

        @Output(kind = Kind.LENGTH, decimals = 4, meaning = "interference at work, tightest")
        double hotTightest,

        @Output(kind = Kind.LENGTH, decimals = 4, meaning = "interference at work, loosest")
        double hotLoosest,

        @Output(kind = Kind.PRESSURE, meaning = "seat pressure at 20 °C, tightest")
        double pressureCold,

        @Output(kind = Kind.PRESSURE, meaning = "seat pressure at work, tightest")
        double pressureHot,

        @Output(kind = Kind.PRESSURE, decimals = 1, meaning = "greatest hoop stress in the boss")
        double bossHoop,

        @Output(kind = Kind.PRESSURE, decimals = 1, meaning = "hoop stress at the bore of the race")
        double raceHoop,

        @Output(kind = Kind.LENGTH, decimals = 4, meaning = "race opens at work by")
        double raceRelaxes,

        @Output(kind = Kind.LENGTH, decimals = 4, meaning = "which along the axis is") @Nullable
        Double axialShift,

        @Output(kind = Kind.TEMPERATURE, meaning = "loosest grip is gone at", infinite = "never")
        double lettingGo,

        @Output(kind = Kind.TEMPERATURE, meaning = "tightest grip is gone at", infinite = "never")
        double lettingGoTightest,

        @Output(meaning = "at work the race") Verdict verdict,
        @Output(meaning = "sleeve in the housing") @Nullable InHousing sleeve) {

    /** What is left at work. */
    public enum Verdict {
        HOLDS,
        HOLDS_ONLY_WHEN_TIGHT,
        IS_LOOSE
    }

    /**
     * The sleeve in the housing, without the race in it.
     *
     * @param cold interference at 20 °C
     * @param hot left at work
     * @param pressure joint pressure at 20 °C
     * @param fallsOut temperature at which it is loose, all warming alike
     */
    public record InHousing(
            @Output(kind = Kind.LENGTH, decimals = 4, meaning = "interference at 20 °C")
            double cold,

            @Output(kind = Kind.LENGTH, decimals = 4, meaning = "interference at work")
            double hot,

            @Output(kind = Kind.PRESSURE, meaning = "joint pressure at 20 °C")
            double pressure,

            @Output(kind = Kind.TEMPERATURE, meaning = "falls out at", infinite = "never")
            double fallsOut) {}
}
