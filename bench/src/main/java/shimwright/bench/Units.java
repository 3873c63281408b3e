package shimwright.bench;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.unit.UnitFiles;
import shimwright.rebuild.unit.UnitType;

/** The unit files on the shelf: the shipped example and those in the shop's own folder. */
final class Units {
    private static final String SHIPPED = "ambleholt-l5-74.yaml";

    private Units() {}

    /** All unit types; refused with every problem of every file where one cannot be read. */
    static Outcome<List<UnitType>> onShelf(Path folder) {
        List<Outcome<UnitType>> read = new ArrayList<>();
        read.add(UnitFiles.read(SHIPPED, shipped()).outcome());
        if (Files.isDirectory(folder)) {
            try (Stream<Path> files = Files.list(folder)) {
                for (Path file : files.filter(f -> f.toString().endsWith(".yaml"))
                        .sorted()
                        .toList()) {
                    read.add(UnitFiles.read(file.toString(), Files.readAllBytes(file))
                            .outcome());
                }
            } catch (IOException broken) {
                read.add(Outcome.refused(List.of(new Refusal(
                        folder.toString(), "it cannot be read: " + broken.getMessage(), "Look at its permissions"))));
            }
        }
        return Outcome.all(read);
    }

    private static byte[] shipped() {
        try (InputStream in = Objects.requireNonNull(UnitFiles.class.getResourceAsStream("/units/" + SHIPPED))) {
            return in.readAllBytes();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
