package shimwright.mechanics.spring;

import org.jspecify.annotations.Nullable;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.worksheet.Input;

/** A helical compression spring by its wire and coils. */
public record SpringCase(
        @Input(kind = Kind.LENGTH, meaning = "wire diameter", min = 1e-4, max = 0.02, example = "2.5 mm")
        double wire,

        @Input(kind = Kind.LENGTH, meaning = "outer diameter", min = 5e-4, max = 0.3, example = "31 mm")
        double outerDiameter,

        @Input(meaning = "all coils, counted", min = 1.5, max = 200, example = "14")
        double totalCoils,

        @Input(meaning = "how the ends are made", orElse = "squared ground")
        Ends ends,

        @Input(meaning = "wire", orElse = "music wire") Material material,

        @Input(kind = Kind.LENGTH, meaning = "free length", min = 1e-3, max = 1, example = "98 mm")
        double freeLength,

        @Input(kind = Kind.LENGTH, meaning = "length at work", min = 5e-4, max = 1, example = "60 mm") @Nullable
        Double workingLength,

        @Input(kind = Kind.PRESSURE, meaning = "shear modulus, where known", unit = "GPa", min = 1e9, max = 2e11)
        @Nullable
        Double shearModulus,

        @Input(kind = Kind.PRESSURE, meaning = "tensile strength of the wire, where known", min = 1e8, max = 4e9)
        @Nullable
        Double tensile,

        @Input(meaning = "end condition for buckling: 0.5 between flat faces", orElse = "0.5", min = 0.25, max = 2)
        double endCondition,

        @Input(kind = Kind.ANGLE, meaning = "ramp of the detent notch against the rail", min = 0.05, max = 1.5)
        @Nullable
        Double ramp,

        @Input(meaning = "friction of ball and notch", orElse = "0.12", min = 0, max = 0.6)
        double friction) {

    /** How the ends are made. */
    public enum Ends {
        PLAIN(0, 0, 1),
        PLAIN_GROUND(1, 1, 0),
        SQUARED(2, 2, 1),
        SQUARED_GROUND(2, 2, 0);

        final int dead;
        final int endCoils;
        final int solidExtra;

        Ends(int dead, int endCoils, int solidExtra) {
            this.dead = dead;
            this.endCoils = endCoils;
            this.solidExtra = solidExtra;
        }
    }

    /** Wire. */
    public enum Material {
        MUSIC_WIRE,
        OIL_TEMPERED,
        HARD_DRAWN,
        CHROME_VANADIUM,
        CHROME_SILICON,
        STAINLESS_302
    }
}
