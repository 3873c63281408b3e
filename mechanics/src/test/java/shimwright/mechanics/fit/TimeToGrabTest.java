package shimwright.mechanics.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.mechanics.worksheet.Answer;

class TimeToGrabTest {
    private static TimeToGrab.Result grab(String... pairs) {
        return FitAnswers.result(TimeToGrab.SHEET, FitAnswers.changed(TimeToGrab.SHEET, pairs));
    }

    // Gear 110/35 × 22 from 150 °C with h 20: 718 s, Biot 0.003; recomputed by hand from Incropera's equations.
    @Test
    void aGearOnTheBenchHasMinutesAndOnTheShaftSeconds() {
        TimeToGrab.Result grab = grab("film", "20");
        assertThat(grab.timeInAir()).isCloseTo(718, within(1.0));
        assertThat(grab.biot()).isCloseTo(0.0031, within(0.0001));
        assertThat(grab.lumped()).isTrue();
        assertThat(grab.contactTimeConstant()).isBetween(5.0, 120.0);
        assertThat(grab.inHand()).isPositive();
        // still air: 10 + 8.7 of radiation at 423 K in 293 K (Incropera Example 5.3 has 8.8 in 298 K)
        assertThat(grab().film()).isCloseTo(18.7, within(0.2));
    }

    @Property(tries = 150)
    void atTheTimeGivenExactlyTheNeededGrowthIsLeft(
            @ForAll @IntRange(min = 90, max = 150) int celsius, @ForAll @IntRange(min = 5, max = 20) int neededUm) {
        TimeToGrab.Result first = grab("start", celsius + " °C", "needed", neededUm + " µm");
        TimeToGrab.Result then = grab(
                "start", celsius + " °C",
                "needed", neededUm + " µm",
                "carry", String.format(Locale.ROOT, "%.9f s", first.timeInAir()));
        assertThat(then.inHand()).isCloseTo(0, within(1e-9));
        assertThat(then.temperatureOnArrival()).isCloseTo(first.temperatureThen(), within(1e-4));
        assertThat(grab("start", celsius + 5 + " °C", "needed", neededUm + " µm")
                        .timeInAir())
                .isGreaterThan(first.timeInAir());
        assertThat(grab("start", celsius + " °C", "needed", neededUm + 1 + " µm")
                        .timeInAir())
                .isLessThan(first.timeInAir());
    }

    @Test
    void noCarryLosesNothingAndALateOneIsSaid() {
        TimeToGrab.Result grab = grab("carry", "0 s");
        assertThat(grab.temperatureOnArrival()).isEqualTo(423.15);
        // 35 × 11.7e-6 × 130
        assertThat(grab.growthOnArrival()).isCloseTo(35e-3 * 11.7e-6 * 130, within(1e-12));
        assertThat(FitAnswers.answer(TimeToGrab.SHEET, FitAnswers.changed(TimeToGrab.SHEET, "carry", "1 h"))
                        .cautions())
                .anyMatch(c -> c.startsWith("It would grab on the way"));
    }

    @Test
    void aThickPartInFastAirIsNotProven() {
        Answer answer = FitAnswers.answer(
                TimeToGrab.SHEET,
                FitAnswers.changed(
                        TimeToGrab.SHEET,
                        "outer",
                        "300 mm",
                        "width",
                        "200 mm",
                        "film",
                        "200",
                        "part",
                        "steel",
                        "needed",
                        "1 µm"));
        assertThat(((TimeToGrab.Result) answer.result()).lumped()).isFalse();
        assertThat(answer.cautions()).anyMatch(c -> c.contains("not proven"));
    }

    @Test
    void aChilledRaceWarmsUp() {
        Answer answer = FitAnswers.answer(
                TimeToGrab.SHEET,
                FitAnswers.changed(
                        TimeToGrab.SHEET,
                        "outer",
                        "72 mm",
                        "bore",
                        "62 mm",
                        "width",
                        "17 mm",
                        "joint",
                        "72 mm",
                        "start",
                        "-18 °C",
                        "needed",
                        "0.010 mm"));
        TimeToGrab.Result grab = (TimeToGrab.Result) answer.result();
        assertThat(grab.temperatureThen()).isBetween(255.15, 293.15);
        assertThat(answer.cautions()).anyMatch(c -> c.startsWith("Frost"));
    }

    @Test
    void badInputIsRefused() {
        for (Map.Entry<String, String> bad : Map.of(
                        "outer",
                        "0",
                        "bore",
                        "120 mm",
                        "width",
                        "-3 mm",
                        "start",
                        "20 °C",
                        "needed",
                        "0 mm",
                        "film",
                        "0",
                        "emissivity",
                        "2",
                        "carry",
                        "-1 s")
                .entrySet()) {
            assertThat(FitAnswers.refusalsOfChanged(TimeToGrab.SHEET, bad.getKey(), bad.getValue()))
                    .as(bad.toString())
                    .isNotEmpty();
        }
        assertThat(FitAnswers.refusalsOfChanged(TimeToGrab.SHEET, "needed", "0.2 mm"))
                .singleElement()
                .asString()
                .contains("at the start there is only");
        assertThat(FitAnswers.refusalsOfChanged(TimeToGrab.SHEET, "joint", "200 mm", "bore", "120 mm"))
                .hasSize(2);
    }

    @Test
    void uncertaintyAndUnits() {
        Answer sure = FitAnswers.answer(TimeToGrab.SHEET, FitAnswers.changed(TimeToGrab.SHEET, "start", "150 ± 0 °C"));
        assertThat(sure.budgets().values()).allMatch(budget -> budget.u() == 0);
        Answer doubted =
                FitAnswers.answer(TimeToGrab.SHEET, FitAnswers.changed(TimeToGrab.SHEET, "start", "150 ± 2 °C"));
        assertThat(doubted.budgets().get("timeInAir")).isNotNull();
        assertThat(grab("start", "302 °F").timeInAir()).isCloseTo(grab().timeInAir(), within(1e-6));
        assertThat(TimeToGrab.SHEET
                        .answer(TimeToGrab.SHEET.example(), UnitSystem.INCH)
                        .isOk())
                .isTrue();
    }
}
