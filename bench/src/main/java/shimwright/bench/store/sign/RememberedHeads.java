package shimwright.bench.store.sign;

import java.io.IOException;
import java.net.URLDecoder;
import java.net.URLEncoder;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import shimwright.bench.store.disk.Disk;
import shimwright.rebuild.job.Head;
import shimwright.rebuild.job.Signing.Occasion;

/**
 * Heads that went out of a data folder, one a line in a file that lies elsewhere: whoever puts an older log back, or makes
 * one anew, cannot make these fit it.
 */
public final class RememberedHeads {
    private static final Pattern LINE = Pattern.compile(
            "1 ([A-Z_]+) shop=([0-9a-f]{64}) stream=(\\S*) count=([0-9]{1,18}) hash=([0-9a-f]{64}) at=(\\S+) folder=(\\S*)");

    private final Path file;

    RememberedHeads(Path file) {
        this.file = file;
    }

    /**
     * One of them.
     *
     * @param shop the hash of the log's first entry
     * @param stream the job's stream; empty for the whole log
     * @param folder where the log lay
     */
    public record Remembered(Occasion occasion, String shop, String stream, Head head, Instant at, String folder) {
        private String line() {
            return "1 %s shop=%s stream=%s count=%d hash=%s at=%s folder=%s"
                    .formatted(occasion, shop, encoded(stream), head.count(), head.hash(), at, encoded(folder));
        }

        private static Optional<Remembered> of(String line) {
            Matcher text = LINE.matcher(line);
            if (!text.matches()) {
                return Optional.empty();
            }
            try {
                return Optional.of(new Remembered(
                        Occasion.valueOf(text.group(1)),
                        text.group(2),
                        decoded(text.group(3)),
                        new Head(Long.parseLong(text.group(4)), text.group(5)),
                        Instant.parse(text.group(6)),
                        decoded(text.group(7))));
            } catch (IllegalArgumentException | java.time.DateTimeException ofANewerProgram) {
                return Optional.empty();
            }
        }

        private static String encoded(String text) {
            return URLEncoder.encode(text, StandardCharsets.UTF_8);
        }

        private static String decoded(String text) {
            return URLDecoder.decode(text, StandardCharsets.UTF_8);
        }
    }

    /** Adds and syncs a line. */
    void add(Remembered remembered) throws IOException {
        boolean fresh = !Files.exists(file);
        if (fresh) {
            Disk.makePrivateFolder(Disk.parent(file));
            Disk.writePrivate(file, new byte[0]);
        }
        try (FileChannel out = FileChannel.open(file, StandardOpenOption.APPEND)) {
            Disk.fillOn(out, (remembered.line() + "\n").getBytes(StandardCharsets.UTF_8));
            out.force(true);
        }
    }

    /** All of them in the order in which they were remembered; a line that was cut off is left out. */
    public List<Remembered> all() throws IOException {
        if (!Files.exists(file)) {
            return List.of();
        }
        List<Remembered> all = new ArrayList<>();
        for (String line : Files.readAllLines(file, StandardCharsets.UTF_8)) {
            Remembered.of(line).ifPresent(all::add);
        }
        return all;
    }

    /**
     * Those of a shop that still bind it: not those of entries whose loss in this folder was accepted since, nor of a copy
     * in another folder that went its own way.
     */
    public List<Remembered> binding(String shop, String here) throws IOException {
        List<Remembered> binding = new ArrayList<>();
        for (Remembered one : all()) {
            if (one.shop().equals(shop) && one.folder().equals(here)) {
                if (one.occasion() == Occasion.ACCEPTED) {
                    binding.clear();
                }
                binding.add(one);
            }
        }
        return binding;
    }

    /** Whether a head of the whole log is remembered of this folder already. */
    public boolean knows(String shop, Head head, String here) throws IOException {
        return binding(shop, here).stream()
                .anyMatch(one -> one.stream().isEmpty() && one.head().equals(head));
    }

    /** The shop that was last seen in a folder. */
    public Optional<String> shopIn(String here) throws IOException {
        String shop = "";
        for (Remembered one : all()) {
            shop = one.folder().equals(here) ? one.shop() : shop;
        }
        return Optional.of(shop).filter(known -> !known.isEmpty());
    }

    /** A folder as it is remembered. */
    public static String name(Path folder) {
        return folder.toAbsolutePath().normalize().toString();
    }
}
