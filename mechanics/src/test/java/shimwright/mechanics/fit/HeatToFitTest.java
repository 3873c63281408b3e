package shimwright.mechanics.fit;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.mechanics.worksheet.Answer;

class HeatToFitTest {
    private static HeatToFit.Result plan(String... pairs) {
        return FitAnswers.result(HeatToFit.SHEET, FitAnswers.changed(HeatToFit.SHEET, pairs));
    }

    // Worst 25 H7/p6 pair: (35 + 25 µm)/(25 × 11.7e-6) above 20 °C is 225 °C; recomputed by hand.
    @Test
    void aSmallCaseHardenedGearCannotGoOnByHeatAlone() {
        Map<String, String> gear = FitAnswers.changed(
                HeatToFit.SHEET,
                "diameter",
                "25 mm",
                "interference",
                "35 µm",
                "clearance",
                "25 µm",
                "outer",
                "case hardened steel",
                "heated",
                "case hardened",
                "innerHardened",
                "no");
        assertThat(FitAnswers.refusalsOfChanged(HeatToFit.SHEET, flat(gear)))
                .singleElement()
                .asString()
                .contains("no possible heat gives 0.025 mm clearance under the ceiling of 150 °C")
                .contains("outer needs 225 °C")
                .contains("Chill it further")
                .contains("press it");
        gear.put("cold", "dry ice");
        assertThat(FitAnswers.refusalsOfChanged(HeatToFit.SHEET, flat(gear)))
                .singleElement()
                .asString()
                .contains("from the freezer (-18 °C)")
                .contains("from dry ice (-70 °C)");
        gear.put("cold", "liquid nitrogen");
        HeatToFit.Result plan = FitAnswers.result(HeatToFit.SHEET, gear);
        assertThat(plan.cold()).isEqualTo(Chilling.LIQUID_NITROGEN);
        assertThat(plan.choices()).hasSize(4);
        gear.put("innerHardened", "yes");
        assertThat(FitAnswers.refusalsOfChanged(HeatToFit.SHEET, flat(gear)))
                .singleElement()
                .asString()
                .contains("so much cold would change a hardened part");
    }

    private static String[] flat(Map<String, String> given) {
        return given.entrySet().stream()
                .flatMap(entry -> List.of(entry.getKey(), entry.getValue()).stream())
                .toArray(String[]::new);
    }

    @Test
    void theMildestPossibleWayIsTakenAndTheLowestCeilingCounts() {
        HeatToFit.Result easy = plan("cold", "liquid nitrogen");
        assertThat(easy.cold()).isEqualTo(Chilling.NONE);
        assertThat(easy.innerTemperature()).isEqualTo(293.15);
        // bearing heating guideline: open bearing 121 °C; a polyamide cage is lower (from memory)
        assertThat(easy.ceiling()).isCloseTo(394.15, within(1e-9));
        assertThat(plan("heated", "polyamide cage; open bearing", "interference", "0.01 mm")
                        .ceiling())
                .isCloseTo(373.15, within(1e-9));
        assertThat(plan("ownCeiling", "110 °C", "interference", "0.01 mm", "clearance", "0.01 mm")
                        .ceiling())
                .isCloseTo(383.15, within(1e-9));
        assertThat(plan("ownCeiling", "300 °C").ceiling()).isCloseTo(394.15, within(1e-9));
    }

    // Demo: 30 bore gains 0.032 at +85 K with α 12.5; arithmetic.
    @Test
    void growthIsLinear() {
        HeatToFit.Result plan = plan(
                "outer", "bearing steel", "ownCeiling", "105 °C", "interference", "0.012 mm", "clearance", "0.010 mm");
        assertThat(plan.growthAtCeiling()).isCloseTo(0.0319e-3, within(0.0001e-3));
        assertThat(plan.boreGrowth()).isCloseTo(22e-6, within(1e-12));
        assertThat(plan.outerRise()).isCloseTo(22e-6 / (12.5e-6 * 0.030), within(1e-9));
    }

