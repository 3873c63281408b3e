package shimwright.mechanics.fit;

import java.util.List;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.worksheet.Input;

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
public record GripCase(
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
        Stock housing,

        @Input(meaning = "race, what it is made of", orElse = "bearing steel", example = "bearing steel")
        Stock race,

        @Input(meaning = "sleeve between housing and race") Sleeve sleeve,

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
