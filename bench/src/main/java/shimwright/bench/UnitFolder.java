package shimwright.bench;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import shimwright.bench.desk.UnitShelf;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.unit.file.UnitFiles;
import shimwright.rebuild.unit.model.UnitType;

/** The unit files on the shelf, the shipped example and those in the shop's own folder, read once when first wanted. */
final class UnitFolder {
    private static final String SHIPPED = "ambleholt-l5-74.yaml";

    private final Map<String, byte[]> files;
    private final List<Refusal> unreadable;
    private volatile @Nullable CompletableFuture<UnitShelf.Files> reading;

    private UnitFolder(Map<String, byte[]> files, List<Refusal> unreadable) {
        this.files = files;
        this.unreadable = unreadable;
    }

    /** The files as they lie there now. */
    static UnitFolder in(Path folder) {
        Map<String, byte[]> files = new LinkedHashMap<>();
        files.put(SHIPPED, shipped());
        List<Refusal> unreadable = new ArrayList<>();
        if (Files.isDirectory(folder)) {
            try (Stream<Path> found = Files.list(folder)) {
                for (Path file : found.filter(f -> f.toString().endsWith(".yaml"))
                        .sorted()
                        .toList()) {
                    read(file, files, unreadable);
                }
            } catch (IOException broken) {
                unreadable.add(unreadable(folder, broken));
            }
        }
        return new UnitFolder(files, unreadable);
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
    UnitShelf.Files files() {
        return begun().join();
    }

    private synchronized CompletableFuture<UnitShelf.Files> begun() {
        CompletableFuture<UnitShelf.Files> asked = reading;
        if (asked == null) {
            asked = CompletableFuture.supplyAsync(this::read);
            reading = asked;
        }
        return asked;
    }

    /** Every problem of every file that is not on the shelf for it. */
    List<Refusal> faults() {
        return files().faults();
    }

    private UnitShelf.Files read() {
        List<UnitShelf.ReadFile> sound = new ArrayList<>();
        List<Refusal> faults = new ArrayList<>(unreadable);
        files.forEach((name, bytes) -> {
            Outcome<UnitType> read = UnitFiles.read(name, bytes).outcome();
            faults.addAll(read.refusals());
            if (read instanceof Outcome.Ok<UnitType> ok) {
                sound.add(new UnitShelf.ReadFile(name, bytes, ok.value()));
            }
        });
        return new UnitShelf.Files(List.copyOf(sound), List.copyOf(faults));
    }

    private static byte[] shipped() {
        try (InputStream in = Objects.requireNonNull(UnitFiles.class.getResourceAsStream("/units/" + SHIPPED))) {
            return in.readAllBytes();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
