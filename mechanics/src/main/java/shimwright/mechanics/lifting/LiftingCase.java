package shimwright.mechanics.lifting;

import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.worksheet.Input;

/** One lift by one person. */
public record LiftingCase(
        @Input(kind = Kind.MASS, meaning = "what is lifted", min = 0.1, max = 1000, example = "45 kg")
        double mass,

        @Input(
                kind = Kind.LENGTH,
                meaning = "hands before the middle of the ankles",
                unit = "cm",
                min = 0.1,
                max = 0.63,
                example = "30 cm")
        double reach,

        @Input(
                kind = Kind.LENGTH,
                meaning = "height of the hands at the start",
                unit = "cm",
                min = 0,
                max = 1.75,
                example = "75 cm")
        double height,

        @Input(kind = Kind.LENGTH, meaning = "travel up or down", unit = "cm", min = 0, max = 1.75, example = "25 cm")
        double travel,

        @Input(kind = Kind.ANGLE, meaning = "twist of the body", orElse = "0°", min = 0, max = 2.3563)
        double twist,

        @Input(meaning = "frequency multiplier; 1 for a lift now and then", orElse = "1", min = 0, max = 1)
        double frequency,

        @Input(meaning = "grip: 1 with handles, 0.95 fair, 0.9 poor", orElse = "0.9", min = 0.9, max = 1)
        double grip,

        @Input(meaning = "which of the two printed sets of constants", orElse = "metric")
        Constants constants) {

    /** The guide prints both; they differ by rounding. */
    public enum Constants {
        METRIC,
        US
    }
}
