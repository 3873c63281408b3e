package shimwright.mechanics.fit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.worksheet.Input;
import shimwright.mechanics.worksheet.Output;
import shimwright.mechanics.worksheet.Worksheet;

/** The worksheet {@code housing-grip}. */
public final class HousingGrip {
    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
            "housing-grip",
            "Grip of a race in its housing",
            "What is left of a race's grip at working heat, in a light-alloy seat or in a sleeve.",
            List.of(
                    "linear expansion; α of die-cast alloys: NADCA A-3-2-12",
                    "Lamé's thick-walled cylinder: Boresi and Schmidt ch. 11",
                    "axial shift of a cup: geometry of the cone"),
            Case.class,
            Result.class,
            HousingGrip::work);

    private HousingGrip() {}

    /**
     * Case of {@code housing-grip}; lengths in metres, temperatures in kelvin, sizes at 20 °C.
     *
     * @param seat readings of the seat bore, with a sleeve its finished bore after fitting; or the two limits
     * @param cup readings of the race outside; or the two limits
     * @param cupBore inside diameter of the race, at the raceway
     * @param boss outside diameter of the boss around the seat
     * @param housing what the housing is made of
     * @param race what the race is made of
     * @param sleeve between housing and race
     * @param housingTemperature at work, sleeve included
     * @param raceTemperature at work
     * @param cupHalfAngle half the cup angle of a taper roller bearing, rad; null for other bearings
     */
    public record Case(
            @Input(
                    kind = Kind.LENGTH,
                    meaning = "seat bore, all readings or the two limits",
                    min = 1e-3,
                    max = 2,
                    most = 100,
                    example = "71.960, 71.970 mm")
            List<Double> seat,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "race outside diameter, all readings or the two limits",
                    min = 1e-3,
                    max = 2,
                    most = 100,
                    example = "71.992, 71.996 mm")
            List<Double> cup,

            @Input(kind = Kind.LENGTH, meaning = "inside diameter of the race", min = 1e-3, max = 2, example = "62 mm")
            double cupBore,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "outside diameter of the boss around the seat",
                    min = 1e-3,
                    max = 10,
                    example = "92 mm")
            double boss,

            @Input(meaning = "housing, what it is made of", example = "aluminum a380")
            PartMaterial housing,

            @Input(meaning = "race, what it is made of", orElse = "bearing steel", example = "bearing steel")
            PartMaterial race,

            @Input(meaning = "sleeve between housing and race")
            Sleeve sleeve,

            @Input(
                    kind = Kind.TEMPERATURE,
                    meaning = "housing temperature at work",
                    min = 223.15,
                    max = 473.15,
                    example = "80 °C")
            double housingTemperature,

            @Input(
                    kind = Kind.TEMPERATURE,
                    meaning = "race temperature at work",
                    min = 223.15,
                    max = 473.15,
                    example = "85 °C")
            double raceTemperature,

            @Input(kind = Kind.ANGLE, meaning = "half the cup angle of a taper roller bearing", min = 0.01, max = 1.2)
            @Nullable
            Double cupHalfAngle) {}

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
    public record Result(
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

            @Output(meaning = "sleeve in the housing") @Nullable
            InHousing sleeve) {

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

    /** Diametral growth turned into axial travel on a cone of this half angle; the growth is halved first. */
    static double axial(double diametral, double halfAngle) {
        return diametral / 2 / Math.tan(halfAngle);
    }

    /**
     * Even temperatures in each part, full contact, elastic rings.
     *
     * <p>Refused: a race, boss or sleeve without a wall; a race loose at 20 °C even at its tightest; more than 1 % of the
     * diameter; a sleeve half described or loose in its housing.
     */
    static Outcome<Worked<Result>> work(Case c) {
        List<Refusal> refusals = new ArrayList<>();
        double seat = Collections.max(c.seat());
        if (c.cupBore() >= Collections.min(c.cup())) {
            refusals.add(wall("cupBore", c.cupBore(), "race", Collections.min(c.cup())));
        }
        Double outside = c.sleeve().outside();
        Double bore = c.sleeve().housingBore();
        if ((outside == null) != (bore == null)) {
            refusals.add(Refusal.of(
                    outside == null ? "sleeve.outside" : "sleeve.housingBore",
                    "not given, though the other diameter of the sleeve is",
                    "Give both, or neither when there is no sleeve"));
        } else if (outside != null && bore != null) {
            sleeve(c, outside, bore, seat, refusals);
        } else if (c.boss() <= seat) {
            refusals.add(wall("boss", seat, "boss", c.boss()));
        }
        double tightest = Collections.max(c.cup()) - Collections.min(c.seat());
        if (tightest <= 0) {
            refusals.add(Refusal.of(
                    "cup",
                    "the race is loose in its seat at 20 °C already",
                    "Sleeve the seat or replace the housing; heat makes it no better"));
        } else if (tightest > 0.01 * seat) {
            refusals.add(Refusal.of(
                    "cup",
                    "an interference of " + Interference.mm(tightest) + " is more than 1 % of the diameter",
                    "Look for a misread digit"));
        }
        return refusals.isEmpty() ? Outcome.ok(new HousingGripSolution(c).worked()) : Outcome.refused(refusals);
    }

    private static void sleeve(Case c, double outside, double bore, double seat, List<Refusal> refusals) {
        if (outside <= bore) {
            refusals.add(Refusal.of(
                    "sleeve.outside",
                    "the sleeve is loose in the housing: " + Interference.mm(outside) + " in " + Interference.mm(bore),
                    "A sleeve must be an interference fit; measure both at 20 °C"));
        } else if (outside - bore > 0.01 * bore) {
            refusals.add(Refusal.of(
                    "sleeve.outside",
                    Interference.mm(outside - bore) + " interference is more than 1 % of the diameter",
                    "Look for a misread digit"));
        }
        if (seat >= bore) {
            refusals.add(wall("seat", seat, "sleeve", bore));
        }
        if (c.boss() <= bore) {
            refusals.add(wall("boss", bore, "boss", c.boss()));
        }
    }

    private static Refusal wall(String place, double inner, String part, double outer) {
        return Refusal.of(
                place,
                "a bore of " + Interference.mm(inner) + " leaves no wall in a " + part + " of "
                        + Interference.mm(outer),
                "Measure both again");
    }
}
