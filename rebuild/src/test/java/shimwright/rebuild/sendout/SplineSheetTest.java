package shimwright.rebuild.sendout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import shimwright.mechanics.conformity.Verdict;
import shimwright.mechanics.fit.Material;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.mechanics.working.Working;
import shimwright.rebuild.job.Entry.Accept;

/** The sheet that goes out with a spline, how it goes home, and its acceptance. Sources beside each value; numbers of the pair: own. */
class SplineSheetTest {
    private static final double MM = 1e-3;

    private static SplineHome home(double tight, double loose, double ceiling) {
        return SplineHome.of(
                        new SplineHome.Fit(
                                33 * MM,
                                Math.toRadians(30),
                                tight * MM,
                                loose * MM,
                                26 * MM,
                                62 * MM,
                                0,
                                0,
                                ceiling + 273.15),
                        new Working())
                .orElseThrow();
    }

    @Test
    void aSplineWithPlayGoesHomeByHandAndNoPressIsOffered() {
        SplineHome home = home(0.01, 0.03, 150);
        assertThat(home.byHand()).isTrue();
        assertThat(home.hub()).isEmpty();
        assertThat(home.most()).isZero();
        assertThat(home.say()).contains("by hand", "no press, no hammer");
    }

    /** The shipped unit says of this spline: flanks 0 to 0.02 mm tight, hub at 110 degC. */
    @Test
    void twoHundredthsTightNeedTheHeatThatTheUnitFileHas() {
        SplineHome home = home(-0.02, 0, 150);
        assertThat(home.hub().orElseThrow() - 273.15).isCloseTo(110, within(5.0));
        assertThat(home.say()).contains("drops on", "Stop and look at");
        assertThat(home(-0.02, 0, 100).say()).contains("Heat alone does not do it", "or ask for less interference");
    }

    /** Shigley's Mechanical Engineering Design, 9th ed., eq. 7-39 for a solid shaft of the same steel, from memory. */
    @Test
    void theForceIsThatOfThePlainFitOverTheFlanksThatStandAtAnAngle() {
        double e = Material.STEEL.data().modulus();
        double d = 33 * MM;
        double outer = 62 * MM;
        double over = 0.02 * MM / Math.tan(Math.toRadians(30));
        double pressure = e * over * (outer * outer - d * d) / (2 * d * outer * outer);
        double plain = 0.20 * pressure * Math.PI * d * 26 * MM;
        assertThat(home(-0.02, 0, 150).most()).isCloseTo(plain / Math.sin(Math.toRadians(30)), within(0.002 * plain));
        assertThat(home(-0.02, 0, 150).least()).isZero();
        assertThat(home(-0.02, -0.01, 150).least())
                .isPositive()
                .isLessThan(home(-0.02, -0.01, 150).most());
    }

    /** The involute itself, ISO 21771-1: half a space as an angle is arc / d + inv α − inv α(r); a hub that grows by ε scales as a whole. */
    @Property(tries = 200)
    void aGrowingHubOpensItsSpacesByTheTangent(
            @ForAll @DoubleRange(min = 0.35, max = 0.6) double angle,
            @ForAll @DoubleRange(min = 0.1, max = 2) double perThousand) {
        double grown = perThousand / 1000;
        double reference = 16.5 * MM;
        double arc = Math.PI * MM / 2;
        double before = space(reference, reference, angle, arc);
        double after = (1 + grown) * space(reference / (1 + grown), reference, angle, arc);
        double gain = 2 * reference * grown * Math.tan(angle);
        assertThat(after - before).isCloseTo(gain, within(0.02 * gain));
    }

    private static double space(double radius, double reference, double angle, double arc) {
        double at = Math.acos(reference * Math.cos(angle) / radius);
        return radius * (arc / reference + 2 * (involute(angle) - involute(at)));
    }

    private static double involute(double angle) {
        return Math.tan(angle) - angle;
    }

    private static Map<String, String> pair() {
        return new LinkedHashMap<>(Map.of(
                "teeth", "24",
                "module", "2 mm",
                "pressureAngle", "30°",
                "overPins", "54.050 mm",
                "shaftPin", "4 mm",
                "betweenPins", "42.72139 mm",
                "hubPin", "3.5 mm",
                "clearance", "0.030 mm",
                "tolerance", "0.020 mm",
                "flanks", "soft"));
    }

    private static Map<String, String> more() {
        return new LinkedHashMap<>(Map.of(
                "length", "30 mm",
                "hubOutside", "80 mm",
                "shaftBore", "0 mm",
                "spare", "0.01 mm",
                "ceiling", "150 °C",
                "runOut", "0.03 mm",
                "keepCool", "bearing seat beside it, under 120 degC",
                "cracks", "dye, before and after"));
    }

