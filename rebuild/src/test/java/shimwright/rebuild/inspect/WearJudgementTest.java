package shimwright.rebuild.inspect;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static shimwright.rebuild.demo.DemoWorkbench.MM;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import shimwright.mechanics.conformity.Verdict;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.mechanics.working.Line;
import shimwright.rebuild.demo.DemoUnit;
import shimwright.rebuild.unit.model.UnitType.CheckKind;
import shimwright.rebuild.unit.model.WearLimit;

/** Findings of the demo job against the limits of the demo unit: invented scenario, recomputed. */
class WearJudgementTest {
    private static WearJudgement of(String limit, double... values) {
        return WearJudgement.of(DemoUnit.A.wearLimit(limit), list(values), UnitSystem.METRIC)
                .orElseThrow();
    }

    private static List<Double> list(double... values) {
        return java.util.Arrays.stream(values).boxed().toList();
    }

    @ParameterizedTest
    @CsvSource({
        // WR-1: ring 3, ring 5, washer Wm
        "C01, 0.62, 40000",
        "C01, 0.55, 16667",
        "C25, 3.94, 66667"
    })
    void distanceLeftIsThatOfTheSource(String limit, double millimetres, double kilometres) {
        WearJudgement judged = of(limit, millimetres * MM);
        assertThat(judged.kilometres()).isCloseTo(kilometres, within(1.0));
        assertThat(judged.verdict()).isNotEqualTo(Verdict.OUT);
        assertThat(judged.working()).extracting(Line::value).contains(judged.kilometres());
    }

    @Test
    void soIsThatOfTheDetentSprings() {
        // WR-1: 41 N of 39 N at 2 N for 100 000 km
        WearJudgement judged = of("C18", 41);
        assertThat(judged.kilometres()).isCloseTo(100_000, within(1.0));
        assertThat(judged.say())
                .isEqualTo("41 N is within the limit of 39 N; about 100\u00a0000 km left at the usual wear."
                        + " By number alone: no gauge is named, so its uncertainty is not known.");
    }

    @Test
    void aShareIsSaidWithoutDecimalsItDoesNotHave() {
        assertThat(of("C31", 1).say()).startsWith("1 is within the limit of 5; about 400\u00a0000 km left");
    }

    @Test
    void theWorstReadingDecidesWhicheverWayItWears() {
        assertThat(of("C01", 0.62 * MM, 0.88 * MM, 0.55 * MM).worst()).isCloseTo(0.55 * MM, within(1e-12));
        assertThat(of("C37", 80.118 * MM, 80.131 * MM, 80.109 * MM).worst()).isCloseTo(80.131 * MM, within(1e-12));
    }

    @Test
    void beyondTheLimitNothingIsLeft() {
        // findings of the demo source: left cover seat 80.131 of 80.000, fork 5 at 6.50 of 6.55
        WearJudgement seat = of("C37", 80.131 * MM);
        assertThat(seat.verdict()).isEqualTo(Verdict.OUT);
        assertThat(seat.kilometres()).isZero();
        assertThat(seat.say()).contains("is above the limit of").endsWith(": rework or replace.");
        WearJudgement fork = of("C10", 6.50 * MM, 6.58 * MM);
        assertThat(fork.verdict()).isEqualTo(Verdict.OUT);
        assertThat(fork.say()).contains("is below the limit of");
    }

    @Test
    void onTheLimitIsWithin() {
        WearJudgement judged = of("C42", 52.040 * MM);
        assertThat(judged.verdict()).isNotEqualTo(Verdict.OUT);
        assertThat(judged.kilometres()).isCloseTo(0, within(1e-3));
        assertThat(of("C42", 52.0401 * MM).verdict()).isEqualTo(Verdict.OUT);
    }

    @Test
    void withoutARateNoDistanceIsClaimed() {
        WearJudgement judged = of("C43", 0.02 * MM);
        assertThat(judged.verdict()).isNotEqualTo(Verdict.OUT);
        assertThat(judged.kilometres()).isNegative();
        assertThat(judged.say()).doesNotContain("km");
        assertThat(of("C43", 0.06 * MM).say()).endsWith(": rework or replace.");
    }

    @Test
    void noReadingAndNoNumberAreRefused() {
        assertThat(WearJudgement.of(DemoUnit.A.wearLimit("C01"), List.of(), UnitSystem.METRIC)
                        .refusals())
                .singleElement()
                .satisfies(
                        r -> assertThat(r.sentence()).startsWith("C01: no reading. Press the ring home and turn it"));
        assertThat(WearJudgement.of(DemoUnit.A.wearLimit("C04"), List.of(1.0), UnitSystem.METRIC)
                        .refusals())
                .singleElement()
                .satisfies(r -> assertThat(r.sentence()).isEqualTo("C04: this check has no number. Say what you saw."));
    }

    @Test
    void aRateOfNothingClaimsNoDistance() {
        WearLimit still = ChecksFromFile.wear("kind: length, limit: 1 mm, direction: min, rate: 0 mm");
        assertThat(WearJudgement.of(still, List.of(2 * MM), UnitSystem.METRIC)
                        .orElseThrow()
                        .kilometres())
                .isNegative();
    }

    @ParameterizedTest
    @CsvSource({
        "LENGTH, LENGTH",
        "TORQUE, TORQUE",
        "FORCE, FORCE",
        "PRESSURE, PRESSURE",
        "ANGLE, ANGLE",
        "NONE, NUMBER",
        "NUMBER, NUMBER"
    })
    void everyKindOfCheckHasAKindOfQuantity(CheckKind check, Kind kind) {
        assertThat(check.quantity()).isEqualTo(kind);
    }
}
