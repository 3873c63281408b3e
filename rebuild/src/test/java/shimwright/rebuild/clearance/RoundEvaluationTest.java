package shimwright.rebuild.clearance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static shimwright.rebuild.demo.DemoWorkbench.MM;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import shimwright.mechanics.axial.reading.Seating;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.working.Line;
import shimwright.rebuild.clearance.Reading.Measured;
import shimwright.rebuild.demo.DemoUnit;
import shimwright.rebuild.job.Shop.Gauge;

class RoundEvaluationTest {
    private static final Gauge DIAL =
            new Gauge("DI", "dial", Kind.LENGTH, 0.01 * MM, 0.005 * MM, 0.003 * MM, 0, 10 * MM);

    private static Outcome<Measured> read(String clearance, double[]... millimetres) {
        List<List<Double>> rounds = Arrays.stream(millimetres)
                .map(round -> Arrays.stream(round).map(v -> v * MM).boxed().toList())
                .toList();
        return RoundEvaluation.read(DemoUnit.A.clearance(clearance), DIAL, rounds);
    }

    private static double[] round(double... values) {
        return values;
    }

    private static final double[] SPLIT = round(0.355, 0.360, 0.365, 0.365, 0.355, 0.350, 0.345, 0.350);

    @Test
    void placesHaveNoOrderInTimeAndTheirMeanCounts() {
        Measured measured = read("e", SPLIT, SPLIT).orElseThrow();
        // BL-1 of the demo source, invented scenario, recomputed
        assertThat(measured.value()).isCloseTo(0.3556 * MM, within(0.00005 * MM));
        assertThat(measured.settled()).isTrue();
        assertThat(measured.more()).isZero();
        assertThat(measured.advice()).isEqualTo("The places agree; their mean counts.");
        // JCGM 100:2008 4.2.3 and 4.3.7: s²/8 + (10/√6)² + (5/√3)² + (3/√3)², µm
        double s2 = 0;
        for (double place : SPLIT) {
            s2 += Math.pow(place - 0.355625, 2) / 7;
        }
        double u = Math.sqrt(s2 / 8 * 1e6 + 100.0 / 6 + 25.0 / 3 + 9.0 / 3);
        assertThat(measured.u()).isCloseTo(u * 1e-6, within(1e-10));
    }

    private static final double[] AGAIN = round(0.270, 0.275, 0.280, 0.275, 0.270, 0.260, 0.255, 0.260);

    @Test
    void ofSeveralRoundsOfPlacesAsManyAsTheFileAsksForCountAndTheLast() {
        // BL-1 of the demo source, invented scenario, recomputed; the file asks for two rounds
        assertThat(read("e", SPLIT, AGAIN, AGAIN).orElseThrow().value()).isCloseTo(0.2681 * MM, within(0.00005 * MM));
        double[] higher = Arrays.stream(AGAIN).map(v -> v + 0.01).toArray();
        assertThat(read("e", AGAIN, higher).orElseThrow().value()).isCloseTo(0.2731 * MM, within(0.00005 * MM));
    }

    @Test
    void oneRoundOfPlacesIsNotProofWhereTheFileAsksForTwo() {
        Measured measured = read("e", SPLIT).orElseThrow();
        assertThat(measured.seating()).isEqualTo(Seating.TOO_FEW);
        assertThat(measured.more()).isEqualTo(1);
        assertThat(measured.advice()).isEqualTo("Read all places one more time.");
    }

    @Test
    void aPlaceThatReadsOtherwiseFromRoundToRoundIsNamedAndProvesNothing() {
        Measured measured = read("e", SPLIT, AGAIN).orElseThrow();
        assertThat(measured.seating()).isEqualTo(Seating.SCATTERED);
        assertThat(measured.advice()).startsWith("Place 1, 2, 3, 4, 5, 6, 7, 8 reads otherwise from round to round");
        double[] one = SPLIT.clone();
        one[2] = 0.30;
        assertThat(read("e", SPLIT, one).orElseThrow().outliers()).containsExactly(3);
    }

