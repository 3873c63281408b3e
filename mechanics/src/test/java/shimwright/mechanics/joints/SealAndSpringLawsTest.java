package shimwright.mechanics.joints;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static shimwright.mechanics.joints.JointSheets.answer;
import static shimwright.mechanics.joints.JointSheets.number;
import static shimwright.mechanics.joints.JointSheets.result;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import shimwright.mechanics.worksheet.Answer;

/** Laws of springs, air tests, sealant, seats, oil and lifting. */
class SealAndSpringLawsTest {
    private static final Percentage DUST = Percentage.withPercentage(1e-6);
    private static final String AIR =
            "volume=3 L; startPressure=20 kPa; endPressure=%.9f kPa; startTemperature=20; endTemperature=%.9f; time=%.6f;"
                    + " resolution=10 Pa; limit=4 cm3/min";

    /** Springs in series: twice the active coils, half the rate; the load is linear in travel (Hooke). */
    @Property(tries = 50)
    void rateHalvesWithTwiceTheCoils(@ForAll @DoubleRange(min = 3, max = 40) double active) {
        String rest = "wire=2 mm; outerDiameter=22 mm; ends=squared ground; freeLength=300 mm; totalCoils=%.9f";
        double rate = number(answer("spring", rest, active + 2), "rate");
        assertThat(number(answer("spring", rest, 2 * active + 2), "rate")).isCloseTo(rate / 2, DUST);
        Answer pressed = answer("spring", rest + "; workingLength=280 mm", active + 2);
        assertThat(number(pressed, "load")).isCloseTo(rate * 0.020, DUST);
    }

    @Property(tries = 50)
    void aSpringThatMayBePressedSolidDoesNotYield(@ForAll @DoubleRange(min = 40, max = 160) double free) {
        Answer spring = answer(
                "spring",
                "wire=2.5 mm; outerDiameter=31 mm; totalCoils=14; freeLength=%.6f mm; ends=plain ground",
                free);
        boolean longer = free / 1000 > number(spring, "solidSafeLength");
        assertThat(result(spring, "setsSolid")).isEqualTo(longer);
    }

    /** The tester finds the spring that made the readings. */
    @Property(tries = 50)
    void theTesterFindsRateAndFreeLength(
            @ForAll @DoubleRange(min = 0.5, max = 50) double rate,
            @ForAll @DoubleRange(min = 30, max = 90) double free) {
        Answer found = answer(
                "spring-test",
                "readings=20 mm: %.9f N; 22 mm: %.9f N; 25 mm: %.9f N; workingLength=20 mm",
                rate * (free - 20),
                rate * (free - 22),
                rate * (free - 25));
        assertThat(number(found, "rate")).isCloseTo(rate * 1000, DUST);
        assertThat(number(found, "impliedFreeLength")).isCloseTo(free / 1000, DUST);
        assertThat(result(found, "verdict")).isEqualTo("NOT_PROVEN");
    }

    /** A closed case only follows p/T = constant (Gay-Lussac). */
    @Property(tries = 50)
    void aClosedCaseThatWarmsDoesNotLeak(@ForAll @DoubleRange(min = 10, max = 30) double warm) {
        double end = (20e3 + 101325) * (warm + 273.15) / 293.15 - 101325;
        if (end < 0) {
            return;
        }
        Answer answer = answer("leak-test", AIR, end / 1000, warm, 300.0);
        assertThat(number(answer, "leak")).isCloseTo(0, within(1e-15));
        assertThat(number(answer, "temperatureEffect")).isCloseTo(end - 20e3, within(1e-6));
    }

    @Property(tries = 50)
    void aLeakScalesWithTimeAndItsUncertaintyShrinks(@ForAll @DoubleRange(min = 100, max = 5000) double time) {
        Answer one = answer("leak-test", AIR, 19.5, 20.0, time);
        Answer twice = answer("leak-test", AIR, 19.5, 20.0, 2 * time);
        assertThat(number(twice, "leak")).isCloseTo(number(one, "leak") / 2, DUST);
        assertThat(number(twice, "leakUncertainty")).isCloseTo(number(one, "leakUncertainty") / 2, DUST);
        assertThat(number(twice, "provingTime")).isCloseTo(number(one, "provingTime"), DUST);
    }

    /** A test shorter than the proving time never says in or out; one that long, without a leak, says in. */
    @Property(tries = 50)
    void nothingIsProvenBeforeTheProvingTime(@ForAll @DoubleRange(min = 0.2, max = 3) double share) {
        double proving = number(answer("leak-test", AIR, 20.0, 20.0, 300.0), "provingTime");
        Answer answer = answer("leak-test", AIR, 20.0, 20.0, share * proving);
        assertThat(result(answer, "verdict")).isEqualTo(share < 1 ? "NOT_PROVEN" : "IN");
    }

