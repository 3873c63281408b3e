package shimwright.bench.walk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shimwright.bench.ClockedBench;
import shimwright.rebuild.unit.file.UnitFiles;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Unit;

/** Two boxes of a type are rebuilt to the hand-back through the HTTP door; the third is helped by them at its pages. */
class ThirdJobTest {
    private static final String IN_LINE = "hollinbridge-hb5";

    @Test
    void theFirstTwoHelpTheThirdAtTenPlacesAndMore(@TempDir Path folder) throws IOException {
        Unit unit = UnitFiles.read(IN_LINE, DoorWalkTest.file(IN_LINE))
                .outcome()
                .orElseThrow()
                .resolve("S");
        Files.createDirectories(folder.resolve("units"));
        Files.write(folder.resolve("units").resolve(IN_LINE + ".yaml"), DoorWalkTest.file(IN_LINE));
        try (ClockedBench bench = new ClockedBench(folder, Instant.parse("2026-12-01T08:00:00Z"))) {
            HttpDoor door = new HttpDoor(bench);
            DoorWalk first = new DoorWalk(bench, unit, 21, false);
            first.takeIn();
            complaint(door, first.job());
            first.build();
            first.handBack();
            DoorWalk second = new DoorWalk(bench, unit, 22, false);
            second.takeInAfter(first, "K-0002");
            complaint(door, second.job());
            assertThat(helped(bench, unit, second.job())).as("after one box").isNotEmpty();
            second.build();
            second.handBack();
            String third = new DoorWalk(bench, unit, 23, false).begun("K-0003");
            door.onJob(third, "say-complaint", Map.of("answers", Map.of("kind", "crunch")));
            List<String> helped = helped(bench, unit, third);
            assertThat(helped).hasSizeGreaterThanOrEqualTo(10);
            assertThat(helped)
                    .anyMatch(place -> place.startsWith("clearance"))
                    .anyMatch(place -> place.startsWith("build"));
            assertThat(bench.get("/job/" + third + "/complaint").body()).contains("it was so in 2 earlier ones");
            assertThat(bench.get("/job/" + third + "/inspect").body())
                    .contains("K-0001", "K-0002", "worn beyond its limit");
        }
    }

    private static void complaint(HttpDoor door, String job) {
        door.onJob(job, "say-complaint", Map.of("answers", Map.of("kind", "crunch")));
        door.onJob(job, "look-at", Map.of("suspect", "cone", "name", "cone of a wheel", "seen", "found"));
    }

    /** Places at which something of earlier boxes is shown. */
    private static List<String> helped(ClockedBench bench, Unit unit, String job) {
        List<String> pages = new ArrayList<>(List.of("inspect", "orders"));
        unit.type().clearances().forEach(c -> pages.add("clearance/" + c.id()));
        unit.type().steps().stream().map(Step::id).forEach(step -> pages.add("build?step=" + step));
        List<String> helped = new ArrayList<>();
        for (String page : pages) {
            Jsoup.parse(bench.get("/job/" + job + "/" + page).body())
                    .select("details.before")
                    .forEach(before -> helped.add(page + ": " + before.text()));
        }
        return helped;
    }
}
