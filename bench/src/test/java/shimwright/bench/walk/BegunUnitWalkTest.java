package shimwright.bench.walk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shimwright.bench.ClockedBench;
import shimwright.rebuild.unit.begin.Construction;
import shimwright.rebuild.unit.begin.FirstUnit;
import shimwright.rebuild.unit.edit.AddClearance;
import shimwright.rebuild.unit.edit.UnitEdit;
import shimwright.rebuild.unit.file.UnitFiles;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.UnitType;

/** A unit begun without a file and given two clearances is rebuilt like any other, through the HTTP door alone. */
class BegunUnitWalkTest {
    private static UnitType read(String text) {
        return UnitFiles.read("begun.yaml", text).outcome().orElseThrow();
    }

    private static UnitEdit play(String name, double lower, double upper, boolean closes, String after) {
        return new AddClearance(
                name,
                Clearance.Sense.END_PLAY,
                lower,
                upper,
                "told",
                "behind the bearing",
                new AddClearance.Shims(44e-3, 52e-3, 0.2e-3, 1.2e-3),
                closes,
                "dial indicator 0.01 mm",
                after);
    }

    private static String into(UnitType type, String item) {
        return type.steps().stream()
                .filter(step -> step.installs().contains(item))
                .findFirst()
                .orElseThrow()
                .id();
    }

    @Test
    void bothClearancesEndWithinTheirLimitsAndTheRecordIsPrinted(@TempDir Path folder) throws IOException {
        Construction box = new Construction(
                Construction.Layout.IN_LINE,
                Set.of(Construction.Housing.TAIL, Construction.Housing.BELL),
                List.of(0, 1, 1, 1),
                4,
                Construction.Reverse.SLIDING,
                Construction.Shift.RAILS,
                1);
        UnitType type = read(FirstUnit.text(box, "Old Works", "4-speed").orElseThrow());
        type = read(UnitEdit.text(type, play("input end play", 0.05e-3, 0.25e-3, true, into(type, "input_shaft")))
                .orElseThrow());
        String text = UnitEdit.text(type, play("countershaft end play", 0.10e-3, 0.35e-3, false, into(type, "counter")))
                .orElseThrow();
        Files.createDirectories(folder.resolve("units"));
        Files.writeString(folder.resolve("units").resolve("old-works-4-speed.yaml"), text);
        type = read(text);
        try (ClockedBench bench = new ClockedBench(folder, Instant.parse("2026-12-01T08:00:00Z"))) {
            DoorWalk walk = new DoorWalk(bench, type.resolve("A"), 77, false);
            walk.takeIn();
            walk.build();
            walk.handBack();
            for (Clearance c : type.clearances()) {
                assertThat(walk.truths().get(c.id())).as(c.name()).isBetween(c.lower(), c.upper());
            }
            assertThat(DoorWalkTest.text(bench.bytes("/job/" + walk.job() + "/record.pdf")))
                    .contains("countershaft end play", "not known yet");
        }
    }
}
