package shimwright.mechanics.joints;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static shimwright.mechanics.joints.JointSheets.answer;
import static shimwright.mechanics.joints.JointSheets.number;
import static shimwright.mechanics.joints.JointSheets.result;

import java.util.List;
import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import shimwright.mechanics.worksheet.Answer;

/** Laws of threads, tightening, stripping and wrenches: geometry and statics, no table needed. */
class ThreadLawsTest {
    private static final Percentage DUST = Percentage.withPercentage(1e-7);
    private static final String M10 = "diameter=10 mm; pitch=1.5 mm; ";

    @Property(tries = 100)
    void diametersStandInOrder(
            @ForAll @DoubleRange(min = 4, max = 60) double d,
            @ForAll @DoubleRange(min = 0.03, max = 0.16) double share) {
        Answer thread = answer("thread", "diameter=%.9f mm; pitch=%.9f mm", d, share * d);
        double root = number(thread, "rootDiameter");
        assertThat(root).isLessThan(number(thread, "minorDiameter"));
        assertThat(number(thread, "minorDiameter")).isLessThan(number(thread, "pitchDiameter"));
        double stress = number(thread, "stressArea");
        assertThat(stress)
                .isBetween(Math.PI / 4 * root * root, Math.PI / 4 * Math.pow(number(thread, "pitchDiameter"), 2));
    }

    /** The metric stress area by its decimal constant, (π/4)(d − 0.9382 P)², ISO 898-1:2013 9.1.6.1. */
    @Property(tries = 50)
    void stressAreaByItsDecimalConstant(@ForAll @DoubleRange(min = 0.5, max = 3) double p) {
        Answer thread = answer("thread", "diameter=20 mm; pitch=%.9f mm", p);
        assertThat(number(thread, "stressArea") * 1e6)
                .isCloseTo(Math.PI / 4 * Math.pow(20 - 0.9382 * p, 2), Percentage.withPercentage(0.002));
    }

    @Property(tries = 100)
    void torqueAndPreloadGoThereAndBack(
            @ForAll @DoubleRange(min = 1, max = 500) double torque,
            @ForAll @DoubleRange(min = 0.05, max = 0.4) double mu,
            @ForAll @IntRange(max = 2) int form) {
        String rest = M10
                + String.format(
                        Locale.ROOT,
                        "form=%s; nutFactor=0.2; threadFriction=%.9f; headFriction=%.9f; headMean=13 mm; ",
                        new String[] {"nut factor", "friction", "screw"}[form],
                        mu,
                        mu);
        double preload = number(answer("tightening", rest + "torque=" + torque), "preload");
        assertThat(number(answer("tightening", rest + "preload=" + preload), "torque"))
                .isCloseTo(torque, DUST);
    }

    @Property(tries = 100)
    void moreTorqueMorePreloadMoreFrictionLess(
            @ForAll @DoubleRange(min = 1, max = 100) double torque,
            @ForAll @DoubleRange(min = 0.02, max = 0.3) double mu) {
        String form = M10 + "form=screw; headMean=13 mm; threadFriction=%.9f; headFriction=%.9f; torque=%.9f";
        double here = number(answer("tightening", form, mu, mu, torque), "preload");
        assertThat(number(answer("tightening", form, mu, mu, torque * 1.1), "preload"))
                .isCloseTo(here * 1.1, DUST);
        assertThat(number(answer("tightening", form, mu * 1.1, mu, torque), "preload"))
                .isLessThan(here);
        assertThat(number(answer("tightening", form, mu, mu * 1.1, torque), "preload"))
                .isLessThan(here);
    }

    /** Without friction all torque lifts the thread: T = F P/2π, for both friction forms. */
    @Test
    void withoutFrictionOnlyThePitchIsLeft() {
        for (String form : new String[] {"friction", "screw"}) {
            Answer answer = answer(
                    "tightening",
                    M10 + "form=" + form + "; threadFriction=0; headFriction=0; headMean=13 mm; preload=10 kN");
            assertThat(number(answer, "torque")).isCloseTo(10e3 * 1.5e-3 / (2 * Math.PI), DUST);
            assertThat(number(answer, "pitchShare")).isCloseTo(1, within(1e-9));
        }
    }