    @Test
    void aGrossLeakIsOutAndAHugeDropIsNotProven() {
        assertThat(result(answer("leak-test", AIR + "; temperatureStep=0.01 K", 18.5, 20.0, 600.0), "verdict"))
                .isEqualTo("OUT");
        Answer huge = answer("leak-test", AIR, 5.0, 20.0, 600.0);
        assertThat(result(huge, "verdict")).isEqualTo("NOT_PROVEN");
        assertThat(huge.text()).contains("large leak with soap");
        Answer exact = answer("leak-test", AIR.replace("10 Pa", "0 Pa") + "; temperatureStep=0 K", 19.9, 20.0, 300.0);
        assertThat(number(exact, "leakUncertainty")).isEqualTo(0);
    }

    /** The bead for a wanted width spreads to that width. */
    @Property(tries = 50)
    void beadAndSpreadGoThereAndBack(
            @ForAll @DoubleRange(min = 2, max = 30) double land,
            @ForAll @DoubleRange(min = 0.01, max = 0.5) double gap) {
        double bead = number(answer("sealant-bead", "land=%.9f mm; gap=%.9f mm", land, gap), "beadForLand");
        Answer laid = answer("sealant-bead", "bead=%.12f mm; gap=%.9f mm", bead * 1000, gap);
        assertThat(number(laid, "spread") * 1000).isCloseTo(land, DUST);
    }

    @Property(tries = 50)
    void colderCuresSlower(@ForAll @DoubleRange(min = 10, max = 40) double celsius) {
        String rest = "cureTime=24 h; temperature=%.9f °C";
        double here = number(answer("sealant-bead", rest, celsius), "cureTime");
        assertThat(number(answer("sealant-bead", rest, celsius + 2), "cureTime"))
                .isLessThan(here);
        assertThat(number(answer("sealant-bead", rest, 23.0), "cureTime")).isCloseTo(24 * 3600, DUST);
    }

    @Test
    void theWindowCloses() {
        assertThat(result(answer("sealant-bead", "openTime=20 min; planned=19 min"), "window"))
                .isEqualTo("IN_TIME");
        assertThat(result(answer("sealant-bead", "openTime=20 min; planned=21 min"), "window"))
                .isEqualTo("TOO_LATE");
        assertThat(answer("sealant-bead", "bead=2 mm; land=12 mm").text()).contains("The bead floods");
    }

    @Property(tries = 50)
    void interferenceStandsInOrderAndPushGrowsWithPressure(
            @ForAll @DoubleRange(min = 10, max = 100) double shaft, @ForAll @DoubleRange(max = 40) double kpa) {
        Answer seat = answer("seal-seat", "shaft=%.6f mm; bore=%.6f mm; pressure=%.9f kPa", shaft, shaft + 15, kpa);
        assertThat(number(seat, "interferenceLow")).isGreaterThan(0).isLessThan(number(seat, "interferenceHigh"));
        assertThat(number(seat, "pushOut"))
                .isCloseTo(kpa * 1e3 * Math.PI / 4 * 1e-6 * (Math.pow(shaft + 15, 2) - shaft * shaft), within(1e-3));
        assertThat(number(seat, "shaftMin")).isLessThan(shaft / 1000);
    }

    /** Handling of measured seats: in, out, not measured. */
    @Test
    void measuredSeatsAreJudged() {
        Answer seat = answer(
                "seal-seat",
                "shaft=40 mm; bore=55 mm; boreMeasured=55.02 mm; shaftMeasured=39.80 mm; sealMeasured=55.05 mm");
        assertThat(result(seat, "boreVerdict")).isEqualTo("IN");
        assertThat(result(seat, "shaftVerdict")).isEqualTo("OUT");
        assertThat(result(seat, "surfaceVerdict")).isEqualTo("NOT_PROVEN");
        assertThat(seat.text()).contains("looser than a good bore");
    }

    @Property(tries = 50)
    void warmOilIsMoreAndAt60FahrenheitAsBooked(@ForAll @DoubleRange(min = -20, max = 120) double celsius) {
        assertThat(number(answer("oil-fill", "volume=2.5 L; temperature=60 °F"), "volume"))
                .isCloseTo(2.5e-3, DUST);
        double here = number(answer("oil-fill", "volume=2.5 L; temperature=%.6f", celsius), "volume");
        assertThat(number(answer("oil-fill", "volume=2.5 L; temperature=%.6f", celsius + 5), "volume"))
                .isGreaterThan(here);
    }

    /** Turned round, the slope takes away what it gave. */
    @Property(tries = 50)
    void slopesMirror(@ForAll @DoubleRange(min = -8, max = 8) double tilt) {
        String rest =
                "volume=2.5 L; temperature=20; sumpLength=400 mm; sumpWidth=180 mm; plugOffset=150 mm; tilt=%.9f°";
        assertThat(number(answer("oil-fill", rest, tilt), "fillError"))
                .isCloseTo(-number(answer("oil-fill", rest, -tilt), "fillError"), within(1e-12));
    }

    @Property(tries = 50)
    void nobodyLiftsMoreThanTheConstantAndReachTakesAway(@ForAll @DoubleRange(min = 20, max = 60) double reach) {
        String rest = "mass=45; height=75; travel=20; grip=1; reach=%.6f";
        double here = number(answer("lifting", rest, reach), "limit");
        assertThat(here).isLessThanOrEqualTo(23 + 1e-9);
        assertThat(number(answer("lifting", rest, reach + 2), "limit")).isLessThanOrEqualTo(here);
    }
}
