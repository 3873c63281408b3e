package shimwright.rebuild.unit.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import shimwright.rebuild.unit.model.Fastener;
import shimwright.rebuild.unit.model.Section;
import shimwright.rebuild.unit.model.Statistic;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.UnitType;
import shimwright.rebuild.unit.model.UnitType.Check;
import shimwright.rebuild.unit.model.WearLimit;

/** What a unit file can say beyond the plain case is read, written and allowed by the schema alike. */
class NewKeysTest {
    /** The starter with every optional key of checks, wear limits, steps, gears and shafts in use, and two castings. */
    private static String full() {
        String text = UnitFiles.starter();
        text = swap(text, "clearance: c}\n", """
                clearance: c}
                      - id: cups
                        what: depth of both cups
                        kind: length
                        places: 3
                        pieces: [front, rear]
                        nominal: [8.01 mm, 11.30 mm]
                        within: 0.5 mm
                        spread: 0.02 mm
                        gauge: DI
                      - id: again
                        what: the same once it is cold
                        kind: length
                        lower: -0.01 mm
                        upper: 0.01 mm (0.0004 in)
                        pieces: [front, rear]
                        relative_to: H1/cups
                      - id: gap
                        what: gap under the snap ring
                        kind: length
                        upper: 0.15 mm
                        judged_on: difference
                        pieces: [depth of the groove, height of the ring]
                        reading_factor: 0.5
                        reading_offset: -0.01 mm
                """);
        text = swap(
                text,
                "limit: 0.05 mm,",
                "limit: 0.05 mm, places: 3, pieces: [left, right], judged_on: mean,"
                        + " reading_factor: 0.4, gauge: DI,");
        text = swap(text, "fasteners: [V1]", "fasteners: [V1]\n    tightened: {V1: 4}\n    windows: [W1, W2]");
        text = swap(text, "\nsteps:\n", """

                windows:
                  - {id: W1, name: sealant laid, longest: 30 min, why: it skins}
                  - {id: W2, name: sealant joined, longest: 15 min, why: it sets}
                steps:
                """);
        text = swap(text, "200 216 25 mm],", "200 216 25 mm], bores: [0 40 12 mm],");
        text = swap(text, "\nfasteners:\n", "\ngears: [{id: g4, name: 4th, straight: true}]\nfasteners:\n");
        return swap(
                text,
                "  castings:\n",
                "  castings:\n    - {name: main case, item: case, points: [0 60 mm, 100 60 mm]}\n");
    }

    private static String swap(String text, String old, String fresh) {
        assertThat(text).contains(old);
        int at = text.indexOf(old);
        return text.substring(0, at) + fresh + text.substring(at + old.length());
    }

    private static UnitType read(String text) {
        return UnitFiles.read("full.yaml", text).outcome().orElseThrow();
    }

    @Test
    void whatIsSaidIsRead() {
        UnitType type = read(full());
        List<Check> checks = type.holdPoints().get(0).checks();
        assertThat(checks.get(1).pieces()).containsExactly("front", "rear");
        assertThat(checks.get(1).nominal()).extracting(Object::toString).containsExactly("8.01 mm", "11.30 mm");
        assertThat(checks.get(1).within().orElseThrow().si()).isCloseTo(0.0005, within(1e-12));
        assertThat(checks.get(1).gauge()).isEqualTo("DI");
        assertThat(checks.get(2).relativeTo()).isEqualTo("H1/cups");
        assertThat(checks.get(3).judgedOn()).isEqualTo(Statistic.DIFFERENCE);
        assertThat(checks.get(3).value(0.0002)).isCloseTo(0.0001 - 0.00001, within(1e-12));
        WearLimit wear = type.wearLimits().get(0);
        assertThat(wear.judgedOn()).isEqualTo(Statistic.MEAN);
        assertThat(wear.readingsEach()).isEqualTo(3);
        Step last = type.steps().get(2);
        Fastener bolts = type.fasteners().get(0);
        assertThat(bolts.quantity()).isEqualTo(8);
        assertThat(last.tightens(bolts)).isEqualTo(4);
        assertThat(type.steps().get(1).tightens(bolts)).isEqualTo(8);
        assertThat(last.windows()).containsExactly("W1", "W2");
        assertThat(type.gears().get(0).ratio()).isEqualTo(1);
        assertThat(type.section().shafts().get(0).bores()).hasSize(1);
        assertThat(type.section().castings()).extracting(Section.Outline::item).containsExactly("case", "cover");
    }

    @Test
    void whatIsReadIsWrittenAndReadAgain() {
        UnitType type = read(full());
        String written = UnitFiles.write(type);
        assertThat(read(written)).isEqualTo(type);
        assertThat(UnitFiles.write(read(written))).isEqualTo(written);
        assertThat(written).contains("0.01 mm (0.0004 in)", "windows: [W1, W2]", "tightened: {V1: 4}");
    }

    @Test
    void theSchemaAllowsIt() {
        assertThat(UnitSchemaTest.faults(full())).isEmpty();
        assertThat(UnitSchemaTest.faults(full().replace("judged_on: mean", "judged_on: means")))
                .isNotEmpty();
    }

    @Test
    void oneWindowUnderItsOlderNameIsStillRead() {
        String older = full().replace("windows: [W1, W2]", "window: W1");
        assertThat(read(older).steps().get(2).windows()).containsExactly("W1");
        assertThat(UnitSchemaTest.faults(older)).isEmpty();
        assertThat(read(full().replace("windows: [W1, W2]", "window: \"\""))
                        .steps()
                        .get(2)
                        .windows())
                .isEmpty();
        String both = full().replace("windows: [W1, W2]", "windows: [W1]\n    window: W2");
        assertThat(UnitFileTexts.sentences(both))
                .singleElement()
                .asString()
                .startsWith(UnitFileTexts.place(both, "window: W2"))
                .contains("step \"S3\" has both \"windows\" and \"window\"");
        assertThat(UnitFileTexts.sentences(full().replace("windows: [W1, W2]", "window: W9")))
                .singleElement()
                .asString()
                .contains("\"W9\" is not among the windows");
    }
}
