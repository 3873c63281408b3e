package shimwright.bench;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import shimwright.bench.desk.UnitShelf;
import shimwright.bench.desk.UnitSource;
import shimwright.bench.store.disk.Disk;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.unit.file.UnitFiles;
import shimwright.rebuild.unit.model.UnitType;

/**
 * The unit files on the shelf, the shipped example and those in the shop's own folder, read when first wanted and again after
 * one was laid there.
 */
final class UnitFolder implements UnitSource {
    private static final String SHIPPED = "ambleholt-l5-74.yaml";

    private static final List<String> EXAMPLES = List.of(SHIPPED, "hollinbridge-hb5.yaml");

    private final Path folder;
    private Map<String, byte[]> files = Map.of();
    private List<Refusal> unreadable = List.of();
    private List<UnitShelf.ReadFile> known = List.of();
    private volatile @Nullable CompletableFuture<UnitShelf.Files> reading;

    private UnitFolder(Path folder) {
        this.folder = folder;
    }

    /** The files as they lie there now. */
    static UnitFolder in(Path folder) {
        UnitFolder units = new UnitFolder(folder);
        units.load();
        return units;
    }

    private synchronized void load() {
        Map<String, byte[]> there = new LinkedHashMap<>();
        there.put(SHIPPED, shipped(SHIPPED));
        List<Refusal> broken = new ArrayList<>();
        if (Files.isDirectory(folder)) {
            try (Stream<Path> found = Files.list(folder)) {
                for (Path file : found.filter(f -> f.toString().endsWith(".yaml"))
                        .sorted()
                        .toList()) {
                    read(file, there, broken);
                }
            } catch (IOException failed) {
                broken.add(unreadable(folder, failed));
            }
        }
        files = there;
        unreadable = broken;
        CompletableFuture<UnitShelf.Files> before = reading;
        known = before == null ? known : before.join().sound();
        reading = null;
    }

    private static void read(Path file, Map<String, byte[]> files, List<Refusal> unreadable) {
        try {
            files.put(file.toString(), Files.readAllBytes(file));
        } catch (IOException broken) {
            unreadable.add(unreadable(file, broken));
        }
    }

    private static Refusal unreadable(Path place, IOException broken) {
        return Refusal.at(place.toString(), "it cannot be read: " + broken.getMessage(), "Look at its permissions");
    }

    /** Whether anything has asked for them yet. */
    synchronized boolean asked() {
        return reading != null;
    }

    /** The files as they lie there; one that is not sound is left out and its problems are told. */
    @Override
    public UnitShelf.Files files() {
        return begun().join();
    }

    private synchronized CompletableFuture<UnitShelf.Files> begun() {
        CompletableFuture<UnitShelf.Files> asked = reading;
        if (asked == null) {
            Map<String, byte[]> there = files;
            List<Refusal> broken = unreadable;
            List<UnitShelf.ReadFile> before = known;
            asked = CompletableFuture.supplyAsync(() -> read(there, broken, before));
            reading = asked;
        }
        return asked;
    }

    /** Every problem of every file that is not on the shelf for it. */
    List<Refusal> faults() {
        return files().faults();
    }

    @Override
    public Outcome<String> put(String type, byte[] content) {
        Path file = files().sound().stream()
                .filter(there -> there.type().id().equals(type) && !there.name().equals(SHIPPED))
                .map(there -> Path.of(there.name()))
                .findFirst()
                .orElse(folder.resolve(type + ".yaml"));
        if (!folder.equals(file.getParent())) {
            return Outcome.refused(new Refusal(
                    "", "unit file " + type, "its id is no name for a file", "Take letters, digits and hyphens"));
        }
        try {
            Disk.lay(file, content);
        } catch (IOException failed) {
            return Outcome.refused(new Refusal(
                    "",
                    file.toString(),
                    "it cannot be written: " + failed.getMessage(),
                    "Look at the disk and its permissions"));
        }
        load();
        return Outcome.ok(file.toString());
    }

    @Override
    public Map<String, byte[]> shipped() {
        Map<String, byte[]> shipped = new LinkedHashMap<>();
        EXAMPLES.forEach(name -> shipped.put(name, shipped(name)));
        return shipped;
    }

    /** The files read; one whose bytes are those of the reading before is not read again. */
    private static UnitShelf.Files read(
            Map<String, byte[]> files, List<Refusal> unreadable, List<UnitShelf.ReadFile> before) {
        List<UnitShelf.ReadFile> sound = new ArrayList<>();
        List<Refusal> faults = new ArrayList<>(unreadable);
        files.forEach((name, bytes) -> {
            Optional<UnitShelf.ReadFile> same = before.stream()
                    .filter(there -> there.name().equals(name) && Arrays.equals(there.content(), bytes))
                    .findFirst();
            if (same.isPresent()) {
                sound.add(same.get());
                return;
            }
            Outcome<UnitType> read = UnitFiles.read(name, bytes).outcome();
            faults.addAll(read.refusals());
            if (read instanceof Outcome.Ok<UnitType> ok) {
                sound.add(new UnitShelf.ReadFile(name, bytes, ok.value()));
            }
        });
        return new UnitShelf.Files(List.copyOf(sound), List.copyOf(faults));
    }

    private static byte[] shipped(String name) {
        try (InputStream in = Objects.requireNonNull(UnitFiles.class.getResourceAsStream("/units/" + name))) {
            return in.readAllBytes();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