    @Property(tries = 200)
    void thePlanReachesTheClearanceOrThereIsNone(
            @ForAll @IntRange(min = 10, max = 200) int diameter,
            @ForAll @IntRange(min = 1, max = 90) int interferenceUm,
            @ForAll Chilling cold,
            @ForAll boolean hardened) {
        Map<String, String> given = FitAnswers.changed(
                HeatToFit.SHEET,
                "diameter",
                diameter + " mm",
                "interference",
                interferenceUm + " µm",
                "cold",
                cold.name(),
                "heated",
                "case hardened",
                "innerHardened",
                hardened ? "yes" : "no");
        var outcome = HeatToFit.SHEET.answer(given, UnitSystem.METRIC);
        if (!outcome.isOk()) {
            assertThat(outcome.refusals()).hasSize(1);
            return;
        }
        HeatToFit.Result plan = (HeatToFit.Result) outcome.orElseThrow().result();
        assertThat(plan.clearance()).isGreaterThanOrEqualTo(10e-6 - 1e-12);
        assertThat(plan.outerTemperature()).isBetween(293.15, plan.ceiling());
        assertThat(plan.room()).isGreaterThanOrEqualTo(0);
        assertThat(!hardened || plan.innerTemperature() >= 213.15).isTrue();
        // round trip: growth and shrink undo the interference
        assertThat(plan.boreGrowth() + plan.innerShrink() - plan.clearance())
                .isCloseTo(interferenceUm * 1e-6, within(1e-12));
    }

    @Property(tries = 100)
    void moreInterferenceNeedsMoreHeat(@ForAll @DoubleRange(min = 0.01, max = 0.03) double interference) {
        String less = String.format(Locale.ROOT, "%.6f mm", interference);
        String more = String.format(Locale.ROOT, "%.6f mm", interference + 0.001);
        HeatToFit.Result one = plan("heated", "structural steel", "interference", less, "clearance", "0.02 mm");
        HeatToFit.Result two = plan("heated", "structural steel", "interference", more, "clearance", "0.02 mm");
        assertThat(two.outerTemperature()).isGreaterThan(one.outerTemperature());
    }

    @Test
    void badInputIsRefused() {
        for (Map.Entry<String, String> bad : Map.of(
                        "diameter",
                        "0",
                        "interference",
                        "-0.01 mm",
                        "clearance",
                        "-1 µm",
                        "heated",
                        "banana",
                        "room",
                        "100 °C",
                        "innerHardened",
                        "perhaps",
                        "innerTemperature",
                        "-300 °C",
                        "ownCeiling",
                        "0 °C")
                .entrySet()) {
            assertThat(FitAnswers.refusalsOfChanged(HeatToFit.SHEET, bad.getKey(), bad.getValue()))
                    .as(bad.toString())
                    .hasSize(1);
        }
        assertThat(FitAnswers.refusalsOfChanged(HeatToFit.SHEET, "interference", "0.5 mm"))
                .singleElement()
                .asString()
                .contains("more than 1 %");
    }

    @Test
    void cautionsGoWithTheHeatAndTheCold() {
        Answer cold = FitAnswers.answer(
                HeatToFit.SHEET,
                FitAnswers.changed(
                        HeatToFit.SHEET,
                        "heated",
                        "case hardened",
                        "interference",
                        "0.050 mm",
                        "cold",
                        "dry ice",
                        "innerHardened",
                        "no"));
        assertThat(cold.cautions())
                .anyMatch(c -> c.contains("never a flame"))
                .anyMatch(c -> c.contains("drive out the air"))
                .anyMatch(c -> c.contains("frost"))
                .anyMatch(c -> c.contains("tempering"));
        assertThat(FitAnswers.answer(HeatToFit.SHEET, HeatToFit.SHEET.example()).cautions())
                .anyMatch(c -> c.contains("demagnetize"))
                .noneMatch(c -> c.contains("drive out the air"));
    }

    @Test
    void uncertaintyGoesThroughAndNoneGivesNone() {
        Answer answer = FitAnswers.answer(
                HeatToFit.SHEET, FitAnswers.changed(HeatToFit.SHEET, "interference", "0.015 ± 0.002 mm"));
        double rise = 0.002e-3 / (11.7e-6 * 0.030);
        assertThat(requireNonNull(answer.budgets().get("outerTemperature")).u()).isCloseTo(rise, within(1e-6));
        Answer sure =
                FitAnswers.answer(HeatToFit.SHEET, FitAnswers.changed(HeatToFit.SHEET, "interference", "0.015 ± 0 mm"));
        assertThat(sure.budgets().values()).allMatch(budget -> budget.u() == 0);
        assertThat(plan("diameter", "1.181102362 in").outerTemperature())
                .isCloseTo(plan().outerTemperature(), within(1e-4));
        assertThat(plan("room", "68 °F").outerTemperature()).isCloseTo(plan().outerTemperature(), within(1e-9));
    }
}
