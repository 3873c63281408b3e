package shimwright.bench.walk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shimwright.bench.ClockedBench;
import shimwright.rebuild.unit.file.UnitFiles;
import shimwright.rebuild.unit.model.Unit;
import tools.jackson.databind.JsonNode;

/** A record printed today and in ten years from the same head is the same but for its date, whatever became of the unit file. */
class TenYearsTest {
    private static final String IN_LINE = "hollinbridge-hb5";
    private static final String VARIANT = "S";
    private static final Instant BEGIN = Instant.parse("2026-12-01T08:00:00Z");

    /** Another file of the same unit: limits, a torque, a step that was done renamed, its words and a hold point changed. */
    private static String edited() {
        String was = new String(DoorWalkTest.file(IN_LINE), StandardCharsets.UTF_8);
        String now = was.replace("upper: 0.15 mm\n    aim: 0.10 mm", "upper: 0.19 mm\n    aim: 0.12 mm")
                .replace("quantity: 4, torque: 15 lbf.ft", "quantity: 4, torque: 16 lbf.ft")
                .replaceAll("\\bP06\\b", "P66")
                .replace("Try the new blocker rings on their own cones.", "Try all rings.")
                .replace("what: floats on the output shaft", "what: floats of the three wheels")
                .replace("limit: 0.90 mm", "limit: 0.70 mm");
        assertThat(now).isNotEqualTo(was).contains("P66", "16 lbf.ft", "0.19 mm", "Try all rings.", "0.70 mm");
        return now;
    }

    private static String page(ClockedBench bench, String job) {
        return undated(Objects.requireNonNull(
                        Jsoup.parse(bench.get("/job/" + job + "/record").body()).selectFirst("main"))
                .wholeText());
    }

    /** Without the lines that say when it was printed, or that the shop has a newer file by now. */
    private static String undated(String text) {
        return String.join(
                "\n",
                text.lines()
                        .map(String::strip)
                        .filter(line -> !line.isEmpty())
                        .filter(line -> !line.matches("(?i).*(printed|as of) .*20[0-9]{2}.*"))
                        .toList());
    }

    @Test
    void theRecordIsTheSameAfterTheFileWasEditedAndAnOpenJobMovesOnlyByItsAct(@TempDir Path folder) throws IOException {
        Path file = Files.createDirectories(folder.resolve("units")).resolve("in-line.yaml");
        Files.write(file, DoorWalkTest.file(IN_LINE));
        Unit unit = UnitFiles.read(IN_LINE, DoorWalkTest.file(IN_LINE))
                .outcome()
                .orElseThrow()
                .resolve(VARIANT);
        try (ClockedBench bench = new ClockedBench(folder, BEGIN)) {
            DoorWalk walk = new DoorWalk(bench, unit, 7, false);
            walk.takeIn();
            walk.build();
            walk.handBack();
            HttpDoor door = new HttpDoor(bench);
            String open = door.inShop(
                            "open-job",
                            Map.of(
                                    "type", IN_LINE,
                                    "number", "K-0002",
                                    "owner", "another",
                                    "variant", VARIANT,
                                    "because", "seen before"))
                    .get("job")
                    .asString();
            String page = page(bench, walk.job());
            String printed = undated(DoorWalkTest.text(bench.bytes("/job/" + walk.job() + "/record.pdf")));
            JsonNode was = door.job(open);

            Files.writeString(file, edited());
            bench.later(Duration.ofDays(3653));
            bench.restart();

            assertThat(page(bench, walk.job())).isEqualTo(page);
            assertThat(undated(DoorWalkTest.text(bench.bytes("/job/" + walk.job() + "/record.pdf"))))
                    .isEqualTo(printed);
            for (String of : List.of("", "/build", "/clearances", "/inspect", "/plan")) {
                assertThat(bench.get("/job/" + walk.job() + of).status()).as(of).isLessThan(405);
            }
            assertThat(door.job(open).get("clearances")).isEqualTo(was.get("clearances"));
            assertThat(door.job(open).get("limits")).isEqualTo(was.get("limits"));
            moves(door, open);
        }
    }

    /** What changes is shown first; then the job stands on the other file. */
    private static void moves(HttpDoor door, String open) {
        String file = door.get("/units")
                .get("units")
                .valueStream()
                .filter(one -> one.get("type").asString().equals(IN_LINE))
                .findFirst()
                .orElseThrow()
                .get("file")
                .asString();
        assertThat(door.job(open).get("unitFile").asString()).isNotEqualTo(file);
        JsonNode changes = door.get("/jobs/" + open + "/changes?file=" + file + "&variant=" + VARIANT)
                .get("changes");
        String said = changes.toString();
        assertThat(said).contains("Clearance cs: limits", "Step P06", "Step P66", "Wear limit W3", "Fastener A4");
        door.refused(open, "move-unit", Map.of("file", file, "variant", VARIANT), "reason");
        door.onJob(open, "move-unit", Map.of("file", file, "variant", VARIANT, "reason", "the maker changed it"));
        JsonNode cs = door.get("/jobs/" + open + "/clearances/cs");
        assertThat(cs.get("upper").asDouble()).isEqualTo(0.19e-3);
        assertThat(door.get("/jobs/" + open + "/entries").toString()).contains("UnitMoved");
    }
}