    @Property(tries = 100)
    void sharesSumToOneAndScatterLiesEvenly(
            @ForAll @DoubleRange(min = 0.02, max = 0.3) double mu, @ForAll @DoubleRange(max = 0.9) double scatter) {
        Answer answer = answer(
                "tightening",
                M10 + "form=screw; headMean=13 mm; threadFriction=%.9f; headFriction=0.1; torque=40; scatter=%.9f",
                mu,
                scatter);
        assertThat(number(answer, "pitchShare") + number(answer, "threadShare") + number(answer, "headShare"))
                .isCloseTo(1, within(1e-12));
        assertThat((number(answer, "preloadLow") + number(answer, "preloadHigh")) / 2)
                .isCloseTo(number(answer, "preload"), Percentage.withPercentage(2.5));
        assertThat(number(answer, "scatter")).isGreaterThanOrEqualTo(scatter);
        String none = M10 + "nutFactor=0.2; torque=40; scatter=0; toolTolerance=0";
        assertThat(result(answer("tightening", none), "preloadLow"))
                .isEqualTo(result(answer("tightening", none), "preloadHigh"));
    }

    /** The two friction forms agree within 1 % at usual friction (VDI 2230-1 neglects tan φ tan ρ′). */
    @Property(tries = 50)
    void theTwoFrictionFormsAgree(@ForAll @DoubleRange(min = 0.08, max = 0.16) double mu) {
        String rest = "; threadFriction=%1$.9f; headFriction=%1$.9f; headMean=13 mm; preload=20 kN";
        assertThat(number(answer("tightening", M10 + "form=friction" + rest, mu), "torque"))
                .isCloseTo(
                        number(answer("tightening", M10 + "form=screw" + rest, mu), "torque"),
                        Percentage.withPercentage(1));
    }

    @Property(tries = 100)
    void stripLoadGrowsWithGoodLength(
            @ForAll @DoubleRange(min = 2, max = 30) double length, @ForAll @DoubleRange(max = 0.9) double torn) {
        String rest = M10 + "strengthClass=8.8; parent=A380; ";
        Answer whole = answer("thread-strip", rest + "engagement=%.9f mm", length);
        Answer damaged = answer("thread-strip", rest + "engagement=%.9f mm; damaged=%.9f mm", length, torn * length);
        assertThat(number(damaged, "holeStrip")).isCloseTo(number(whole, "holeStrip") * (1 - torn), DUST);
        assertThat(number(whole, "safeLoad")).isLessThanOrEqualTo(number(whole, "holeStrip"));
        assertThat(number(damaged, "safeTorque")).isLessThanOrEqualTo(number(whole, "safeTorque") * (1 + 1e-12));
    }

    /** At the needed engagement hole and bolt give way together. */
    @Test
    void atTheNeededEngagementHoleAndBoltAreEven() {
        String rest = M10 + "strengthClass=8.8; parent=A380; engagement=";
        double needed = number(answer("thread-strip", rest + "10 mm"), "neededEngagement");
        Answer even = answer("thread-strip", rest + needed * 1000 + " mm");
        assertThat(number(even, "holeStrip")).isCloseTo(number(even, "boltBreak"), DUST);
    }

    @Property(tries = 100)
    void theVerdictOnAHoleOnlyGetsWorse(@ForAll @DoubleRange(min = 1, max = 60) double torque) {
        String rest = "diameter=8 mm; pitch=1.25 mm; engagement=4.8 mm; strengthClass=8.8; parent=A380; torque=%.9f";
        Answer one = answer("thread-strip", rest, torque);
        Answer more = answer("thread-strip", rest, torque * 1.2);
        assertThat(rank(more)).isGreaterThanOrEqualTo(rank(one));
    }

    private static int rank(Answer answer) {
        return List.of("HOLDS", "AT_RISK", "STRIPS").indexOf(String.valueOf(result(answer, "verdict")));
    }

    /** Bending and dilation factors join where their ranges meet (ISO/TR 16224, VDI 2230-1). */
    @Test
    void factorsJoin() {
        String rest = M10 + "engagement=10 mm; strengthClass=8.8; parent=A380; bossWidth=";
        assertThat(number(answer("thread-strip", rest + "18.999 mm"), "dilation"))
                .isCloseTo(1, within(1e-3));
        assertThat(number(answer("thread-strip", rest + "19.001 mm"), "dilation"))
                .isEqualTo(1);
        assertThat(number(answer("thread-strip", rest + "14.1 mm"), "dilation")).isLessThan(0.8);
        String shear = M10 + "engagement=10 mm; strengthClass=8.8; parentShear=190 MPa; boltShear=";
        assertThat(number(answer("thread-strip", shear + "261.9 MPa"), "holeBending"))
                .isCloseTo(0.897, within(1e-3));
        assertThat(number(answer("thread-strip", shear + "261.9 MPa"), "boltBending"))
                .isCloseTo(0.897, within(1e-3));
    }

