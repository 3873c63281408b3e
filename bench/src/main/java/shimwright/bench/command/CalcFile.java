package shimwright.bench.command;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import shimwright.bench.sheet.Cases;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;

/** Reads cases for {@code calc} from a file, which is JSON or CSV by its name. */
final class CalcFile {
    private CalcFile() {}

    /**
     * Reads a file case by case; CSV is never held as a whole.
     *
     * @return why reading stopped; empty when all was read
     */
    static List<Refusal> read(Path file, Consumer<Cases.Case> each) {
        String name = file.toString();
        try (Reader reader = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
            if (name.toLowerCase(Locale.ROOT).endsWith(".json")) {
                Outcome<Cases.Read> read = Cases.json(reader, name);
                if (read instanceof Outcome.Ok<Cases.Read> ok) {
                    ok.value().cases().forEach(each);
                }
                return read.refusals();
            }
            if (name.toLowerCase(Locale.ROOT).endsWith(".csv")) {
                return Cases.csv(reader, name, each);
            }
            return List.of(Refusal.at(name, "is neither .json nor .csv", "Name it for what it is"));
        } catch (NoSuchFileException missing) {
            return List.of(Refusal.at(name, "there is no such file", "Check the name and the folder"));
        } catch (IOException | UncheckedIOException | InvalidPathException unreadable) {
            return List.of(Refusal.at(name, "cannot be read", "It must be a text file in UTF-8"));
        }
    }
}
