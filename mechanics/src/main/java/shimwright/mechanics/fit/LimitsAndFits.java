package shimwright.mechanics.fit;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.fit.LimitsAndFits.Result.FitKind;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.mechanics.worksheet.Input;
import shimwright.mechanics.worksheet.Output;
import shimwright.mechanics.worksheet.Worksheet;

/** The worksheet {@code limits-and-fits}. */
public final class LimitsAndFits {
    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
                    "limits-and-fits",
                    "Limits and fits",
                    "Limits of a hole and a shaft from their classes, and how tight and how loose the pair can be.",
                    List.of("ISO 286-1:2010 Tables 1 to 5", "ISO 492, class Normal, for bearing rings"),
                    Case.class,
                    Result.class,
                    LimitsAndFits::work)
            .drawn(FitPictures::zones);

    private LimitsAndFits() {}

    /**
     * Case of {@code limits-and-fits}.
     *
     * @param nominal nominal size in metres
     * @param hole class of the hole; empty when none is asked for
     * @param shaft class of the shaft; empty when none is asked for
     */
    public record Case(
            @Input(kind = Kind.LENGTH, meaning = "nominal size", min = 1e-4, max = 0.5, example = "25 mm")
            double nominal,

            @Input(
                    meaning = "class of the hole, such as H7; bearing or taper for the bore of a bearing",
                    orElse = "",
                    example = "H7")
            String hole,

            @Input(
                    meaning = "class of the shaft, such as p6; bearing or taper for the outside of a bearing",
                    orElse = "",
                    example = "p6")
            String shaft) {}

    /**
     * Result of {@code limits-and-fits}.
     *
     * @param hole limits of the hole; null when none was asked for
     * @param shaft limits of the shaft; null when none was asked for
     * @param tightest interference (+) or clearance (−) of the largest shaft in the smallest hole, metres; null without both
     * @param loosest the same of the smallest shaft in the largest hole
     * @param kind what the pair always, sometimes or never is; null without both
     */
    public record Result(
            @Output(meaning = "hole") @Nullable SizeLimits hole,
            @Output(meaning = "shaft") @Nullable SizeLimits shaft,

            @Output(kind = Kind.LENGTH, decimals = 4, meaning = "interference (+) or clearance (−) at the tightest")
            @Nullable
            Double tightest,

            @Output(kind = Kind.LENGTH, decimals = 4, meaning = "interference (+) or clearance (−) at the loosest")
            @Nullable
            Double loosest,

            @Output(meaning = "kind of fit") @Nullable FitKind kind) {

        /** Kinds of fit (ISO 286-1:2010 3.3). */
        public enum FitKind {
            CLEARANCE_FIT,
            TRANSITION_FIT,
            INTERFERENCE_FIT
        }
    }

    /**
     * Limits from classes.
     *
     * <p>Sizes over 0 to 500 mm, IT1 to IT14, shafts c to u, holes C to U, bearing rings of class Normal. Refused:
     * neither class given, a class that is none, one of the other side, a letter, grade or cell outside the tables.
     */
    static Outcome<Worked<Result>> work(Case c) {
        Working w = new Working();
        if (c.hole().isBlank() && c.shaft().isBlank()) {
            return Outcome.refused(new Refusal(
                    "hole", "hole and shaft", "no class given", "Type at least one, such as hole=H7 or shaft=p6"));
        }
        List<Refusal> refusals = new ArrayList<>();
        @Nullable SizeLimits hole = side("hole", c.nominal(), c.hole(), w, refusals);
        @Nullable SizeLimits shaft = side("shaft", c.nominal(), c.shaft(), w, refusals);
        if (!refusals.isEmpty()) {
            return Outcome.refused(refusals);
        }
        if (hole == null || shaft == null) {
            cautions(w, hole, shaft);
            return Outcome.ok(w.worked(new Result(hole, shaft, null, null, null)));
        }
        double tightest = w.line(
                "interference at the tightest",
                "upper deviation of the shaft − lower deviation of the hole",
                shaft.upper() - hole.lower(),
                Kind.LENGTH);
        double loosest = w.line(
                "interference at the loosest",
                "lower deviation of the shaft − upper deviation of the hole",
                shaft.lower() - hole.upper(),
                Kind.LENGTH);
        FitKind kind = kind(tightest, loosest);
        cautions(w, hole, shaft);
        if (kind == FitKind.INTERFERENCE_FIT || kind == FitKind.TRANSITION_FIT) {
            w.caution("Limits say what the pair may be. Measure both parts before pressing or heating.");
        }
        return Outcome.ok(w.worked(new Result(hole, shaft, tightest, loosest, kind)));
    }

    private static @Nullable SizeLimits side(
            String place, double nominal, String typed, Working w, List<Refusal> refusals) {
        if (typed.isBlank()) {
            return null;
        }
        Outcome<SizeLimits> limits = Iso286.of(place, nominal, typed, place.equals("hole"), w);
        refusals.addAll(limits.refusals());
        return limits.isOk() ? limits.orElseThrow() : null;
    }

    /** A pair that can just touch counts by the side it leans to (ISO 286-1:2010 3.3). */
    private static FitKind kind(double tightest, double loosest) {
        double dust = 1e-10;
        if (tightest <= dust) {
            return FitKind.CLEARANCE_FIT;
        }
        return loosest >= -dust ? FitKind.INTERFERENCE_FIT : FitKind.TRANSITION_FIT;
    }

    private static void cautions(Working w, @Nullable SizeLimits hole, @Nullable SizeLimits shaft) {
        if ((hole != null && hole.roundedHalf() != null) || (shaft != null && shaft.roundedHalf() != null)) {
            w.caution(
                    "Half of this tolerance is not a whole µm. Some printed tables round it down; do not judge a part "
                            + "by that half µm.");
        }
    }
}
