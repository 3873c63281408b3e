package shimwright.bench.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import shimwright.bench.store.disk.DataFolder;
import shimwright.bench.store.sign.RememberedHeads;
import shimwright.bench.store.sqlite.SqliteJobLog;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * A data folder and its owner's folder as text, one line a table, a row or a file: what a release wrote, tables and all, to
 * be opened by every later one. Each release adds the one that {@link #main} writes.
 */
final class FrozenFolder {
    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final String HERE = "@DATA@";
    private static final List<String> TABLES = List.of("entry", "signature");

    private FrozenFolder() {}

    /** Writes a small shop of this program. Arguments: an empty folder to work in, and the file. */
    public static void main(String[] arguments) throws IOException, SQLException {
        Path work = Path.of(arguments[0]);
        KeptShop shop = new KeptShop(Files.createDirectories(work));
        try (SqliteJobLog log = shop.open()) {
            EntrySamples samples = new EntrySamples(20261129);
            for (int i = 0; i < 200; i++) {
                log.append(samples.draft("sample-" + i, "job-v-2", samples.alone()), stream -> List.of())
                        .orElseThrow();
            }
        }
        Files.write(Path.of(arguments[1]), lines(shop.data, shop.owner.root()), StandardCharsets.UTF_8);
    }

    private static List<String> lines(Path data, Path owner) throws IOException, SQLException {
        List<String> lines = new ArrayList<>();
        DataFolder files = new DataFolder(data);
        try (Connection raw = DriverManager.getConnection("jdbc:sqlite:" + files.database());
                Statement ask = raw.createStatement()) {
            for (String statement : List.of(
                    "select sql from sqlite_schema where sql is not null order by rowid",
                    "select 'pragma user_version = ' || user_version from pragma_user_version")) {
                try (ResultSet rows = ask.executeQuery(statement)) {
                    while (rows.next()) {
                        lines.add(JSON.writeValueAsString(Map.of("sql", rows.getString(1))));
                    }
                }
            }
            for (String table : TABLES) {
                try (ResultSet rows = ask.executeQuery("select * from " + table + " order by rowid")) {
                    while (rows.next()) {
                        Map<String, Object> row = new LinkedHashMap<>();
                        for (int i = 1; i <= rows.getMetaData().getColumnCount(); i++) {
                            row.put(rows.getMetaData().getColumnName(i), rows.getObject(i));
                        }
                        lines.add(JSON.writeValueAsString(Map.of(table, row)));
                    }
                }
            }
        }
        addFiles(lines, "data", data);
        addFiles(lines, "owner", owner);
        String place = RememberedHeads.name(data);
        String coded = java.net.URLEncoder.encode(place, StandardCharsets.UTF_8);
        return lines.stream().map(line -> line.replace(coded, HERE)).toList();
    }

    private static void addFiles(List<String> lines, String which, Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path file : (Iterable<Path>) all.filter(Files::isRegularFile).sorted()::iterator) {
                String name = folder.relativize(file).toString();
                if (which.equals("owner")) {
                    lines.add(JSON.writeValueAsString(Map.of(which, name, "text", Files.readString(file))));
                } else if (!List.of("shimwright.db", "lock", "sums").contains(name)) {
                    String content = Base64.getEncoder().encodeToString(Files.readAllBytes(file));
                    lines.add(JSON.writeValueAsString(Map.of(which, name, "base64", content)));
                }
            }
        }
    }

    /** Lays the folders of a release into empty ones. */
    static void lay(String release, Path data, Path owner) throws IOException, SQLException {
        Path text = Path.of(
                System.getProperty("shimwright.root", ".."),
                "bench",
                "src",
                "test",
                "resources",
                "folders",
                release + ".jsonl");
        String here = java.net.URLEncoder.encode(RememberedHeads.name(data), StandardCharsets.UTF_8);
        Files.createDirectories(data);
        try (Connection raw = DriverManager.getConnection("jdbc:sqlite:" + new DataFolder(data).database())) {
            for (String line : Files.readAllLines(text)) {
                JsonNode node = JSON.readTree(line.replace(HERE, here));
                if (node.has("sql")) {
                    try (Statement run = raw.createStatement()) {
                        run.execute(node.get("sql").asString());
                    }
                } else if (node.has("data")) {
                    byte[] content =
                            Base64.getDecoder().decode(node.get("base64").asString());
                    file(data, node.get("data").asString(), content);
                } else if (node.has("owner")) {
                    byte[] content = node.get("text").asString().getBytes(StandardCharsets.UTF_8);
                    file(owner, node.get("owner").asString(), content);
                } else {
                    String table = node.propertyNames().iterator().next();
                    row(raw, table, node.get(table));
                }
            }
        }
    }

    private static void file(Path folder, String name, byte[] content) throws IOException {
        Path file = folder.resolve(name);
        Files.createDirectories(file.getParent());
        Files.write(file, content);
    }

    private static void row(Connection raw, String table, JsonNode row) throws SQLException {
        List<String> columns = List.copyOf(row.propertyNames());
        String marks = String.join(", ", columns.stream().map(column -> "?").toList());
        try (PreparedStatement put = raw.prepareStatement(
                "insert into " + table + " (" + String.join(", ", columns) + ") values (" + marks + ")")) {
            for (int i = 0; i < columns.size(); i++) {
                JsonNode value = row.get(columns.get(i));
                if (value.isNumber()) {
                    put.setLong(i + 1, value.asLong());
                } else {
                    put.setString(i + 1, value.asString());
                }
            }
            put.executeUpdate();
        }
    }
}
