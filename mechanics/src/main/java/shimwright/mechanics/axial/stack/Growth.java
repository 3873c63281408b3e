package shimwright.mechanics.axial.stack;

import java.util.List;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.mechanics.worksheet.Input;
import shimwright.mechanics.worksheet.Output;
import shimwright.mechanics.worksheet.Worksheet;

/** Thermal change of an axial play. */
public final class Growth {
    private static final String ISO1 = "linear expansion, reference temperature ISO 1:2016";

    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
                    "growth",
                    "Growth when warm",
                    "How a play changes when case and shaft warm up.",
                    List.of("linear expansion; reference temperature ISO 1:2016"),
                    Case.class,
                    Result.class,
                    Growth::work)
            .drawn(GrowthPictures::growth);

    private Growth() {}

    /**
     * A play that changes when the unit warms.
     *
     * @param legs lengths shared by case and shaft
     * @param caseRise temperature of the case above that at which the play was measured, K
     * @param shaftRise temperature of the shaft above the same, K
     * @param coldPlay play as measured, m, preload negative; null when only the change is wanted
     */
    public record Case(
            @Input(
                    kind = Kind.LENGTH,
                    meaning = "lengths shared by case and shaft",
                    most = 20,
                    example = "between the cups: 200 mm: 21.8: 11.3")
            List<GrowthLeg> legs,

            @Input(
                    kind = Kind.TEMPERATURE_DIFFERENCE,
                    meaning = "how much warmer the case gets",
                    min = -80,
                    max = 200,
                    example = "60 K")
            double caseRise,

            @Input(
                    kind = Kind.TEMPERATURE_DIFFERENCE,
                    meaning = "how much warmer the shaft gets",
                    min = -80,
                    max = 200,
                    example = "60 K")
            double shaftRise,

            @Input(kind = Kind.LENGTH, meaning = "play as measured, preload negative", min = -0.01, max = 0.01)
            @Nullable
            Double coldPlay) {
        public Case {
            legs = List.copyOf(legs);
        }
    }

    /**
     * What warmth does to a play.
     *
     * @param change warm minus cold, m; positive when the play opens
     * @param caseGrowth growth of the case, m
     * @param shaftGrowth growth of shaft and bearings, m
     * @param warmPlay play when warm, m, preload negative; null without a cold play
     */
    public record Result(
            @Output(kind = Kind.LENGTH, meaning = "change of play", decimals = 4)
            double change,

            @Output(kind = Kind.LENGTH, meaning = "growth of the case", decimals = 4)
            double caseGrowth,

            @Output(kind = Kind.LENGTH, meaning = "growth of the shaft", decimals = 4)
            double shaftGrowth,

            @Output(kind = Kind.LENGTH, meaning = "play when warm", decimals = 4) @Nullable
            Double warmPlay) {}

    /**
     * Σ L·(α_case·ΔT_case − α_shaft·ΔT_shaft): positive when the case outgrows the shaft and the play opens (an X pair,
     * cups in the case). A loop that closes as the case grows (a lip squeezed between its cups) has the opposite sign.
     */
    public static Outcome<Worked<Result>> work(Case c) {
        Working w = new Working();
        double caseGrowth = 0;
        double shaftGrowth = 0;
        for (GrowthLeg leg : c.legs()) {
            caseGrowth += leg.length() * leg.caseExpansion() * c.caseRise();
            shaftGrowth += leg.length() * leg.shaftExpansion() * c.shaftRise();
        }
        w.line("growth of the case", "Σ length × α case × rise", caseGrowth, Kind.LENGTH, ISO1);
        w.line("growth of the shaft", "Σ length × α shaft × rise", shaftGrowth, Kind.LENGTH, ISO1);
        double change = w.line("change", "case − shaft", caseGrowth - shaftGrowth, Kind.LENGTH);
        Double cold = c.coldPlay();
        Double warm = cold == null ? null : w.line("warm play", "cold play + change", cold + change, Kind.LENGTH);
        w.caution("The shaft warms first: the least play comes a few minutes after a cold start, not at full heat.");
        if (warm != null && cold != null && warm < 0 && cold >= 0) {
            w.caution("The play is gone when warm: the bearings run preloaded.");
        }
        return Outcome.ok(w.worked(new Result(change, caseGrowth, shaftGrowth, warm)));
    }
}
