package shimwright.rebuild.unit.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.rebuild.unit.file.UnitFiles;
import shimwright.rebuild.unit.file.UnitTree;
import shimwright.rebuild.unit.model.UnitType;

/**
 * Random half-finished units: every form of every section is there, and mending all gaps in any order ends in a sound unit without
 * one. {@code -Dshimwright.units=10000} tries as many.
 */
class HalfFinishedUnitsTest {
    private static final int UNITS = Integer.getInteger("shimwright.units", 20);

    private static final long SEED = Long.getLong("shimwright.seed", 11);

    /** Many steps wait by habit alone; each is an edit of its own. */
    private static final int MOST_EDITS = 400;

    @Test
    void everyFormOfEverySectionIsThere() {
        for (int n = 0; n < UNITS; n++) {
            UnitType type = new HalfFinished(SEED + n).unit();
            assertThat(anew(type)).as("seed %d", SEED + n).isEqualTo(type);
            Map<String, Object> tree = UnitTree.of(type);
            for (FileSection section : FileSection.all()) {
                List<Map<String, Object>> entries = new ArrayList<>(section.entries(tree));
                entries.add(Map.of());
                for (Map<String, Object> entry : List.of(entries.get(0), entries.get(entries.size() - 1))) {
                    List<EntryField> fields = EntryForm.of(section, entry, type, UnitSystem.METRIC);
                    assertThat(fields).as(section.name()).isNotEmpty();
                    TypedEntry.of(section, EntryFormTest.untouched(fields), UnitSystem.INCH);
                }
            }
        }
    }

    @Test
    void mendingAllGapsInAnyOrderEndsInASoundUnit() {
        for (int n = 0; n < UNITS; n++) {
            HalfFinished half = new HalfFinished(SEED + n);
            UnitType type = half.unit();
            String begun = UnitFiles.write(type);
            for (int edits = 0; edits < MOST_EDITS && !UnitGap.of(type).isEmpty(); edits++) {
                UnitGap gap = half.shuffled(type).get(0);
                Outcome<UnitType> mended = half.mended(type, gap.kind());
                assertThat(mended.refusals())
                        .as("seed %d, %s of%n%s", SEED + n, gap, begun)
                        .isEmpty();
                type = mended.orElseThrow();
            }
            assertThat(UnitGap.of(type)).as("seed %d", SEED + n).isEmpty();
            assertThat(anew(type)).as("seed %d", SEED + n).isEqualTo(type);
        }
    }

    /** What its text says to who has never seen it: the remark in front keeps it from being known. */
    private static UnitType anew(UnitType type) {
        return UnitFiles.read("half.yaml", "# read anew\n" + UnitFiles.write(type))
                .outcome()
                .orElseThrow();
    }
}
