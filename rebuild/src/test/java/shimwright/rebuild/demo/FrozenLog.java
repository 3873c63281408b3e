package shimwright.rebuild.demo;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import shimwright.rebuild.job.Draft;
import shimwright.rebuild.job.EntryCodec;
import shimwright.rebuild.job.LogEntry;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A log as an earlier release wrote it, an entry a line. */
public final class FrozenLog {
    private static final JsonMapper JSON = JsonMapper.builder().build();

    private FrozenLog() {}

    /** The entries of a release, in order. */
    public static List<LogEntry> entries(String release) {
        try (InputStream in =
                Objects.requireNonNull(FrozenLog.class.getResourceAsStream("/logs/" + release + ".jsonl"))) {
            List<LogEntry> entries = new ArrayList<>();
            new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .map(JSON::readTree)
                    .map(FrozenLog::kept)
                    .forEach(entries::add);
            return entries;
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private static LogEntry kept(JsonNode line) {
        Draft draft = new Draft(
                text(line, "stream"),
                text(line, "id"),
                Instant.parse(text(line, "at")),
                text(line, "by_whom"),
                EntryCodec.read(text(line, "type"), text(line, "body")));
        return new LogEntry(
                line.get("number").asLong(),
                line.get("stream_number").asLong(),
                draft,
                text(line, "hash"),
                text(line, "stream_hash"));
    }

    private static String text(JsonNode line, String name) {
        return line.get(name).asString();
    }
}
