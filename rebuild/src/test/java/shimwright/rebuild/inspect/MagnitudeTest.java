package shimwright.rebuild.inspect;

import static org.assertj.core.api.Assertions.assertThat;
import static shimwright.rebuild.demo.DemoWorkbench.MM;

import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import shimwright.mechanics.conformity.Verdict;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.rebuild.demo.DemoUnit;
import shimwright.rebuild.unit.model.UnitType.Check;

/** Readings that no such part can have are asked about. Sizes of the invented demo unit; widths: common practice, no source. */
class MagnitudeTest {
    private static GaugeReadings mm(double... values) {
        return GaugeReadings.of(Arrays.stream(values).map(v -> v * MM).boxed().toList());
    }

    private static String asked(Outcome<?> outcome) {
        assertThat(outcome.isOk()).isFalse();
        return outcome.refusals().get(0).sentence();
    }

    private static Outcome<WearJudgement> wear(String id, double... values) {
        return WearJudgement.of(DemoUnit.A.wearLimit(id), mm(values), UnitSystem.METRIC);
    }

    private static Check check(String hold, String id) {
        return DemoUnit.A.holdPoint(hold).checks().stream()
                .filter(c -> c.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aWasherOf394IsAskedAboutAndNotPassedForTwoBillionKilometres() {
        assertThat(asked(wear("C25", 394)))
                .isEqualTo("thickness of Wm: 394 mm is no size that such a part has; 3.93 mm to 4 mm is expected."
                        + " Did you mean 3.94 mm? If it is right all the same, say why.");
        WearJudgement confirmed = WearJudgement.of(
                        DemoUnit.A.wearLimit("C25"), mm(394).confirmedBecause("a bar, not a washer"), UnitSystem.METRIC)
                .orElseThrow();
        assertThat(confirmed.kilometres()).isEqualTo(WearJudgement.BEYOND_RECKONING);
        assertThat(confirmed.say())
                .contains("at the usual wear it outlasts any reckoning")
                .endsWith("Confirmed as read: a bar, not a washer")
                .doesNotContain("km");
    }

    @ParameterizedTest
    @CsvSource({
        // point, inch gauge, half, sign, and the wrong way for wear: thicker than new
        "C25, 39.4, Did you mean 3.94 mm?",
        "C25, 0.1551, 'In inches it would fit, as 3.93954 mm. Did the gauge read inches?'",
        "C25, 7.9, 'It is twice what is expected'",
        "C25, 4.4, 'Look at the part, the place and the gauge'",
        "C14, 6.985, 'It is half of what is expected: one side only, or a radius for a diameter?'",
        "C37, 8.0112, Did you mean 80.112 mm?",
        "C43, -0.02, 'Did you mean 0.02 mm? Look which way it counts'",
        "C05, 2, Did you mean 0.02 mm?",
    })
    void whatWasProbablyMeantIsSaid(String limit, double millimetres, String hint) {
        assertThat(asked(wear(limit, millimetres))).contains(hint);
    }

    @ParameterizedTest
    @CsvSource({"C37, 80.131", "C10, 6.20", "C01, 0.02", "C25, 4.01", "C25, 3.80", "C26, 0.3", "C03, 0", "C31, 40"})
    void whatAWornPartCanHaveIsJudgedWithoutAQuestion(String limit, double millimetres) {
        double value = limit.equals("C31") ? millimetres / MM : millimetres;
        assertThat(wear(limit, value).isOk()).isTrue();
    }

    @Test
    void aBoreOf72ReadAs7IsAskedAboutAtTheHoldPoint() {
        assertThat(asked(Checks.judge(check("H01", "tail_seat"), mm(71.97, 7.196, 71.96), UnitSystem.METRIC)))
                .contains("7.196 mm is no size that such a part has")
                .contains("Did you mean 71.96 mm?");
        assertThat(Checks.judge(check("H01", "tail_seat"), mm(71.97, 71.995, 71.96), UnitSystem.METRIC)
                        .orElseThrow()
                        .verdict())
                .isEqualTo(Verdict.OUT);
    }

    @Test
    void turnsCountedWithBothFlangesMovingAreRecognised() {
        Outcome<Checks.Judged> twice =
                Checks.judge(check("H34", "turns_4"), GaugeReadings.of(List.of(39.7)), UnitSystem.METRIC);
        assertThat(asked(twice)).contains("It is twice what is expected: counted double, both sides turned together");
        // 5th gear counted for 4th is wrong, but it is a count one can make
        assertThat(Checks.judge(check("H34", "turns_4"), GaugeReadings.of(List.of(15.41)), UnitSystem.METRIC)
                        .orElseThrow()
                        .verdict())
                .isEqualTo(Verdict.OUT);
    }

    @Test
    void aSpreadAloneIsJudgedInMagnitudeWhereTheFileSaysWhatItIsMeantToBe() {
        Check cup = ChecksFromFile.check("kind: length, places: 3, spread: 0.02 mm, nominal: [8.01 mm, 11.30 mm]");
        assertThat(asked(Checks.judge(cup, mm(12.50, 12.50, 12.51), UnitSystem.METRIC)))
                .contains("12.5 mm is no size")
                .contains("expected");
        assertThat(Checks.judge(cup, mm(11.31, 11.30, 11.32), UnitSystem.METRIC)
                        .orElseThrow()
                        .verdict())
                .isEqualTo(Verdict.IN);
        assertThat(Checks.judge(cup, mm(8.01, 8.02, 8.05), UnitSystem.METRIC)
                        .orElseThrow()
                        .verdict())
                .isEqualTo(Verdict.OUT);
        Check blind = ChecksFromFile.check("kind: length, places: 3, spread: 0.02 mm");
        assertThat(asked(Checks.judge(blind, mm(8.01, 80.1, 8.02), UnitSystem.METRIC)))
                .contains("80.1 mm was not read where the others were, about 8.02 mm");
        Check wide = ChecksFromFile.check("kind: length, upper: 12 mm, nominal: [11.30 mm], within: 0.5 mm");
        assertThat(asked(Checks.judge(wide, mm(10.7), UnitSystem.METRIC))).contains("10.7 mm is no size");
    }

    @ParameterizedTest
    @ValueSource(strings = {"0.8 mm", "0.8 N.m", "3", "40 N", "2 bar", "3 deg"})
    void oneLimitAloneStillHasASenseOfSize(String limit) {
        String kind = limit.endsWith("mm")
                ? "length"
                : limit.endsWith("m")
                        ? "torque"
                        : limit.endsWith("N") ? "force" : limit.endsWith("r") ? "pressure" : "x";
        kind = limit.endsWith("deg") ? "angle" : kind.equals("x") ? "number" : kind;
        Check check = ChecksFromFile.check("kind: " + kind + ", upper: " + limit);
        double l = check.upper().orElseThrow().si();
        assertThat(Magnitude.asked(check, GaugeReadings.of(List.of(l / 3)))).isEmpty();
        assertThat(Magnitude.asked(check, GaugeReadings.of(List.of(l * 100)))).hasSize(1);
        assertThat(Magnitude.asked(check, GaugeReadings.of(List.of(-l)))).hasSize(1);
    }

    @Property
    void whatIsWithinLimitsOrNewIsNeverAskedAbout(@ForAll @DoubleRange(min = 0, max = 1) double share) {
        DemoUnit.A.type().wearLimits().stream()
                .filter(w -> w.asNew().size() == 2)
                .forEach(w -> {
                    double limit = w.limit().orElseThrow().si();
                    double least = Math.min(limit, w.asNew().get(0).si());
                    double most = Math.max(limit, w.asNew().get(1).si());
                    assertThat(Magnitude.asked(w, GaugeReadings.of(List.of(least + share * (most - least)))))
                            .as(w.id())
                            .isEmpty();
                });
        DemoUnit.A.type().holdPoints().stream()
                .flatMap(h -> h.checks().stream())
                .filter(c -> c.lower().isPresent() && c.upper().isPresent() && c.readingsEach() == 1)
                .forEach(c -> {
                    double low = c.lower().orElseThrow().si();
                    double value = low + share * (c.upper().orElseThrow().si() - low);
                    assertThat(Magnitude.asked(c, GaugeReadings.of(List.of(value))))
                            .as(c.id())
                            .isEmpty();
                });
    }

    @Property
    void aSlippedPointOfASizeIsAlwaysAskedAbout(@ForAll @DoubleRange(min = 0, max = 1) double share) {
        DemoUnit.A.type().wearLimits().stream()
                .filter(w -> w.asNew().size() == 2
                        && w.asNew().get(0).si() > 0
                        && w.asNew().get(1).si() < 1.1 * w.asNew().get(0).si())
                .forEach(w -> {
                    double least = w.asNew().get(0).si();
                    double value = least + share * (w.asNew().get(1).si() - least);
                    for (double slip : new double[] {0.01, 0.1, 0.5, 2, 10, 25.4, 100}) {
                        List<Refusal> asked = Magnitude.asked(w, GaugeReadings.of(List.of(slip * value)));
                        assertThat(asked).as("%s times %s", w.id(), slip).isNotEmpty();
                    }
                });
    }
}
