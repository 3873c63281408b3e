package shimwright.rebuild.unit.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Test;
import shimwright.rebuild.unit.file.UnitFiles;
import shimwright.rebuild.unit.file.UnitTree;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.Fastener;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Unit;
import shimwright.rebuild.unit.model.UnitType;

/** One difference makes a variant: the others stay word for word as they were, and the new one is as the file with the change. */
class AsVariantTest {
    private static UnitType shipped(String name) {
        try (InputStream in = Objects.requireNonNull(UnitFiles.class.getResourceAsStream("/units/" + name))) {
            return UnitFiles.read(name, in.readAllBytes()).outcome().orElseThrow();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private static final UnitType IN_LINE = shipped("hollinbridge-hb5.yaml");

    private static PutEntry entry(UnitType type, String section, String id, String key, String value) {
        FileSection in = FileSection.find(section).orElseThrow();
        Map<String, Object> tree = UnitTree.of(type);
        Map<String, Object> fields =
                new LinkedHashMap<>(in.entries(tree).get(in.ids(tree).indexOf(id)));
        fields.put(key, value);
        return new PutEntry(section, id, fields);
    }

    /** What a variant is made of: everything but its own names. */
    private static Map<String, Object> parts(UnitType type, String variant) {
        Unit unit = type.resolve(variant);
        Map<String, Object> tree = UnitTree.of(unit.type());
        Map<String, Object> parts = new LinkedHashMap<>();
        for (FileSection section : FileSection.all()) {
            if (!List.of("variants", "tell_tales", FileSection.ONCE).contains(section.name())) {
                List<Map<String, Object>> entries = section.entries(tree);
                entries.forEach(entry -> entry.remove("only"));
                parts.put(section.name(), entries);
            }
        }
        return parts;
    }

    private static UnitType made(UnitType type, String like, UnitEdit change) {
        UnitType made = new AsVariant(like, "the place", "as it was", "otherwise", change)
                .on(type)
                .orElseThrow();
        assertThat(UnitFiles.read("made.yaml", UnitFiles.write(made)).problems())
                .isEmpty();
        String key = AsVariant.key(type);
        assertThat(made.variants().keySet()).hasSize(type.variants().size() + 1).contains(key);
        assertThat(made.tellTales())
                .anyMatch(tale -> "otherwise".equals(tale.shows().get(key)));
        type.variants().keySet().forEach(other -> {
            Map<String, Object> was = parts(type, other);
            parts(made, other)
                    .forEach((section, now) -> assertThat(now.equals(was.get(section)))
                            .as("%s of variant %s with %s", section, other, change)
                            .isTrue());
        });
        return made;
    }

    @Test
    void boltsOfAnotherCountAreTheVariantsAlone() {
        UnitType made = made(IN_LINE, "S", entry(IN_LINE, "fasteners", "A1", "quantity", "8"));
        Unit unit = made.resolve("A");
        assertThat(unit.fastener("A1").quantity()).isEqualTo(8);
        assertThat(made.resolve("L").fastener("A1").quantity()).isEqualTo(6);
        // what holds for the one that it is like holds for it: 5th of the short one
        assertThat(unit.type().gears()).anyMatch(pair -> pair.id().equals("g5") && pair.driver() == 39);
    }

    @Test
    void teethAStampAndAPartMore() {
        UnitType teeth = made(IN_LINE, "L", entry(IN_LINE, "gears", "g3", "driver", "27"));
        assertThat(teeth.resolve("A").type().gears()).anyMatch(pair -> pair.id().equals("g3") && pair.driver() == 27);
        Item bearing = IN_LINE.items().stream()
                .filter(item -> item.id().equals("input_bearing"))
                .findFirst()
                .orElseThrow();
        UnitType stamp = made(IN_LINE, "L", new UnitEdit.NameItem(bearing.id(), bearing.name(), "6307", true));
        assertThat(stamp.resolve("A").item("input_bearing").part()).isEqualTo("6307");
        UnitType more = made(IN_LINE, "S", new UnitEdit.AddItem("oil slinger", "", 1, "H01"));
        assertThat(more.resolve("A").type().items())
                .anyMatch(item -> item.name().equals("oil slinger"));
        assertThat(more.resolve("L").type().items())
                .noneMatch(item -> item.name().equals("oil slinger"));
        // a variant of a variant: 27 teeth and eight bolts
        UnitType both = made(teeth, "A", entry(teeth, "fasteners", "A1", "quantity", "8"));
        assertThat(both.resolve("B").type().gears()).anyMatch(pair -> pair.id().equals("g3") && pair.driver() == 27);
        assertThat(both.resolve("B").fastener("A1").quantity()).isEqualTo(8);
        assertThat(both.resolve("A").fastener("A1").quantity()).isEqualTo(6);
    }

    @Test
    void aClearanceAfterAStepThatStandsForEachVariantGoesInOnce() {
        UnitType made = made(IN_LINE, "S", entry(IN_LINE, "steps", "H01", "duration", "9 min"));
        assertThat(made.steps()).filteredOn(step -> step.id().equals("H01")).hasSize(2);
        AddClearance clearance = new AddClearance(
                "end play of the bell",
                Clearance.Sense.END_PLAY,
                0.05e-3,
                0.15e-3,
                "guess",
                "under it",
                new AddClearance.Shims(0.044, 0.052, 0.2e-3, 1e-3),
                true,
                "dial indicator 0.01 mm",
                "H01");
        assertThat(UnitEdit.text(made, clearance).refusals()).isEmpty();
    }

    @Test
    void anyBoltsOfAnyUnitAndAnyPartThatCanBeLeftOut() {
        Random random = new Random(4);
        int without = 0;
        for (String name : List.of("hollinbridge-hb5.yaml", "ambleholt-l5-74.yaml")) {
            UnitType type = shipped(name);
            String like = type.variants().keySet().iterator().next();
            List<Fastener> bolts = type.resolve(like).type().fasteners();
            Fastener bolt = bolts.get(random.nextInt(bolts.size()));
            FileSection in = FileSection.find("fasteners").orElseThrow();
            if (in.ids(UnitTree.of(type)).contains(bolt.id()) && bolt.quantity() > 1) {
                made(type, like, entry(type, "fasteners", bolt.id(), "quantity", "17"));
            }
            for (int n = 0; n < 6; n++) {
                Item item = type.items().get(random.nextInt(type.items().size()));
                AsVariant edit =
                        new AsVariant(like, item.name(), "there is one", "none", new UnitEdit.RemoveItem(item.id()));
                if (edit.on(type).isOk()) {
                    without++;
                    UnitType made = made(type, like, new UnitEdit.RemoveItem(item.id()));
                    assertThat(made.resolve(AsVariant.key(type)).type().items())
                            .noneMatch(one -> one.id().equals(item.id()));
                }
            }
        }
        assertThat(without).isPositive();
    }
}
