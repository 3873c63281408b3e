package shimwright.rebuild.inspect;

import static org.assertj.core.api.Assertions.assertThat;
import static shimwright.rebuild.demo.DemoWorkbench.MM;

import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import shimwright.mechanics.conformity.Verdict;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.mechanics.quantity.Units;
import shimwright.mechanics.working.Line;
import shimwright.rebuild.demo.DemoUnit;
import shimwright.rebuild.unit.model.UnitType.Check;

/** Readings of the demo job at the hold points of the demo unit: invented scenario, recomputed. */
class ChecksTest {
    private static Check check(String hold, String id) {
        return DemoUnit.A.holdPoint(hold).checks().stream()
                .filter(c -> c.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static Checks.Judged judge(String hold, String id, double... values) {
        return Checks.judge(check(hold, id), Arrays.stream(values).boxed().toList(), UnitSystem.METRIC)
                .orElseThrow();
    }

    @Test
    void theTwinBearingIsCaughtByItsWidth() {
        // wrong_delivery of the demo source: 18.33 instead of 24.25 to 24.45; 24.338 after the exchange
        Checks.Judged twin = judge("H02", "PT_width", 18.33 * MM);
        assertThat(twin.verdict()).isEqualTo(Verdict.OUT);
        assertThat(twin.say()).contains("18.330 mm").contains("below the limit of 24.25 mm");
        assertThat(judge("H02", "PT_width", 24.338 * MM).verdict()).isEqualTo(Verdict.IN);
    }

    @Test
    void theFirstReturnOfTheCoverIsCaughtByItsSpread() {
        // deliveries of the demo source: first return with a seat spread of 0.08, second right
        Checks.Judged first = judge("H06", "depth", 9.97 * MM, 10.01 * MM, 10.03 * MM, 9.95 * MM);
        assertThat(first.verdict()).isEqualTo(Verdict.OUT);
        assertThat(first.say())
                .contains("is below the limit of 9.97 mm; the readings spread over")
                .endsWith(".");
        assertThat(judge("H06", "depth", 10.01 * MM, 10.01 * MM, 10.02 * MM, 10.01 * MM)
                        .say())
                .isEqualTo("Within limits. By number alone: no gauge is named, so its uncertainty is not known.");
    }

    /** A loss of 3 kPa against 2 kPa is 0.00 MPa on the display of stresses, and 29.6 N is 30 N where newtons have no decimals. */
    @Test
    void aReadingBesideItsLimitIsSaidInTheDigitsThatShowIt() {
        assertThat(said("kind: pressure, upper: 2 kPa", 3e3)).startsWith("3 kPa is above the limit of 2 kPa");
        assertThat(said("kind: force, lower: 30 N", 29.6)).startsWith("29.6 N is below the limit of 30 N");
        assertThat(said("kind: force, lower: 30 N", 21)).startsWith("21 N is below the limit of 30 N");
    }

    private static String said(String check, double value) {
        return Checks.judge(ChecksFromFile.check(check), List.of(value), UnitSystem.METRIC)
                .orElseThrow()
                .say();
    }

    @Test
    void aboveIsSaidAsAbove() {
        Checks.Judged drag = judge("H18", "drag", 1.5, 1.55, 1.95);
        assertThat(drag.verdict()).isEqualTo(Verdict.OUT);
        assertThat(drag.say()).contains("is above the limit of 1.9 N.m");
        assertThat(judge("H18", "drag", 1.5, 1.55, 1.5).verdict()).isEqualTo(Verdict.IN);
    }

    @Test
    void onALimitIsIn() {
        assertThat(judge("H18", "drag", 0.8, 1.9, 1.2).verdict()).isEqualTo(Verdict.IN);
        assertThat(judge("H24", "change", -0.02 * MM, 0.02 * MM, 0).verdict()).isEqualTo(Verdict.IN);
    }

    @Test
    void tooFewPlacesAreRefusedWithHowManyMore() {
        assertThat(Checks.judge(check("H18", "drag"), List.of(1.5), UnitSystem.METRIC)
                        .refusals())
                .singleElement()
                .satisfies(r -> assertThat(r.sentence()).contains("1 of 3 readings. Read 2 more places."));
        assertThat(Checks.judge(check("H18", "drag"), List.of(1.5, 1.5), UnitSystem.METRIC)
                        .refusals())
                .singleElement()
                .satisfies(r -> assertThat(r.hint()).isEqualTo("Read 1 more place"));
        assertThat(Checks.judge(check("H21", "rise"), List.of(), UnitSystem.METRIC)
                        .isOk())
                .isFalse();
    }

    @Test
    void theWorkingHoldsTheNumbersThatDecided() {
        assertThat(judge("H05", "gap_3", 1.20 * MM, 1.22 * MM, 1.24 * MM).working())
                .extracting(Line::symbol)
                .containsExactly("smallest reading", "largest reading", "lower limit", "spread");
    }

    @Test
    void aLimitWrittenInTwoUnitsJudgesAndABareNumberIsTakenInTheFirst() {
        Check check = ChecksFromFile.check("kind: pressure, lower: 0.3 bar (4.4 psi), upper: 0.5 bar");
        assertThat(Checks.judge(check, List.of(40_000.0), UnitSystem.METRIC)
                        .orElseThrow()
                        .verdict())
                .isEqualTo(Verdict.IN);
        assertThat(Checks.judge(check, List.of(20_000.0), UnitSystem.METRIC)
                        .orElseThrow()
                        .say())
                .contains("is below the limit of 0.3 bar (4.4 psi)");
        assertThat(check.bareUnit()).isEqualTo(Units.BAR);
        assertThat(check.limits()).isEqualTo("0.3 bar (4.4 psi) to 0.5 bar");
        assertThat(ChecksFromFile.wear("kind: torque, limit: 5 lbf.in, direction: min")
                        .bareUnit())
                .isEqualTo(Units.LBF_IN);
        assertThat(check("H12", "lift").bareUnit()).isEqualTo(Units.ONE);
    }

    @Property
    void inMeansEveryReadingIsWithinAndTheSpreadIsHeld(
            @ForAll @Size(min = 3, max = 6) List<@DoubleRange(min = 0.5, max = 2.0) Double> readings) {
        Check check = ChecksFromFile.check("kind: length, lower: 0.8 mm, upper: 1.6 mm, places: 3, spread: 0.5 mm");
        List<Double> values = readings.stream().map(v -> v * MM).toList();
        double least = readings.stream().min(Double::compare).orElseThrow();
        double most = readings.stream().max(Double::compare).orElseThrow();
        double dust = 1e-9;
        boolean in = least >= 0.8 - dust && most <= 1.6 + dust && most - least <= 0.5 + dust;
        Checks.Judged judged = Checks.judge(check, values, UnitSystem.METRIC).orElseThrow();
        assertThat(judged.verdict()).isEqualTo(in ? Verdict.IN : Verdict.OUT);
    }
}
