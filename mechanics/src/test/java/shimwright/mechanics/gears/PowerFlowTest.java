package shimwright.mechanics.gears;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import shimwright.mechanics.worksheet.Answer;

/** The way of the power through a gearbox, and the life of all its bearings together. */
class PowerFlowTest {
    /** Teeth as of a printed tooth table (24/29, 36/17; checks/gears.csv RAT-01); speeds and torques by hand. */
    private static final String BOX = "constantMesh=24: 29 | gears=1st: 17: 36; 4th: 0: 0; reverse: 17: 34: 20"
            + " | inputSpeed=2900 rpm | inputTorque=240 N·m | engaged=";

    private static void is(Answer answer, int at, String part, double rpm, double torque) {
        String path = "path[" + at + "].";
        assertThat(SheetCalls.at(answer, path + "part")).isEqualTo(part);
        assertThat(SheetCalls.number(answer, path + "speed") * 30 / Math.PI).isCloseTo(rpm, within(1e-9));
        assertThat(SheetCalls.number(answer, path + "torque")).isCloseTo(torque, within(1e-9));
    }

    @Test
    void firstGearGoesOverTheCountershaft() {
        Answer first = SheetCalls.answer("ratios", BOX + "1st | finalDrive=9: 36");
        is(first, 0, "input shaft", 2900, 240);
        is(first, 1, "countershaft", -2400, -290);
        is(first, 2, "output shaft", 2400 * 17 / 36.0, 290 * 36 / 17.0);
        is(first, 3, "final drive", 600 * 17 / 36.0, 1160 * 36 / 17.0);
        assertThat(SheetCalls.number(first, "power")).isCloseTo(240 * 2900 * Math.PI / 30, within(1e-6));
        assertThat(first.text()).contains("pair of 1st, 17 driving 36");
    }

    @Test
    void directGoesStraightThroughAndReverseOverItsIdler() {
        Answer direct = SheetCalls.answer("ratios", BOX + "4th");
        is(direct, 1, "output shaft", 2900, 240);
        assertThat((List<?>) direct.json().get("cautions")).isNotEmpty();
        Answer reverse = SheetCalls.answer("ratios", BOX + "reverse");
        is(reverse, 2, "idler of reverse", 2400 * 17 / 20.0, 290 * 20 / 17.0);
        is(reverse, 3, "output shaft", -1200, -580);
        // two shafts: the input shaft drives the pair itself
        Answer two = SheetCalls.answer(
                "ratios", "gears=1st: 13: 44; 2nd: 25: 44 | engaged=2nd | inputSpeed=1000 rpm | inputTorque=100 N·m");
        is(two, 1, "output shaft", -25000 / 44.0, -176);
    }

    /** Torque × speed is the power everywhere; the last stage is the result. */
    @Property(tries = 60)
    void noPowerIsLostOrMade(
            @ForAll @IntRange(min = 12, max = 60) int driving,
            @ForAll @IntRange(min = 12, max = 60) int driven,
            @ForAll @IntRange(min = 0, max = 30) int idler,
            @ForAll @Scale(12) @DoubleRange(min = 1, max = 600) double torque) {
        Answer answer = SheetCalls.answer(
                "ratios",
                "constantMesh=24: 29 | gears=g: " + driving + ": " + driven + ": " + idler
                        + " | inputSpeed=1500 rpm | engaged=g | inputTorque=" + torque + " N·m");
        double power = torque * 1500 * Math.PI / 30;
        int stages = idler > 0 ? 4 : 3;
        for (int i = 0; i < stages; i++) {
            assertThat(SheetCalls.number(answer, "path[" + i + "].torque")
                            * SheetCalls.number(answer, "path[" + i + "].speed"))
                    .isCloseTo(power, within(1e-9 * power));
        }
        // one turn round more with an idler than without, so the two ways of counting must agree on the sign too
        assertThat(SheetCalls.number(answer, "path[" + (stages - 1) + "].torque"))
                .isCloseTo(SheetCalls.number(answer, "outputTorque"), within(1e-9 * torque));
        assertThat(SheetCalls.number(answer, "path[" + (stages - 1) + "].speed"))
                .isCloseTo(SheetCalls.number(answer, "outputSpeed"), within(1e-9));
    }

    private static double system(String slope, double... hours) {
        StringBuilder others = new StringBuilder();
        for (int i = 1; i < hours.length; i++) {
            others.append(i > 1 ? "; " : "").append(hours[i]).append(" h");
        }
        // C = P at 10⁶ turns in so many hours: the first bearing has just that rating life
        String bearing = "elements=ball | rating=2 kN | loads=2 kN: " + 1e6 / (60 * hours[0]) + " rpm | slope=" + slope
                + (hours.length > 1 ? " | others=" + others : "");
        return SheetCalls.number("bearing-life", bearing, "systemLife") / 3600;
    }

    /**
     * L = (Σ L^−e)^(−1/e), e 10/9 for ball and 9/8 for roller bearings (bearing makers' rule, read in a trade page of 2012;
     * the slope of Lundberg and Palmgren 1947, from memory). The page rounds two equal bearings to half the life of one
     * and four to a quarter. 1000 h and 2000 h by hand: (1 + 2^(−10/9))^(−0.9) = 1.46294^(−0.9) = 0.7101.
     */
    @Test
    void aSetLivesAsTheMakersRuleSays() {
        assertThat(system("1.1111111111", 1000, 1000)).isCloseTo(536, within(0.5));
        assertThat(system("1.1111111111", 1000, 1000)).isCloseTo(500, within(40.0));
        assertThat(system("1.1111111111", 1000, 1000, 1000, 1000)).isCloseTo(250, within(40.0));
        assertThat(system("1.125", 1000, 1000)).isCloseTo(540, within(0.5));
        assertThat(system("1.1111111111", 1000, 2000)).isCloseTo(710.1, within(0.05));
        assertThat(system("1.5", 1000)).isCloseTo(1000, within(1e-6));
    }

    /** At the life of the set the product of all reliabilities is 90 %. */
    @Property(tries = 60)
    void atTheLifeOfTheSetNineOfTenSetsRun(
            @ForAll @Scale(12) @DoubleRange(min = 100, max = 1e5) double one,
            @ForAll @Scale(12) @DoubleRange(min = 100, max = 1e5) double two,
            @ForAll @Scale(12) @DoubleRange(min = 100, max = 1e5) double three,
            @ForAll @Scale(6) @DoubleRange(min = 1, max = 2) double slope) {
        double life = system(String.valueOf(slope), one, two, three);
        double product = 1;
        for (double own : List.of(one, two, three)) {
            product *= Math.pow(0.9, Math.pow(life / own, slope));
        }
        assertThat(product).isCloseTo(0.9, within(1e-9));
    }
}