    /** A stronger case or a weaker bolt never wants a longer insert. */
    @Property(tries = 100)
    void insertsFollowTheStrengths(
            @ForAll @DoubleRange(min = 100, max = 300) double shear,
            @ForAll @DoubleRange(min = 400, max = 900) double rm) {
        String rest = M10 + "engagement=10 mm; parentShear=%.6f MPa; boltTensile=%.6f MPa";
        double here = number(answer("thread-strip", rest, shear, rm), "insertRatio");
        assertThat(number(answer("thread-strip", rest, shear + 50, rm), "insertRatio"))
                .isLessThanOrEqualTo(here);
        assertThat(number(answer("thread-strip", rest, shear, rm - 100), "insertRatio"))
                .isLessThanOrEqualTo(here);
    }

    @Property(tries = 100)
    void wrenchThereAndBackAndMirrored(
            @ForAll @DoubleRange(min = 5, max = 300) double torque,
            @ForAll @DoubleRange(max = 180) double angle,
            @ForAll @DoubleRange(max = 200) double extension) {
        String rest = "length=400 mm; extension=%.9f mm; angle=%.9f°; ";
        double setting = number(answer("wrench-extension", rest + "torque=%.9f", extension, angle, torque), "setting");
        Answer back = answer("wrench-extension", rest + "setting=%.12f", extension, angle, setting);
        assertThat(number(back, "torque")).isCloseTo(torque, DUST);
        Answer mirrored = answer("wrench-extension", rest + "torque=%.9f", extension, -angle, torque);
        assertThat(number(mirrored, "setting")).isCloseTo(setting, DUST);
        Answer square = answer("wrench-extension", rest + "torque=%.9f", extension, 90.0, torque);
        assertThat(number(square, "setting")).isCloseTo(torque, DUST);
    }

    /** K and friction back from trials that were made with them. */
    @Property(tries = 50)
    void frictionComesBackFromTrials(@ForAll @DoubleRange(min = 0.06, max = 0.3) double mu) {
        Answer made = answer(
                "tightening",
                M10 + "form=friction; threadFriction=%.9f; headFriction=%.9f; headMean=13 mm; torque=50",
                mu,
                mu);
        double preload = number(made, "preload");
        Answer found =
                answer("nut-factor", M10 + "torque=50; headMean=13 mm; preloads=%.6f N; %.6f N", preload, preload);
        assertThat(number(found, "friction")).isCloseTo(mu, within(1e-6));
        assertThat(number(found, "nutFactor")).isCloseTo(number(made, "nutFactor"), within(1e-6));
        assertThat(number(found, "scatter")).isCloseTo(0, within(1e-6));
    }

    /** A wrench that reads true passes; one beyond the limit fails at any setting (ISO 6789:2003). */
    @Property(tries = 100)
    void wrenchesPassInsideAndFailOutside(@ForAll @DoubleRange(min = -0.08, max = 0.08) double off) {
        Answer answer = answer(
                "torque-tool", "capacity=100; checks=20: %.9f; 60: 60; 100: %.9f", 20 / (1 + off), 100 / (1 + off));
        String verdict = String.valueOf(result(answer, "verdict"));
        assertThat(verdict)
                .isEqualTo(Math.abs(off) > 0.04 + 1e-9 ? "OUT" : Math.abs(off) < 0.04 - 1e-9 ? "IN" : verdict);
        assertThat(number(answer, "worst")).isCloseTo(off, within(1e-8));
    }

    /** A part of the range proves only that part. */
    @Test
    void aWrenchCheckedAtOnePointIsNotProven() {
        assertThat(result(answer("torque-tool", "capacity=100; checks=60: 60"), "verdict"))
                .isEqualTo("NOT_PROVEN");
    }

    /** Common practice, no source: 5/16-18 is taken for M8, 3/8-16 for M10, 1/2-13 for M12, 1/4-20 for M6. */
    @Test
    void looksAlikesAreNamed() {
        assertThat(answer("thread", "diameter=8 mm; pitch=1.25 mm").text()).contains("5/16-18 UNC");
        assertThat(answer("thread", "diameter=10 mm; pitch=1.5 mm").text()).contains("3/8-16 UNC");
        assertThat(answer("thread", "diameter=12 mm; pitch=1.75 mm").text()).contains("1/2-13 UNC", "M12x1.5");
        assertThat(answer("thread", "diameter=6 mm; pitch=1 mm").text()).contains("1/4-20 UNC");
    }
}
