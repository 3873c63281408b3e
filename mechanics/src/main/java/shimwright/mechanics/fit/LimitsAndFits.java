package shimwright.mechanics.fit;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.fit.FitLimits.FitKind;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.mechanics.worksheet.Worksheet;

/** The worksheet {@code limits-and-fits}. */
final class LimitsAndFits {
    static final Worksheet<FitClasses, FitLimits> SHEET = new Worksheet<>(
                    "limits-and-fits",
                    "Limits and fits",
                    "Limits of a hole and a shaft from their classes, and how tight and how loose the pair can be.",
                    List.of("ISO 286-1:2010 Tables 1 to 5", "ISO 492, class Normal, for bearing rings"),
                    FitClasses.class,
                    FitLimits.class,
                    LimitsAndFits::work)
            .drawn(FitPictures::zones);

    private LimitsAndFits() {}

    /**
     * Limits from classes.
     *
     * <p>Sizes over 0 to 500 mm, IT1 to IT14, shafts c to u, holes C to U, bearing rings of class Normal. Refused:
     * neither class given, a class that is none, one of the other side, a letter, grade or cell outside the tables.
     */
    static Outcome<Worked<FitLimits>> work(FitClasses c) {
        Working w = new Working();
        if (c.hole().isBlank() && c.shaft().isBlank()) {
            return Outcome.refused("hole, shaft", "no class given", "Type at least one, such as hole=H7 or shaft=p6");
        }
        List<Refusal> refusals = new ArrayList<>();
        @Nullable Limits hole = side("hole", c.nominal(), c.hole(), w, refusals);
        @Nullable Limits shaft = side("shaft", c.nominal(), c.shaft(), w, refusals);
        if (!refusals.isEmpty()) {
            return Outcome.refused(refusals);
        }
        if (hole == null || shaft == null) {
            cautions(w, hole, shaft);
            return Outcome.ok(w.worked(new FitLimits(hole, shaft, null, null, null)));
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
        return Outcome.ok(w.worked(new FitLimits(hole, shaft, tightest, loosest, kind)));
    }

    private static @Nullable Limits side(
            String place, double nominal, String typed, Working w, List<Refusal> refusals) {
        if (typed.isBlank()) {
            return null;
        }
        Outcome<Limits> limits = Iso286.of(place, nominal, typed, place.equals("hole"), w);
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

    private static void cautions(Working w, @Nullable Limits hole, @Nullable Limits shaft) {
        if ((hole != null && hole.roundedHalf() != null) || (shaft != null && shaft.roundedHalf() != null)) {
            w.caution(
                    "Half of this tolerance is not a whole µm. Some printed tables round it down; do not judge a part "
                            + "by that half µm.");
        }
    }
}
