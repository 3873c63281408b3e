package shimwright.bench.walk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shimwright.bench.ClockedBench;
import shimwright.bench.store.FrozenStore;
import tools.jackson.databind.JsonNode;

/** A shop that an earlier release kept is opened: its jobs get a file pinned, and all their pages are there. */
class FrozenShopTest {
    private static final Instant LATER = Instant.parse("2027-05-01T08:00:00Z");

    @Test
    void aShopOfBeforeIsOpenedWithTheFileOfThatTimeAndStandsOnItFromThenOn(@TempDir Path folder)
            throws IOException, SQLException {
        FrozenStore.lay("0.1.0", folder);
        Files.createDirectories(folder.resolve("units"));
        Files.write(folder.resolve("units").resolve("old.yaml"), FrozenStore.unit("0.1.0"));
        new ClockedBench(folder, LATER).close(); // the file is pinned behind the open door; closing waits for it
        String printed;
        try (ClockedBench bench = new ClockedBench(folder, LATER)) {
            HttpDoor door = new HttpDoor(bench);
            for (JsonNode job : door.get("/jobs").get("jobs")) {
                String id = job.get("job").asString();
                assertThat(job.get("unitFile").asString()).as(id).hasSize(64);
                assertThat(door.get("/jobs/" + id).get("done")).as(id).isNotNull();
                assertThat(bench.get("/job/" + id + "/record").status()).as(id).isEqualTo(200);
            }
            assertThat(door.get("/jobs").get("jobs")).hasSize(2);
            printed = DoorWalkTest.text(bench.bytes("/job/job-v-0091/record.pdf"));
        }
        assertThat(printed).contains("V-0091");
        // the file of that time goes, and the shop stands on what it kept
        Files.delete(folder.resolve("units").resolve("old.yaml"));
        try (ClockedBench bench = new ClockedBench(folder, LATER)) {
            assertThat(DoorWalkTest.text(bench.bytes("/job/job-v-0091/record.pdf")))
                    .isEqualTo(printed);
        }
    }
}
