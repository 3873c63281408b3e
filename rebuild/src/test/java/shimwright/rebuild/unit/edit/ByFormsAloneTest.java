package shimwright.rebuild.unit.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.rebuild.unit.begin.Construction;
import shimwright.rebuild.unit.begin.FirstUnit;
import shimwright.rebuild.unit.file.UnitFiles;
import shimwright.rebuild.unit.file.UnitTree;
import shimwright.rebuild.unit.model.UnitType;

/**
 * A unit begun from nothing becomes one of the shipped files by its forms alone: what it does not have is dropped, what it has is
 * typed entry by entry, as the page sends it, and after each entry the file is sound.
 */
class ByFormsAloneTest {
    private static final int PASSES = 12;

    private UnitType now = begun();
    private Map<String, Object> tree = UnitTree.of(now);

    private static UnitType begun() {
        Construction any = new Construction(
                Construction.Layout.IN_LINE,
                Set.of(),
                List.of(1, 1, 1, 1, 1),
                0,
                Construction.Reverse.SLIDING,
                Construction.Shift.RAILS,
                1);
        return UnitFiles.read("b.yaml", FirstUnit.text(any, "Some", "Box").orElseThrow())
                .outcome()
                .orElseThrow();
    }

    private void take(Outcome<UnitType> changed) {
        if (changed.isOk()) {
            now = changed.orElseThrow();
            tree = UnitTree.of(now);
        }
    }

    private void dropWhatItDoesNotHave(UnitType box) {
        for (FileSection section : FileSection.all()) {
            if (section.single()) {
                continue;
            }
            List<String> has = section.ids(UnitTree.of(box));
            for (String id : section.ids(tree)) {
                if (!has.contains(id)) {
                    take(new DropEntry(section.name(), id, true).on(now));
                }
            }
        }
    }

    /** Types an entry; what is refused of it is left out, once the rest of the file is there it is typed again. */
    private void type(FileSection section, String id, Map<String, Object> entry, UnitType box) {
        Map<String, String> typed =
                new HashMap<>(EntryFormTest.untouched(EntryForm.of(section, entry, box, UnitSystem.METRIC)));
        String was = section.ids(tree).contains(id) ? id : "";
        for (int less = 0; less < 3; less++) {
            Outcome<UnitType> changed =
                    new PutEntry(section.name(), was, TypedEntry.of(section, typed, UnitSystem.METRIC)).on(now);
            if (changed.isOk()) {
                take(changed);
                return;
            }
            int before = typed.size();
            for (Refusal fault : changed.refusals()) {
                String key = fault.key().replaceAll("[.\\[].*", "");
                typed.keySet()
                        .removeIf(field -> !key.isEmpty()
                                && (field.equals(key) || field.startsWith(key + ".") || field.startsWith(key + "[")));
            }
            if (typed.size() == before) {
                return;
            }
        }
    }

    private List<String> open(UnitType box) {
        List<String> open = new ArrayList<>();
        for (FileSection section : FileSection.all()) {
            Map<String, Object> whole = UnitTree.of(box);
            List<Map<String, Object>> there = section.entries(tree);
            List<Map<String, Object>> wanted = section.entries(whole);
            List<String> ids = section.ids(whole);
            for (int i = 0; i < ids.size(); i++) {
                if (!there.contains(wanted.get(i))) {
                    open.add(section.name() + " " + ids.get(i));
                }
            }
        }
        return open;
    }

    /** The shipped files, of many more entries, with {@code -Dshimwright.unit=ambleholt-l5-74} or {@code hollinbridge-hb5}. */
    @Test
    void aFirstUnitBecomesAnother() {
        String name = System.getProperty("shimwright.unit", "");
        UnitType box = name.isEmpty()
                ? UnitFiles.read("starter.yaml", UnitFiles.starter()).outcome().orElseThrow()
                : EntryFormTest.shipped(name);
        Map<String, Object> whole = UnitTree.of(box);
        for (int pass = 0; pass < PASSES && !open(box).isEmpty(); pass++) {
            for (FileSection section : FileSection.all()) {
                List<String> ids = section.ids(whole);
                List<Map<String, Object>> wanted = section.entries(whole);
                for (int i = 0; i < ids.size(); i++) {
                    if (!section.entries(tree).contains(wanted.get(i))) {
                        type(section, ids.get(i), wanted.get(i), box);
                    }
                }
            }
            dropWhatItDoesNotHave(box);
        }
        assertThat(open(box)).isEmpty();
        for (FileSection section : FileSection.all()) {
            assertThat(section.entries(tree)).as(section.name()).hasSameSizeAs(section.entries(whole));
        }
    }
}
