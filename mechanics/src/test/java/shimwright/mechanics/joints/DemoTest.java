package shimwright.mechanics.joints;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.mechanics.registry.Registry;
import shimwright.mechanics.worksheet.Answer;

/** The invented transaxle: its fastener table and the results it expects. */
class DemoTest {
    private static double value(Map<String, String> given, String sheet, String result) {
        Answer answer = Registry.find(sheet)
                .orElseThrow()
                .answer(given, UnitSystem.METRIC)
                .orElseThrow();
        Object found = ((Map<?, ?>) requireNonNull(answer.json().get("result"))).get(result);
        return (Double) requireNonNull(((Map<?, ?>) requireNonNull(found)).get("value"));
    }

    /** Rows V1 to V11. The table took the stress area as ISO 898-1 prints it (M6 20.1 mm²), hence 0.6 of a percent. */
    @ParameterizedTest
    @CsvSource({
        "V1, 10, 1.5, 10.9, 0.18, 65, 36.1, 75",
        "V2, 8, 1.25, 8.8, 0.18, 20, 13.9, 65",
        "V3, 8, 1.25, 8.8, 0.18, 20, 13.9, 65",
        "V4, 8, 1.25, 8.8, 0.18, 20, 13.9, 65",
        "V5, 10, 1.5, 8.8, 0.18, 40, 22.2, 66",
        "V6, 8, 1.25, 8.8, 0.18, 20, 13.9, 65",
        "V7, 6, 1, 8.8, 0.18, 8, 7.4, 64",
        "V10, 8, 1.25, 8.8, 0.18, 22, 15.3, 72",
        "V11, 8, 1.25, 8.8, 0.18, 20, 13.9, 65",
    })
    void fastenerTable(
            String id, String d, String p, String mark, String k, String torque, double preload, double proofPercent) {
        Map<String, String> given =
                Map.of("diameter", d, "pitch", p, "strengthClass", mark, "nutFactor", k, "torque", torque);
        assertThat(value(given, "tightening", "preload")).as(id).isCloseTo(preload * 1000, within(50.0));
        assertThat(value(given, "tightening", "proofShare")).as(id).isCloseTo(proofPercent / 100, within(0.006));
    }

    /** Rows V8 and V9: collar nuts, stress in the thread. */
    @ParameterizedTest
    @CsvSource({"V8, 30, 180, 40.0, 62", "V9, 22, 110, 33.3, 100"})
    void collarNuts(String id, String d, String torque, double preload, double stress) {
        Map<String, String> given = Map.of("diameter", d, "pitch", "1.5", "nutFactor", "0.15", "torque", torque);
        assertThat(value(given, "tightening", "preload")).as(id).isCloseTo(preload * 1000, within(50.0));
        assertThat(value(given, "tightening", "stress")).as(id).isCloseTo(stress * 1e6, within(0.5e6));
    }

    /** Expected BT-1: crown bolt preload kN and share of proof. */
    @Test
    void crownBolt() {
        Map<String, String> given =
                Map.of("diameter", "10", "pitch", "1.5", "strengthClass", "10.9", "nutFactor", "0.18", "torque", "65");
        assertThat(value(given, "tightening", "preload")).isCloseTo(36.1e3, within(50.0));
        assertThat(value(given, "tightening", "proofShare")).isCloseTo(0.750, within(0.0005));
    }

    /** Expected PB-6: the pinion spacer under its nut gets shorter by 11.6 µm. */
    @Test
    void pinionSpacer() {
        Map<String, String> given = new HashMap<>(Map.of(
                "diameter", "30", "pitch", "1.5", "nutFactor", "0.15", "torque", "180", "sleeveLength", "18.34"));
        given.put("sleeveArea", "306.1 mm2");
        assertThat(value(given, "tightening", "sleeveShortening")).isCloseTo(11.6e-6, within(0.05e-6));
    }

    /** Wear item C18: new 44 to 52 N at 20.0 mm, limit 39, read 41: kept. */
    @Test
    void detentSpring() {
        Map<String, String> given = Map.of(
                "readings", "20 mm: 41 N",
                "freeLength", "27.4 mm",
                "newFreeLength", "27.8 mm",
                "workingLength", "20 mm",
                "newLoad", "48 N",
                "limitLoad", "39 N");
        Answer answer = Registry.find("spring-test")
                .orElseThrow()
                .answer(given, UnitSystem.METRIC)
                .orElseThrow();
        assertThat(answer.text()).contains("limit: in", "set: 0.40 mm");
        assertThat(value(given, "spring-test", "loss")).isCloseTo(7.0 / 48, within(1e-9));
    }

    /** Left cover V2, nine bolts, star in two steps of 10 and 20 N·m. */
    @Test
    void leftCover() {
        Answer answer = Registry.find("bolt-order")
                .orElseThrow()
                .answer(Map.of("count", "9", "start", "1", "stages", "2", "torque", "20"), UnitSystem.METRIC)
                .orElseThrow();
        assertThat(answer.text()).contains("torque: 10.0 N·m", "torque: 20.0 N·m");
    }

    /** Pressure test of day 20: 0.200 bar to 0.194 bar. */
    @Test
    void airTest() {
        Map<String, String> given = new HashMap<>(Map.of(
                "volume", "6 L",
                "startPressure", "0.200 bar",
                "endPressure", "0.194 bar",
                "startTemperature", "20 C",
                "endTemperature", "20 C",
                "time", "10 min",
                "resolution", "1 mbar"));
        given.put("temperatureStep", "0 K");
        assertThat(value(given, "leak-test", "leak")).isCloseTo(6e-3 * 600 / 600 / 101325, within(1e-12));
    }
}
