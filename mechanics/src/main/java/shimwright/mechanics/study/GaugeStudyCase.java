package shimwright.mechanics.study;

import java.util.List;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.worksheet.Input;

/**
 * Readings of a gauge study.
 *
 * @param rounds one per round of one person over all parts; nested: one per day, named by its run
 * @param form how it is worked out
 * @param tolerance width of the tolerance that the gauge must judge, m
 * @param pooling probability above which the interaction counts as chance
 * @param confidence of the interval of the gauge's standard deviation
 * @param deviations width of a spread, in standard deviations, held against the tolerance
 */
public record GaugeStudyCase(
        @Input(
                meaning =
                        "rounds: person: reading of part 1, part 2 and so on; the next round of the same person follows"
                                + " in its own entry; nested: run: readings of one day on the check part",
                fewest = 2,
                most = 200,
                example = "A: 0.41 0.52 0.47 0.60 0.44 mm; A: 0.42 0.52 0.48 0.59 0.44 mm; "
                        + "B: 0.41 0.53 0.48 0.61 0.45 mm; B: 0.42 0.53 0.47 0.60 0.46 mm")
        List<Round> rounds,

        @Input(meaning = "how it is worked out", orElse = "anova")
        Form form,

        @Input(kind = Kind.LENGTH, meaning = "width of the tolerance to be judged", min = 1e-9, max = 1) @Nullable
        Double tolerance,

        @Input(meaning = "chance above which the interaction is pooled", orElse = "0.25", min = 0, max = 1)
        double pooling,

        @Input(meaning = "confidence of the interval", orElse = "0.9", min = 0.5, max = 0.999)
        double confidence,

        @Input(meaning = "standard deviations that make a spread", orElse = "6", min = 1, max = 10)
        double deviations) {
    public GaugeStudyCase {
        rounds = List.copyOf(rounds);
    }

    /** How a study is worked out. */
    public enum Form {
        /** Analysis of variance; with one person, of parts and repeats alone. */
        ANOVA,
        /** From mean ranges. */
        AVERAGE_AND_RANGE,
        /** One person, one check part: repeats within days, days within runs. */
        NESTED
    }

    /** One person once over all parts, or one day on the check part; m. */
    public record Round(
            @Input(meaning = "person, or run", example = "A")
            String name,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "readings in the order of the parts",
                    min = -10,
                    max = 10,
                    most = 100,
                    example = "0.41 0.52 mm")
            List<Double> readings) {
        public Round {
            readings = List.copyOf(readings);
        }
    }
}
