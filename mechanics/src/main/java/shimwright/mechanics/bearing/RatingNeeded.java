package shimwright.mechanics.bearing;

import java.util.ArrayList;
import java.util.List;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.mechanics.worksheet.Input;
import shimwright.mechanics.worksheet.Output;
import shimwright.mechanics.worksheet.Worksheet;

/** The worksheet {@code rating-needed}: catalog rating for a load, life and reliability with a three-part Weibull law. */
public final class RatingNeeded {
    private static final String SOURCE = "three-parameter Weibull distribution of bearing lives";
    private static final double MILLION = 1e6;

    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
            "rating-needed",
            "Bearing rating needed",
            "The load rating a bearing needs for a load, a life and a reliability.",
            List.of(SOURCE),
            Case.class,
            Result.class,
            RatingNeeded::work);

    private RatingNeeded() {}

    /** Force in newtons, time in seconds, rotation in rad/s. */
    public record Case(
            @Input(kind = Kind.FORCE, meaning = "equivalent load", min = 1, max = 1e7, example = "1837 N")
            double load,

            @Input(meaning = "application factor", orElse = "1", min = 0.5, max = 5)
            double applicationFactor,

            @Input(kind = Kind.TIME, meaning = "life wanted", min = 1, max = 1e10, unit = "h", example = "30000 h")
            double life,

            @Input(kind = Kind.ROTATION, meaning = "speed", min = 0.01, max = 5000, example = "300 rpm")
            double speed,

            @Input(meaning = "reliability wanted", min = 0.5, max = 0.9999, unit = "%", example = "99 %")
            double reliability,

            @Input(meaning = "least life, as a multiple of L10", orElse = "0.02", min = 0, max = 0.9)
            double leastLife,

            @Input(
                    meaning = "characteristic life less the least life, as a multiple of L10",
                    orElse = "4.439",
                    min = 1,
                    max = 50)
            double characteristic,

            @Input(meaning = "Weibull slope", orElse = "1.483", min = 0.5, max = 5)
            double slope,

            @Input(meaning = "exponent of the life: 3 for ball, 3.333 for roller", orElse = "3", min = 2, max = 4)
            double exponent) {}

    /** Forces in newtons. */
    public record Result(
            @Output(kind = Kind.FORCE, meaning = "load rating needed", decimals = 1)
            double rating,

            @Output(kind = Kind.FORCE, meaning = "the same by the textbook short cut 1 − R for ln(1/R)", decimals = 1)
            double shortCut,

            @Output(meaning = "life wanted, as a multiple of the rating life")
            double multiple) {}

    /**
     * Load rating for a life at a reliability.
     *
     * @param c the case
     * @return refused where the turns wanted are fewer than the law covers. Source: Weibull law of bearing lives with
     *     rating life 10⁶ revolutions; parameters from the bearing maker
     */
    public static Outcome<Worked<Result>> work(Case c) {
        List<Refusal> faults = new ArrayList<>();
        double multiple = c.life() * c.speed() / (2 * Math.PI) / MILLION;
        if (!(multiple > 1e-6)) {
            faults.add(Refusal.of("life", "is only a few turns", "Look at life and speed"));
            return Outcome.refused(faults);
        }
        Working w = new Working();
        w.line("turns wanted, in rating lives", "life × speed / 10⁶", multiple, Kind.NUMBER);
        double rating = w.line(
                "rating needed",
                "factor × load × (turns / (x0 + (θ − x0) × ln(1/R)^(1/b)))^(1/a)",
                rating(c, multiple, Math.log(1 / c.reliability())),
                Kind.FORCE,
                SOURCE);
        double shortCut = w.line(
                "by the short cut",
                "the same with 1 − R for ln(1/R)",
                rating(c, multiple, 1 - c.reliability()),
                Kind.FORCE);
        w.caution("The textbook short cut is shown to compare with printed answers; use the first figure.");
        return Outcome.ok(w.worked(new Result(rating, shortCut, multiple)));
    }

    private static double rating(Case c, double multiple, double fallen) {
        double life = c.leastLife() + c.characteristic() * Math.pow(fallen, 1 / c.slope());
        return c.applicationFactor() * c.load() * Math.pow(multiple / life, 1 / c.exponent());
    }
}
