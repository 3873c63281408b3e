package shimwright.rebuild.unit.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.rebuild.unit.file.UnitFiles;
import shimwright.rebuild.unit.file.UnitTree;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.Component;
import shimwright.rebuild.unit.model.Fastener;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.UnitType;

/** Every entry of a unit file as a form, and back. */
class EntryFormTest {
    static UnitType shipped(String name) {
        try (InputStream in = EntryFormTest.class.getResourceAsStream("/units/" + name + ".yaml")) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return UnitFiles.read(name, text).outcome().orElseThrow();
        } catch (IOException broken) {
            throw new java.io.UncheckedIOException(broken);
        }
    }

    static Stream<String> names() {
        return Stream.of("ambleholt-l5-74", "hollinbridge-hb5");
    }

    /** What a browser sends for fields that nobody touched. */
    static Map<String, String> untouched(List<FormField> fields) {
        Map<String, String> typed = new LinkedHashMap<>();
        for (FormField field : fields) {
            if (field.widget() == FormField.Widget.YES) {
                if (field.value().equals("true")) {
                    typed.put(field.name(), "yes");
                }
            } else if (field.widget() == FormField.Widget.ORIGIN) {
                typed.put(field.name() + "1", field.source());
                typed.put(field.name() + "2", field.words());
            } else if (field.groups().isEmpty()) {
                typed.put(field.name(), field.value());
            }
            field.groups().forEach(group -> typed.putAll(untouched(group)));
        }
        return typed;
    }

    private static Map<String, String> form(UnitType type, FileSection section, String id) {
        Map<String, Object> tree = UnitTree.of(type);
        int index = section.ids(tree).indexOf(id);
        return untouched(EntryForm.of(section, section.entries(tree).get(index), type, UnitSystem.METRIC));
    }

    private static Outcome<UnitType> put(UnitType type, String section, String id, Map<String, String> typed) {
        FileSection in = FileSection.find(section).orElseThrow();
        return new PutEntry(section, id, TypedEntry.of(in, typed, UnitSystem.METRIC)).on(type);
    }

    @ParameterizedTest
    @MethodSource("names")
    void everyEntryOfEverySectionComesBackAsItWas(String name) {
        UnitType type = shipped(name);
        Map<String, Object> tree = UnitTree.of(type);
        for (FileSection section : FileSection.all()) {
            List<String> ids = section.ids(tree);
            for (int i = 0; i < ids.size(); i += Math.max(1, ids.size() - 1)) {
                Outcome<UnitType> same = put(type, section.name(), ids.get(i), form(type, section, ids.get(i)));
                assertThat(same.refusals())
                        .as(section.name() + " " + ids.get(i))
                        .isEmpty();
                assertThat(UnitFiles.write(same.orElseThrow()))
                        .as(section.name() + " " + ids.get(i))
                        .isEqualTo(UnitFiles.write(type));
            }
        }
    }

    @Test
    void everyKeyOfTheFileHasItsField() {
        UnitType type = shipped("ambleholt-l5-74");
        List<String> sections =
                FileSection.all().stream().map(FileSection::name).toList();
        FileSection once = FileSection.find(FileSection.ONCE).orElseThrow();
        List<String> fields = EntryForm.of(once, Map.of(), type, UnitSystem.METRIC).stream()
                .map(FormField::name)
                .toList();
        assertThat(fields).contains("mass", "fluid", "setting_order", "proof", "lessons", "scheme", "station_change");
        assertThat(Component.of(UnitType.class).stream().map(Component::key))
                .allMatch(key -> sections.contains(key)
                        || fields.contains(key)
                        || List.of("format", "id", "section").contains(key));
        assertThat(sections).contains("shafts", "castings", "tools", "turn_over", "hold_points", "choices");
    }

    @Test
    void aFaultStandsAtItsFieldHoweverDeep() {
        UnitType type = shipped("ambleholt-l5-74");
        String hold = type.holdPoints().get(0).id();
        FileSection section = FileSection.find("hold_points").orElseThrow();
        Map<String, String> typed = new LinkedHashMap<>(form(type, section, hold));
        typed.put("checks.0.gauge", "no such gauge");
        typed.put("chance", "often");
        Map<String, Object> entry = TypedEntry.of(section, typed, UnitSystem.METRIC);
        List<Refusal> faults = new PutEntry("hold_points", hold, entry).on(type).refusals();
        List<FormField> again = EntryForm.of(section, entry, type, UnitSystem.METRIC);
        assertThat(faults.stream().map(fault -> TypedEntry.atField(fault, again).key()))
                .containsExactlyInAnyOrder("checks.0.gauge", "chance");
    }

    @Test
    void aBareNumberIsInTheUnitsOfThePerson() {
        UnitType type = shipped("ambleholt-l5-74");
        Fastener bolt = type.fasteners().get(0);
        FileSection section = FileSection.find("fasteners").orElseThrow();
        Map<String, String> typed = new LinkedHashMap<>(form(type, section, bolt.id()));
        typed.put("torque", "20");
        typed.put("nut_factor", "");
        typed.put("preload", "");
        Map<String, Object> inch = TypedEntry.of(section, typed, UnitSystem.INCH);
        Outcome<UnitType> changed = new PutEntry("fasteners", bolt.id(), inch).on(type);
        assertThat(changed.orElseThrow().fasteners().get(0).torque())
                .isCloseTo(20 * 1.3558179483314004, org.assertj.core.data.Offset.offset(1e-9)); // NIST SP 811, App. B.8
        typed.put("torque", "27,5");
        assertThat(put(type, "fasteners", bolt.id(), typed)
                        .orElseThrow()
                        .fasteners()
                        .get(0)
                        .torque())
                .isEqualTo(27.5);
    }

    @Test
    void anotherIdIsFollowedByWhatRefersToIt() {
        UnitType type = shipped("ambleholt-l5-74");
        String old = type.fasteners().get(0).id();
        FileSection section = FileSection.find("fasteners").orElseThrow();
        Map<String, String> typed = new LinkedHashMap<>(form(type, section, old));
        typed.put("id", "ZZ1");
        UnitType changed = put(type, "fasteners", old, typed).orElseThrow();
        List<String> by = type.steps().stream()
                .filter(step -> step.fasteners().contains(old))
                .map(Step::id)
                .toList();
        assertThat(by).isNotEmpty();
        assertThat(changed.steps().stream()
                        .filter(step -> step.fasteners().contains("ZZ1"))
                        .map(Step::id))
                .containsExactlyElementsOf(by);
    }

    @Test
    void whatIsReferredToGoesOnlyWithItsMentions() {
        UnitType type = shipped("ambleholt-l5-74");
        String tool = type.clearances().get(0).gauge();
        List<Refusal> kept = new DropEntry("tools", tool, false).on(type).refusals();
        assertThat(kept).isNotEmpty().allMatch(fault -> !fault.place().contains(".yaml"));
        String bolt = type.fasteners().get(0).id();
        assertThat(new DropEntry("fasteners", bolt, false).on(type).refusals()).isNotEmpty();
        UnitType without = new DropEntry("fasteners", bolt, true).on(type).orElseThrow();
        assertThat(without.steps()).noneMatch(step -> step.fasteners().contains(bolt));
    }

    @Test
    void aNewEntryNamesItselfAndNothingIsWrittenOverAnother() {
        UnitType type = shipped("ambleholt-l5-74");
        UnitType more = new PutEntry("tools", "", Map.of("value", "torque angle disc"))
                .on(type)
                .orElseThrow();
        assertThat(more.tools()).containsValue("torque angle disc");
        String there = type.tools().keySet().iterator().next();
        assertThat(new PutEntry("tools", "", Map.of("key", there, "value", "x"))
                        .on(type)
                        .refusals())
                .hasSize(1);
        String second = type.fasteners().get(1).id();
        Map<String, String> typed = new LinkedHashMap<>(form(
                type,
                FileSection.find("fasteners").orElseThrow(),
                type.fasteners().get(0).id()));
        typed.put("id", second);
        assertThat(put(type, "fasteners", type.fasteners().get(0).id(), typed).isOk())
                .isFalse();
        assertThat(new PutEntry("nothing", "", Map.of()).on(type).isOk()).isFalse();
        assertThat(new DropEntry("items", "nothing", true).on(type).isOk()).isFalse();
        assertThat(new DropEntry("unit", "unit", true).on(type).isOk()).isFalse();
    }

    @Test
    void aClearanceGetsAFurtherPlaceInTheEmptyGroup() {
        UnitType type = shipped("ambleholt-l5-74");
        Clearance clearance = type.clearances().get(0);
        FileSection section = FileSection.find("clearances").orElseThrow();
        Map<String, String> typed = new LinkedHashMap<>(form(type, section, clearance.id()));
        int next = clearance.positions().size();
        typed.put("positions." + next + ".id", "more");
        typed.put("positions." + next + ".where", "under the second cup");
        typed.put("positions." + next + ".family", clearance.positions().get(0).family());
        typed.put("positions." + next + ".effect", "1");
        UnitType changed = put(type, "clearances", clearance.id(), typed).orElseThrow();
        assertThat(changed.clearances().get(0).positions()).hasSize(next + 1);
        typed.put("positions." + next + ".gone", "yes");
        assertThat(put(type, "clearances", clearance.id(), typed)
                        .orElseThrow()
                        .clearances()
                        .get(0)
                        .positions())
                .hasSize(next);
    }
}
