package shimwright.mechanics.fit;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import shimwright.mechanics.worksheet.Answer;

class BearingClearanceTest {
    private static BearingClearance.Result fitted(String... pairs) {
        return FitAnswers.result(BearingClearance.SHEET, FitAnswers.changed(BearingClearance.SHEET, pairs));
    }

    @Test
    void looseFitsAndEqualHeatTakeNothing() {
        BearingClearance.Result free = fitted("innerFit", "-0.005, 0 mm", "outerFit", "-0.01 mm", "innerWarmer", "0 K");
        assertThat(free.least()).isCloseTo(15e-6, within(1e-12));
        assertThat(free.most()).isCloseTo(33e-6, within(1e-12));
        assertThat(free.probableLeast()).isCloseTo(15e-6, within(1e-12));
    }

    // 10 K on a 72 mm raceway at 12.5e-6: 9 µm (a bearing handbook's figure).
    @Test
    void aWarmerInnerRingTakesClearance() {
        assertThat(fitted("outerRaceway", "72 mm", "innerWarmer", "10 K").heatLoss())
                .isCloseTo(9e-6, within(0.05e-6));
    }

    // A solid shaft of the rings' own steel: raceway growth over interference is d/Di whatever the steel (Lamé).
    @Property(tries = 100)
    void onASolidShaftOfItsOwnSteelTheShareIsBoreOverRaceway(
            @ForAll @DoubleRange(min = 42, max = 60) double raceway,
            @ForAll @IntRange(min = 70, max = 210) int modulus,
            @ForAll @DoubleRange(min = 0.1, max = 0.4) double poisson) {
        String same = "steel: " + modulus + " GPa: " + poisson;
        BearingClearance.Result fit = fitted("innerRaceway", raceway + " mm", "ring", same, "shaft", same);
        assertThat(fit.innerShare()).isCloseTo(40 / raceway, within(1e-9));
    }

    @Property(tries = 100)
    void tighterFitsAndThinnerWallsActAsTheyShould(@ForAll @IntRange(min = 1, max = 30) int um) {
        BearingClearance.Result one = fitted("innerFit", um + " µm", "outerFit", um + " µm");
        BearingClearance.Result two = fitted("innerFit", um + 1 + " µm", "outerFit", um + 1 + " µm");
        assertThat(two.least()).isLessThan(one.least());
        assertThat(one.least()).isLessThanOrEqualTo(one.probableLeast() + 1e-12);
        assertThat(one.probableMost()).isLessThanOrEqualTo(one.most() + 1e-12);
        assertThat(fitted("shaftBore", "25 mm").innerShare()).isLessThan(one.innerShare());
        assertThat(fitted("housingOutside", "90 mm").outerShare()).isLessThan(one.outerShare());
        assertThat(one.innerShare()).isBetween(0.0, 1.0);
        assertThat(one.outerShare()).isBetween(0.0, 1.0);
    }

    @Test
    void badInputIsRefused() {
        assertThat(FitAnswers.refusalsOfChanged(
                        BearingClearance.SHEET,
                        "innerRaceway",
                        "70 mm",
                        "outerRaceway",
                        "60 mm",
                        "shaftBore",
                        "40 mm",
                        "housingOutside",
                        "80 mm",
                        "radialLoad",
                        "2000 N"))
                .hasSize(4)
                .anyMatch(line -> line.contains("do not grow in this order"))
                .anyMatch(line -> line.startsWith("shaftBore:"))
                .anyMatch(line -> line.startsWith("housingOutside:"))
                .anyMatch(line -> line.startsWith("width: not given"));
        for (Map.Entry<String, String> bad : Map.of(
                        "bore",
                        "0",
                        "outside",
                        "-80 mm",
                        "clearance",
                        "5 mm",
                        "innerFit",
                        "",
                        "finish",
                        "filed",
                        "radialLoad",
                        "-1 N",
                        "width",
                        "0")
                .entrySet()) {
            assertThat(FitAnswers.refusalsOfChanged(BearingClearance.SHEET, bad.getKey(), bad.getValue()))
                    .as(bad.toString())
                    .hasSize(1);
        }
    }

    @Test
    void cautionsAndUncertainty() {
        Answer tight = FitAnswers.answer(
                BearingClearance.SHEET, FitAnswers.changed(BearingClearance.SHEET, "clearance", "0.002, 0.004 mm"));
        assertThat(tight.cautions()).anyMatch(c -> c.startsWith("Probably no clearance"));
        Answer worst = FitAnswers.answer(
                BearingClearance.SHEET, FitAnswers.changed(BearingClearance.SHEET, "clearance", "0.040, 0.046 mm"));
        assertThat(worst.cautions())
                .anyMatch(c -> c.startsWith("In the worst pairing"))
                .anyMatch(c -> c.contains("estimated"));
        Answer doubted = FitAnswers.answer(
                BearingClearance.SHEET, FitAnswers.changed(BearingClearance.SHEET, "clearance", "0.020 ± 0.003 mm"));
        assertThat(requireNonNull(doubted.budgets().get("least")).u()).isCloseTo(3e-6, within(1e-9));
        Answer sure = FitAnswers.answer(
                BearingClearance.SHEET, FitAnswers.changed(BearingClearance.SHEET, "clearance", "0.020 ± 0 mm"));
        assertThat(sure.budgets().values()).allMatch(budget -> budget.u() == 0);
        assertThat(fitted("bore", "1.574803150 in").least()).isCloseTo(fitted().least(), within(1e-9));
    }
}
