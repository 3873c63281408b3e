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
import tools.jackson.databind.JsonNode;

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
            String day = bench.now().toString().substring(0, 10);
            String part = cameBack(door, first.job(), unit, day);
            String third = new DoorWalk(bench, unit, 23, false).begun("K-0003");
            door.onJob(third, "say-complaint", Map.of("answers", Map.of("kind", "crunch")));
            List<String> helped = helped(bench, unit, third);
            assertThat(helped).hasSizeGreaterThanOrEqualTo(10);
            // how long a step took is the least of it
            assertThat(helped)
                    .filteredOn(place ->
                            !place.startsWith("build") || place.contains("came back") || place.contains("undone"))
                    .as("places that say more than minutes")
                    .hasSizeGreaterThanOrEqualTo(10);
            assertThat(helped)
                    .anyMatch(place -> place.startsWith("clearance"))
                    .anyMatch(place -> place.startsWith("build"));
            assertThat(bench.get("/job/" + third + "/complaint").body())
                    .contains("Found before: 3 cases", "it was so in 2 of 3 cases before (K-0002, K-0001)");
            assertThat(bench.get("/job/" + third + "/inspect").body())
                    .contains("K-0001", "K-0002", "worn beyond its limit");
            assertThat(bench.get("/job/" + third + "/complaint").body())
                    .contains("count the needles", "came back on " + day + ": it growls");
            assertThat(bench.get("/job/" + third + "/parts/" + part).body()).contains("came back on " + day);
            overTheJobs(door, unit);
            weighed(door, third);
        }
    }

    /** The first box comes back: what was fitted stands with it, and the cause goes to the next. */
    private static String cameBack(HttpDoor door, String job, Unit unit, String day) {
        String item = unit.type().items().stream()
                .filter(one -> one.quantity() == 1 && !one.trial())
                .filter(one -> unit.type().steps().stream()
                        .anyMatch(step -> step.installs().contains(one.id())))
                .findFirst()
                .orElseThrow()
                .id();
        door.onJob(job, "make-note", Map.of("about", "lesson", "text", "count the needles"));
        String returned = door.onJob(
                        job,
                        "take-return",
                        Map.of("day", day, "said", "it growls", "items", List.of(item), "number", "K-0004"))
                .get("entries")
                .get(0)
                .get("id")
                .asString();
        assertThat(door.page("/job/" + job + "/record").text())
                .contains("Came back on " + day, "What was fitted", "put in at", "The cause");
        door.onJob(
                job,
                "explain-return",
                Map.of(
                        "returned",
                        returned,
                        "name",
                        "input shaft bearing pitted",
                        "lies",
                        "the_part",
                        "items",
                        List.of(item),
                        "words",
                        "a track of pits"));
        assertThat(door.page("/job/" + job + "/record").text())
                .contains("input shaft bearing pitted, lies in: the part");
        return item;
    }

    /** Beside the verdict stands what came of the same one before, and that two boxes bound little. */
    private static void weighed(HttpDoor door, String job) {
        JsonNode worn = door.job(job)
                .get("limits")
                .valueStream()
                .filter(limit -> !limit.get("direction").asString().equals("attest")
                        && limit.get("service").asDouble() > 0
                        && limit.get("readings").asInt() == 1)
                .findFirst()
                .orElseThrow();
        String id = worn.get("limit").asString();
        door.onJob(job, "inspect", Map.of("limit", id, "values", CheckReadings.typed(worn, CheckReadings.worn(worn))));
        assertThat(door.page("/job/" + job + "/inspect?limit=" + id).text())
                .contains("What came of it before", "replace before in 2 boxes: none came back", "78 %");
    }

    /** Two boxes: their numbers stand in rows without limits as yet, and say what the drawer should hold. */
    private static void overTheJobs(HttpDoor door, Unit unit) {
        String type = "/overjobs/" + unit.type().id();
        String clearance = unit.type().settingOrder().get(0);
        assertThat(door.page(type + "?of=" + clearance).text())
                .contains("From 2 boxes", "from its aim", "repeat readings", "2 values, a chart wants 4", "K-0002");
        assertThat(door.page(type).select("details.trend").size()).isGreaterThan(10);
        assertThat(door.page(type + "/drawer").text())
                .contains("Wished for", "K-0001", "nobody has said for how many boxes");
        assertThat(door.page(type + "/drawer?jobs=3&sure=80&step=0.05").text())
                .contains("To hold", "since 2 boxes say little of it");
    }

    private static void complaint(HttpDoor door, String job) {
        door.onJob(job, "say-complaint", Map.of("answers", Map.of("kind", "crunch")));
        door.onJob(job, "look-at", Map.of("suspect", "cone", "name", "cone of a wheel", "seen", "found"));
    }

    /** Places at which something of earlier boxes is shown. */
    private static List<String> helped(ClockedBench bench, Unit unit, String job) {
        List<String> pages = new ArrayList<>(List.of("complaint", "strip", "inspect", "orders"));
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
