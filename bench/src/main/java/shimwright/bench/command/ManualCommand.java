package shimwright.bench.command;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Map;
import shimwright.bench.sheet.Manual;

/** {@code calc --manual DIR}: writes the manual's pages into a folder. */
final class ManualCommand {
    private static final int REFUSED = 2;

    private ManualCommand() {}

    static int run(String folder, PrintStream out, PrintStream err) {
        if (folder.isEmpty()) {
            err.println("Say where to: calc --manual docs/manual");
            return REFUSED;
        }
        try {
            Path to = Files.createDirectories(Path.of(folder));
            Map<String, String> pages = Manual.pages();
            for (Map.Entry<String, String> page : pages.entrySet()) {
                Files.writeString(to.resolve(page.getKey()), page.getValue());
            }
            out.println(pages.size() + " pages in " + to);
            return 0;
        } catch (IOException | InvalidPathException broken) {
            err.println(folder + ": cannot be written. Name a folder of your own.");
            return REFUSED;
        }
    }
}