    @Test
    void theSheetSaysSizeMateStockAndHowItIsAccepted() {
        SplineSheet sheet = SplineSheet.of(pair(), more(), UnitSystem.METRIC).orElseThrow();
        assertThat(sheet.work())
                .containsKeys(
                        "Asked for",
                        "Measured mate",
                        "Finished size",
                        "Stock",
                        "Keep cool",
                        "Hardness",
                        "Straight",
                        "Cracks",
                        "Going home");
        assertThat(sheet.work().get("Going home")).contains("by hand");
        assertThat(sheet.accept()).extracting(Accept::id).containsExactly("pins", "runout", "cracks", "mate");
        Accept pins = sheet.accept().get(0);
        // the finished size is over the worn one, by what is put back on
        assertThat(pins.limits().get("lower")).isGreaterThan(54.050 * MM);
        assertThat(pins.limits().get("upper")).isGreaterThan(pins.limits().get("lower"));
        assertThat(sheet.working()).extracting(line -> line.symbol()).contains("each flank");
    }

    @Test
    void aHardenedSplineIsAskedForItsHardnessAndEveryFaultComesAtOnce() {
        Map<String, String> in = pair();
        in.put("flanks", "case hardened");
        in.put("hubPin", "x");
        Map<String, String> more = more();
        more.remove("keepCool");
        more.put("length", "3 kg");
        List<String> said = SplineSheet.of(in, more, UnitSystem.METRIC).refusals().stream()
                .map(Refusal::key)
                .toList();
        assertThat(said).contains("in.hubPin", "more.keepCool", "more.length");
        Map<String, String> hard = pair();
        hard.put("flanks", "case hardened");
        hard.put("hardnessPlan", "nitrided 0.3 deep");
        assertThat(SplineSheet.of(hard, more(), UnitSystem.METRIC).refusals())
                .extracting(Refusal::key)
                .containsExactly("more.hardLeast");
        Map<String, String> asked = more();
        asked.put("hardLeast", "55");
        asked.put("hardMost", "60");
        assertThat(SplineSheet.of(hard, asked, UnitSystem.METRIC)
                        .orElseThrow()
                        .work()
                        .get("Hardness"))
                .isEqualTo("55 to 60 HRC; nitrided 0.3 deep");
    }

    /** What is said of a fault that is there alone is said as well where others are there: nobody sends the form twice. */
    @Test
    void eachFaultIsSaidAmongAllOthersToo() {
        Map<String, Map<String, String>> faults = new LinkedHashMap<>();
        faults.put("a pin that is no number", Map.of("in.hubPin", "x"));
        faults.put("a size that no tooth has", Map.of("in.overPins", "30 mm"));
        faults.put("hard flanks without a plan", Map.of("in.flanks", "case hardened", "more.hardLeast", "55"));
        faults.put("a dial without its radius", Map.of("in.dialPlay", "0.1 mm"));
        faults.put("nothing kept cool", Map.of("more.keepCool", " "));
        faults.put("hardness the wrong way round", Map.of("more.hardLeast", "60", "more.hardMost", "50"));
        faults.put("a hub inside its spline", Map.of("more.hubOutside", "40 mm", "in.clearance", "-0.02 mm"));
        faults.put("run-out in kilograms", Map.of("more.runOut", "3 kg"));
        List<String> together = said(faults.values().stream().toList());
        faults.forEach((what, fault) -> assertThat(together).as(what).containsAll(said(List.of(fault))));
        assertThat(together).doesNotHaveDuplicates().contains("in.hardnessPlan", "more.hubOutside");
    }

    private static List<String> said(List<Map<String, String>> faults) {
        Map<String, String> in = pair();
        Map<String, String> more = more();
        for (Map<String, String> fault : faults) {
            fault.forEach(
                    (key, text) -> (key.startsWith("in.") ? in : more).put(key.substring(key.indexOf('.') + 1), text));
        }
        List<String> keys = SplineSheet.of(in, more, UnitSystem.METRIC).refusals().stream()
                .map(Refusal::key)
                .filter(key -> faults.size() == 1 || !key.isEmpty())
                .toList();
        assertThat(keys).isNotEmpty();
        return keys;
    }

    @ParameterizedTest
    @CsvSource({
        "54.110, 1, IN",
        "54.141, 1, OUT",
        "54.1395, 1, NOT_PROVEN",
        "54.1395, 0, IN",
        "54.099, 1, OUT",
        "54.1005, 1, NOT_PROVEN"
    })
    void whatComesBackIsAcceptedByItsNumbersWithTheirDoubt(double millimetres, double micrometres, Verdict verdict) {
        Accept pins = new Accept(
                "pins", "over pins", Kind.LENGTH, Map.of("lower", 54.100 * MM, "upper", 54.140 * MM), "three places");
        assertThat(Acceptance.read(pins, List.of(54.120 * MM, millimetres * MM), micrometres * 1e-6, UnitSystem.METRIC)
                        .verdict())
                .isEqualTo(verdict);
    }
}
