package shimwright.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import org.junit.jupiter.api.Test;

/** What the store cannot do is said in its own sentence, on pages and at the HTTP door, and is no fault of the page. */
class BrokenStoreTest {
    @Test
    void aDamagedEntryIsSaidByPageAndDoor() throws SQLException {
        try (DemoBench bench = DemoBench.fresh()) {
            try (Connection raw = DriverManager.getConnection(
                            "jdbc:sqlite:" + bench.folder().resolve("shimwright.db"));
                    Statement run = raw.createStatement()) {
                run.execute("drop trigger entry_stays");
                run.execute("update entry set by_whom = 'x' where stream = 'job-v-0091'");
            }
            HttpResponse<String> page = bench.get("/job/job-v-0091/record");
            assertThat(page.statusCode()).isEqualTo(503);
            assertThat(page.body()).contains("was changed or damaged while the program ran", "go back");
            HttpResponse<String> door = bench.get("/api/jobs/job-v-0091");
            assertThat(door.statusCode()).isEqualTo(503);
            assertThat(door.body()).contains("was changed or damaged while the program ran");
            assertThat(bench.get("/job/job-v-0093/build").statusCode()).isEqualTo(200);
        }
    }
}
