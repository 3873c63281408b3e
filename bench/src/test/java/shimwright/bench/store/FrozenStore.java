package shimwright.bench.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.util.List;
import shimwright.bench.store.disk.DataFolder;
import shimwright.bench.store.log.Sql;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A data folder with the very texts that an earlier release wrote. */
public final class FrozenStore {
    private static final Path LOGS =
            Path.of(System.getProperty("shimwright.root", ".."), "rebuild", "src", "test", "resources", "logs");
    private static final JsonMapper JSON = JsonMapper.builder().build();

    private FrozenStore() {}

    static List<JsonNode> lines(String release) throws IOException {
        return Files.readAllLines(LOGS.resolve(release + ".jsonl")).stream()
                .map(JSON::readTree)
                .toList();
    }

    /** The unit file of that time. */
    public static byte[] unit(String release) throws IOException {
        return Files.readAllBytes(LOGS.resolve(release + "-unit.yaml"));
    }

    /** Lays the log of a release into an empty folder. */
    public static void lay(String release, Path folder) throws IOException, SQLException {
        Logs.open(folder).close();
        try (Connection raw = Sql.toWrite(new DataFolder(folder).database())) {
            try (PreparedStatement row = raw.prepareStatement(
                    "insert into entry (number, stream, stream_number, id, at, by_whom, type, body, hash, stream_hash)"
                            + " values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)")) {
                for (JsonNode line : lines(release)) {
                    row.setLong(1, line.get("number").asLong());
                    row.setString(2, text(line, "stream"));
                    row.setLong(3, line.get("stream_number").asLong());
                    int at = 4;
                    for (String name : List.of("id", "at", "by_whom", "type", "body", "hash", "stream_hash")) {
                        row.setString(at++, text(line, name));
                    }
                    row.executeUpdate();
                }
            }
        }
    }

    static String text(JsonNode line, String name) {
        return line.get(name).asString();
    }
}
