package shimwright.mechanics.quantity;

/** Lengths and chances inside a sentence, where no unit system is known: both units, as gauges in a shop are mixed. */
public final class InSentence {
    private InSentence() {}

    /** {@code 1.033 mm (0.0407 in)}. */
    public static String length(double metres) {
        return Quantities.print(metres, Units.MM, 3) + " (" + Quantities.print(metres, Units.IN, 4) + ")";
    }

    /** A small uncertainty: {@code ± 0.0041 mm (0.00016 in)}. */
    public static String uncertainty(double metres) {
        return "± " + Quantities.print(metres, Units.MM, 4) + " (" + Quantities.print(metres, Units.IN, 5) + ")";
    }

    /** A probability in whole per cent, never rounded up to certainty or down to nothing. */
    public static String percent(double probability) {
        if (probability > 0.99) {
            return "over 99 %";
        }
        return probability < 0.01 ? "under 1 %" : (long) Math.floor(100 * probability) + " %";
    }
}
