package shimwright.bench.web.pair;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.json.JsonMapper;

/**
 * One file, one fact a line, only ever added to and synced before anybody is told. It is kept beside the job log and not
 * in it, because a backup of the log that is laid back must let in no device that was let out since.
 */
public final class DeviceFile {
    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final int LARGEST = 4 * 1024 * 1024;
    private static final Instant NEVER = Instant.EPOCH;

    private final Path path;
    private volatile @Nullable Known known;

    public DeviceFile(Path path) {
        this.path = path;
    }

    private record Known(long size, FileTime changed, Outcome<State> state) {}

    /** What the file says as a whole: devices in the order of their coming, and codes that were not used. */
    record State(List<Device> devices, List<Line> codes) {}

    /** A fact; what does not belong to its kind is empty. */
    record Line(
            String kind,
            String id,
            String name,
            String person,
            String role,
            String hash,
            Instant at,
            Instant until,
            String by) {
        static Line code(String hash, Role role, String person, Instant until) {
            return new Line("code", "", "", person, role.word(), hash, NEVER, until, "");
        }

        static Line spent(String hash, Instant at) {
            return new Line("spent", "", "", "", "", hash, at, NEVER, "");
        }

        static Line device(Device d) {
            return new Line(
                    "device", d.id(), d.name(), d.person(), d.role().word(), d.keyHash(), d.since(), d.until(), "");
        }

        static Line revoked(String id, Instant at, String by) {
            return new Line("revoked", id, "", "", "", "", at, NEVER, by);
        }

        Role asRole() {
            return Role.of(role).orElseThrow(() -> new IllegalArgumentException("no role " + role));
        }
    }

    /** What the file says now; read again only when it has changed. */
    Outcome<State> read() {
        try {
            if (!Files.exists(path)) {
                return Outcome.ok(new State(List.of(), List.of()));
            }
            long size = Files.size(path);
            FileTime changed = Files.getLastModifiedTime(path);
            Known before = known;
            if (before != null && before.size() == size && before.changed().equals(changed)) {
                return before.state();
            }
            Outcome<State> state = size > LARGEST
                    ? Outcome.refused(Refusal.at(
                            path.toString(),
                            "it is larger than " + LARGEST + " bytes",
                            "Remove it, and pair each device again"))
                    : state(Files.readString(path));
            known = new Known(size, changed, state);
            return state;
        } catch (IOException broken) {
            return Outcome.refused(
                    Refusal.at(path.toString(), "cannot be read: " + broken.getMessage(), "Look at the disk"));
        }
    }

    private Outcome<State> state(String text) {
        Map<String, Device> devices = new LinkedHashMap<>();
        Map<String, Line> codes = new LinkedHashMap<>();
        int number = 0;
        // what stands behind the last line end was never confirmed to anybody
        for (String one : text.substring(0, text.lastIndexOf('\n') + 1).split("\n")) {
            number++;
            if (one.isEmpty()) {
                continue;
            }
            try {
                take(JSON.readValue(one, Line.class), devices, codes);
            } catch (JacksonException | IllegalArgumentException | NullPointerException unreadable) {
                // one that was let out might stand here: nobody is let in
                return Outcome.refused(Refusal.at(
                        path + ":" + number, "it cannot be read", "Remove the file, and pair each device again"));
            }
        }
        return Outcome.ok(new State(List.copyOf(devices.values()), List.copyOf(codes.values())));
    }

    private static void take(Line line, Map<String, Device> devices, Map<String, Line> codes) {
        switch (line.kind()) {
            case "code" -> codes.put(line.hash(), line);
            case "spent" -> codes.remove(line.hash());
            case "device" ->
                devices.put(
                        line.id(),
                        new Device(
                                line.id(),
                                line.name(),
                                line.person(),
                                line.asRole(),
                                line.hash(),
                                line.at(),
                                line.until(),
                                null,
                                ""));
            case "revoked" -> devices.computeIfPresent(line.id(), (id, device) -> device.out(line.at(), line.by()));
            default -> throw new IllegalArgumentException(line.kind());
        }
    }

    /** Adds a fact, on the disk before it is answered. */
    synchronized Outcome<Line> add(Line line) {
        try {
            OwnerOnlyFiles.folder(path.toAbsolutePath().getParent());
            OwnerOnlyFiles.file(path);
            try (FileChannel channel = FileChannel.open(path, StandardOpenOption.READ, StandardOpenOption.WRITE);
                    FileLock lock = channel.lock()) {
                long end = wholeLines(channel);
                ByteBuffer bytes =
                        ByteBuffer.wrap((JSON.writeValueAsString(line) + "\n").getBytes(StandardCharsets.UTF_8));
                channel.truncate(end);
                channel.position(end);
                while (bytes.hasRemaining()) {
                    channel.write(bytes);
                }
                channel.force(true);
                return lock.isValid()
                        ? Outcome.ok(line)
                        : Outcome.refused(Refusal.at(path.toString(), "was taken away", "Try again"));
            }
        } catch (IOException broken) {
            return Outcome.refused(
                    Refusal.at(path.toString(), "cannot be written: " + broken.getMessage(), "Look at the disk"));
        }
    }

    /** Where the last whole line ends; a line torn by a stop was never confirmed and is written over. */
    private static long wholeLines(FileChannel channel) throws IOException {
        for (long at = channel.size(); at > 0; at--) {
            ByteBuffer one = ByteBuffer.allocate(1);
            channel.read(one, at - 1);
            if (one.get(0) == '\n') {
                return at;
            }
        }
        return 0;
    }
}