    @Test
    void placesThatSpreadTooFarAreReadAgain() {
        Measured measured =
                read("e", round(0.30, 0.31, 0.33, 0.35, 0.36, 0.35, 0.33, 0.31)).orElseThrow();
        assertThat(measured.outliers()).isEmpty();
        assertThat(measured.seating()).isEqualTo(Seating.SCATTERED);
        assertThat(measured.more()).isEqualTo(1);
        assertThat(measured.advice())
                .isEqualTo("The places spread over more than 0.05 mm: look at run-out and dirt, then read all again.");
    }

    @Test
    void placesLeftOutAreRefusedWithHowManyThereShouldBe() {
        assertThat(read("e", round(0.30, 0.31, 0.33)).refusals())
                .extracting(Refusal::sentence)
                .containsExactly("round 1: 3 of 8 places read. Read every place once.");
        assertThat(read("e", SPLIT, round(0.30)).refusals())
                .extracting(Refusal::sentence)
                .containsExactly("round 2: 1 of 8 places read. Read every place once.");
    }

    @Test
    void aReadingIsTurnedIntoTheClearanceByItsFactorAndOffset() {
        Measured measured = read("a", round(32.18), round(32.18), round(32.18)).orElseThrow();
        assertThat(measured.value()).isCloseTo(52.18 * MM, within(1e-9));
        assertThat(measured.working()).extracting(Line::expression).contains("reading × 1 + offset");
    }

    @Test
    void travelWithTwoIndicatorsCarriesTheTiltAndWithOneItsUncertainty() {
        Measured two = read("c", round(0.24, 0.32), round(0.25, 0.31), round(0.24, 0.31))
                .orElseThrow();
        Measured one = read("c", round(0.24), round(0.24), round(0.24)).orElseThrow();
        assertThat(two.tilt()).isCloseTo(0.07 * MM, within(1e-9));
        assertThat(one.tilt()).isZero();
        assertThat(one.u()).isGreaterThan(0.04 * MM / Math.sqrt(3));
        assertThat(two.u()).isLessThan(one.u() / 3);
    }

    @Test
    void feelersBracketTheClearanceAndTheNarrowestBracketCounts() {
        Measured measured = read("f", round(0.02, 0.05), round(0.03, 0.05)).orElseThrow();
        assertThat(measured.value()).isCloseTo(0.04 * MM, within(1e-9));
        assertThat(measured.u()).isCloseTo(0.01 * MM / Math.sqrt(3), within(1e-9));
        assertThat(measured.settled()).isTrue();
        assertThat(measured.advice()).isEqualTo("The feelers agree.");
    }

    @Test
    void feelersThatContradictProveNothing() {
        Measured measured = read("f", round(0.02, 0.03), round(0.04, 0.05)).orElseThrow();
        assertThat(measured.seating()).isEqualTo(Seating.SCATTERED);
        assertThat(measured.advice()).startsWith("One feeler entered that did not enter another time");
    }

    @Test
    void oneTryWithFeelersIsNotProof() {
        Measured measured = read("f", round(0.03, 0.04)).orElseThrow();
        assertThat(measured.seating()).isEqualTo(Seating.TOO_FEW);
        assertThat(measured.more()).isEqualTo(1);
    }

    @Test
    void oneFeelerAloneBoundsNothing() {
        assertThat(read("f", round(0.03), round(0.03)).refusals())
                .extracting(Refusal::sentence)
                .containsExactly(
                        "round 1: 1 feeler tried. Give the thickest that enters and the thinnest that does not.",
                        "round 2: 1 feeler tried. Give the thickest that enters and the thinnest that does not.");
    }

    @Test
    void unlikeRoundsAreRefused() {
        assertThat(read("c", round(0.24, 0.31), round(0.24), round(0.24, 0.31)).isOk())
                .isFalse();
    }
}
