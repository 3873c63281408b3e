package shimwright.mechanics.published;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** The values published by others that are kept in the tree, under {@code published}; they are always there. */
public final class PublishedFiles {
    private static final Path FOLDER = Path.of(System.getProperty("shimwright.root", ".."), "published");

    private PublishedFiles() {}

    /** A file by its path under the folder. */
    public static Path file(String path) {
        return FOLDER.resolve(path);
    }

    /** The rows of {@code checks/NAME.csv}, by column name. */
    public static List<CSVRecord> rows(String name) {
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (Reader reader = Files.newBufferedReader(file("checks/" + name + ".csv"), StandardCharsets.UTF_8)) {
            return format.parse(reader).getRecords();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
