package shimwright.bench.store.disk;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import shimwright.rebuild.job.Head;

/**
 * How far the log goes, in a file of its own: a torn database can lose its tail without any error, and only something
 * outside it can tell.
 *
 * <p>Two slots of one fixed length, {@value #APART} bytes apart so that no disk sector holds both, are written in turn;
 * each carries a running number and a checksum. A write that is cut short spoils one slot and leaves the other.
 */
public final class HeadFile {
    private static final int APART = 4096;
    private static final Pattern SLOT =
            Pattern.compile("shimwright head 1 ([0-9]{19}) ([0-9]{19}) ([0-9a-f]{64}) ([0-9a-f]{64})\n");
    private static final int LENGTH = 18 + 19 + 1 + 19 + 1 + 64 + 1 + 64 + 1;

    private final Path file;

    public HeadFile(Path file) {
        this.file = file;
    }

    private record Slot(long turn, Head head) {
        private static final Slot NONE = new Slot(0, Head.EMPTY);

        byte[] bytes() {
            String text = "shimwright head 1 %019d %019d %s ".formatted(turn, head.count(), head.hash());
            return (text + sum(text) + "\n").getBytes(StandardCharsets.US_ASCII);
        }

        static Optional<Slot> of(byte[] bytes) {
            String text = new String(bytes, StandardCharsets.ISO_8859_1);
            Matcher slot = SLOT.matcher(text);
            if (!slot.matches() || !slot.group(4).equals(sum(text.substring(0, slot.start(4))))) {
                return Optional.empty();
            }
            return Optional.of(
                    new Slot(Long.parseLong(slot.group(1)), new Head(Long.parseLong(slot.group(2)), slot.group(3))));
        }

        private static String sum(String text) {
            return Disk.hash(text.getBytes(StandardCharsets.ISO_8859_1));
        }
    }

    /** True where the head file is there. */
    public boolean exists() {
        return Files.exists(file);
    }

    /** The newest whole slot; empty when there is no file or neither slot is whole. */
    public Optional<Head> read() throws IOException {
        return newest().map(Slot::head);
    }

    /** Whether every byte is as this program wrote it: both slots whole, or one and no second yet, and nothing else. */
    public boolean isClean() throws IOException {
        byte[] all = Files.readAllBytes(file);
        Optional<Slot> first = slot(all, 0);
        Optional<Slot> second = slot(all, APART);
        byte[] made = new byte[2 * APART];
        first.ifPresent(slot -> System.arraycopy(slot.bytes(), 0, made, 0, LENGTH));
        second.ifPresent(slot -> System.arraycopy(slot.bytes(), 0, made, APART, LENGTH));
        boolean turns = first.isEmpty()
                || second.isEmpty()
                || Math.abs(first.get().turn() - second.get().turn()) == 1;
        return Arrays.equals(all, made) && turns && (first.isPresent() || second.isPresent());
    }

    private static Optional<Slot> slot(byte[] all, int at) {
        byte[] padded = Arrays.copyOf(all, 2 * APART);
        return Slot.of(Arrays.copyOfRange(padded, at, at + LENGTH));
    }

    /** Writes and syncs the head into the older slot. */
    public void write(Head head) throws IOException {
        Slot next = new Slot(newest().orElse(Slot.NONE).turn() + 1, head);
        boolean fresh = !exists();
        try (FileChannel out =
                FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE)) {
            if (out.size() < 2L * APART) {
                // both slots get their room now, so that a full disk cannot refuse a later head
                Disk.fill(out, out.size(), new byte[(int) (2L * APART - out.size())]);
            }
            Disk.fill(out, next.turn() % 2 * APART, next.bytes());
            out.force(true);
        }
        if (fresh) {
            Disk.syncFolder(Disk.parent(file));
        }
    }

    private Optional<Slot> newest() throws IOException {
        if (!exists()) {
            return Optional.empty();
        }
        byte[] all = Files.readAllBytes(file);
        return Stream.of(0, APART)
                .map(at -> slot(all, at))
                .flatMap(Optional::stream)
                .max(Comparator.comparingLong(Slot::turn));
    }
}
