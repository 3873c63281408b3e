package shimwright.mechanics.fit;

import java.util.List;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.worksheet.Input;

/**
 * Case of {@code bearing-clearance}; lengths in metres, diametral.
 *
 * @param bore bearing bore
 * @param outside bearing outside diameter
 * @param innerRaceway diameter of the inner raceway; null takes (4 d + D)/5
 * @param outerRaceway diameter of the outer raceway; null takes (d + 4 D)/5
 * @param clearance radial internal clearance before fitting: readings or the two limits
 * @param innerFit inner ring on shaft, interference (+) or clearance (−): readings or the two limits
 * @param outerFit outer ring in housing, likewise
 * @param finish whether the inner fit is taken as measured or corrected for its finish
 * @param shaftBore bore of the shaft, 0 when solid
 * @param shaft what the shaft is made of
 * @param housingOutside outside diameter of the housing around the seat
 * @param housing what the housing is made of
 * @param ring what the rings are made of
 * @param innerWarmer inner ring warmer than the outer by, K
 * @param radialLoad on the turning inner ring, N
 * @param width width of the inner ring; needed with a load
 */
public record ClearanceCase(
        @Input(kind = Kind.LENGTH, meaning = "bearing bore", min = 1e-3, max = 1, example = "40 mm")
        double bore,

        @Input(kind = Kind.LENGTH, meaning = "bearing outside diameter", min = 2e-3, max = 2, example = "80 mm")
        double outside,

        @Input(kind = Kind.LENGTH, meaning = "inner raceway diameter, else estimated", min = 1e-3, max = 2) @Nullable
        Double innerRaceway,

        @Input(kind = Kind.LENGTH, meaning = "outer raceway diameter, else estimated", min = 1e-3, max = 2) @Nullable
        Double outerRaceway,

        @Input(
                kind = Kind.LENGTH,
                meaning = "radial clearance before fitting, readings or the two limits",
                min = -5e-4,
                max = 2e-3,
                most = 100,
                example = "0.015, 0.033 mm")
        List<Double> clearance,

        @Input(
                kind = Kind.LENGTH,
                meaning = "inner ring on shaft, interference + or clearance −",
                min = -1e-3,
                max = 1e-3,
                most = 100,
                example = "0.002, 0.025 mm")
        List<Double> innerFit,

        @Input(
                kind = Kind.LENGTH,
                meaning = "outer ring in housing, interference + or clearance −",
                min = -1e-3,
                max = 1e-3,
                most = 100,
                example = "-0.012, 0.030 mm")
        List<Double> outerFit,

        @Input(meaning = "inner fit as measured, or corrected for ground or turned seats", orElse = "as measured")
        Finish finish,

        @Input(kind = Kind.LENGTH, meaning = "bore of the shaft", min = 0, max = 1, orElse = "0 mm")
        double shaftBore,

        @Input(meaning = "shaft, what it is made of") Stock shaft,

        @Input(
                kind = Kind.LENGTH,
                meaning = "outside diameter of the housing around the seat",
                min = 2e-3,
                max = 10,
                example = "110 mm")
        double housingOutside,

        @Input(meaning = "housing, what it is made of", example = "aluminum a380")
        Stock housing,

        @Input(meaning = "rings, what they are made of", orElse = "bearing steel", example = "bearing steel")
        Stock ring,

        @Input(
                kind = Kind.TEMPERATURE_DIFFERENCE,
                meaning = "inner ring warmer than the outer by",
                min = -100,
                max = 150,
                example = "10 K")
        double innerWarmer,

        @Input(kind = Kind.FORCE, meaning = "radial load on the turning inner ring", min = 0, max = 1e6, orElse = "0 N")
        double radialLoad,

        @Input(kind = Kind.LENGTH, meaning = "width of the inner ring, needed with a load", min = 1e-3, max = 1)
        @Nullable
        Double width) {

    /** How the seat of the inner ring was finished; a rough seat is pressed flat and grips less. */
    public enum Finish {
        AS_MEASURED(0),
        GROUND(2e-3),
        TURNED(3e-3);

        private final double added;

        Finish(double added) {
            this.added = added;
        }

        /** Share of the measured interference that counts, d/(d + 2 mm) or d/(d + 3 mm). */
        double share(double bore) {
            return bore / (bore + added);
        }
    }
}
