package shimwright.rebuild.complaint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import shimwright.rebuild.demo.DemoUnit;
import shimwright.rebuild.unit.model.Unit;

/** Teeth times turns, reckoned by hand for both shipped units; common practice, no source. */
class HumTest {
    private static final double RPM = 2 * Math.PI / 60;

    private static double mesh(Unit unit, String engaged, double rpm, String pair) {
        return Hum.of(unit, engaged, rpm * RPM).stream()
                .filter(hum -> hum.pair().id().equals(pair))
                .mapToDouble(Hum::mesh)
                .findFirst()
                .orElse(Double.NaN);
    }

    @Test
    void everyPairOnTheInputHumsAndTheFinalDriveByTheGearThatIsIn() {
        Unit unit = DemoUnit.A;
        // 3000 rpm are 50 turns a second
        assertThat(mesh(unit, "g3", 3000, "g3")).isCloseTo(25 * 50, within(1e-9));
        assertThat(mesh(unit, "g3", 3000, "g5")).isCloseTo(37 * 50, within(1e-9));
        assertThat(mesh(unit, "g3", 3000, "final")).isCloseTo(9 * 50 * 25 / 33.0, within(1e-9));
        assertThat(mesh(unit, "g5", 3000, "final")).isCloseTo(9 * 50 * 37 / 27.0, within(1e-9));
        assertThat(mesh(unit, "", 3000, "final")).as("in neutral it stands").isNaN();
    }

    @Test
    void behindTheHeadPairTheCountershaftTurnsInEveryGear() {
        Unit unit = DemoUnit.inLine().resolve("S");
        List<Hum> neutral = Hum.of(unit, "", 1500 * RPM);
        assertThat(neutral).isNotEmpty();
        Hum head = neutral.get(0);
        double counter = 25.0 * head.pair().driver() / head.pair().driven();
        assertThat(head.mesh()).isCloseTo(25.0 * head.pair().driver(), within(1e-9));
        assertThat(neutral.subList(1, neutral.size()))
                .allSatisfy(hum ->
                        assertThat(hum.mesh()).isCloseTo(counter * hum.pair().driver(), within(1e-9)));
    }

    @Test
    void whatAPhoneHearsIsLikeItOrItsMultiples() {
        Hum hum = Hum.of(DemoUnit.A, "g3", 3000 * RPM).get(2);
        assertThat(hum.like(hum.mesh() * 1.03)).isTrue();
        assertThat(hum.like(hum.mesh() * 2.01)).isTrue();
        assertThat(hum.like(hum.mesh() * 1.5)).isFalse();
    }
}
