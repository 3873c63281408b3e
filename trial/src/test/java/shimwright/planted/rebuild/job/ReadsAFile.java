package shimwright.planted.rebuild.job;

import java.io.FileReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;

/** Planted to break a rule of the house. */
final class ReadsAFile {
    private ReadsAFile() {}

    static int first() throws IOException {
        try (FileReader file = new FileReader("x", StandardCharsets.UTF_8)) {
            return file.read();
        }
    }
}
