package shimwright.mechanics.published;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.Reader;
import java.lang.reflect.Constructor;
import java.lang.reflect.Method;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import shimwright.mechanics.reference.Table;

/**
 * The table of published values: how many rows are bound, met or listed, by topic, counted by running the tests that
 * bind them. {@code mvn -pl mechanics test -Dtest=ChecksTableTest -Dshimwright.write=true} writes {@code
 * docs/checks.md}; without it the kept table must be the counted one.
 */
class ChecksTableTest {
    private static final String ROOT = System.getProperty("shimwright.root", "..");
    private static final Path PAGE = Path.of(ROOT, "docs", "checks.md");
    private static final String PACKAGE = "shimwright.mechanics.";

    /** A file of rows and the test that binds them. */
    private record Source(String file, String test, String method) {}

    private static final List<Source> SOURCES = List.of(
            new Source("metrology", "published.MetrologyChecksTest", "measuringAndDeciding"),
            new Source("fits", "fit.FitsCsvTest", "everyPublishedValueIsMet"),
            new Source("gears", "gears.GearChecksTest", "everyRowIsMetOrListed"),
            new Source("joints", "joints.JointsCsvTest", "isMetToItsTolerance"));

    private static final class Count {
        int rows;
        int bound;
        int met;
        int listed;
    }

    @Test
    void theKeptTableIsTheCountedOne() throws Exception {
        Map<String, String> topics = topics();
        Map<String, Count> counts = new LinkedHashMap<>();
        List<String> reasons = new ArrayList<>();
        for (Source source : SOURCES) {
            count(source, topics, counts, reasons);
        }
        String page = page(counts, reasons);
        if (Boolean.getBoolean("shimwright.write")) {
            Files.writeString(PAGE, page);
        }
        assertThat(PAGE)
                .as("stale: run mvn -pl mechanics test -Dtest=ChecksTableTest -Dshimwright.write=true")
                .content(StandardCharsets.UTF_8)
                .isEqualTo(page);
        assertThat(counts.values()).allMatch(count -> count.met == count.bound);
    }

    /** Titles by file and the letters a row's id begins with. */
    private static Map<String, String> topics() {
        Map<String, String> topics = new LinkedHashMap<>();
        for (Table.Row row : Table.read("../published/topics.csv").rows()) {
            topics.put(row.text("file") + " " + row.text("letters"), row.text("topic"));
        }
        return topics;
    }

    private static void count(
            Source source, Map<String, String> topics, Map<String, Count> counts, List<String> reasons)
            throws Exception {
        Map<String, Boolean> met = ran(source);
        Map<String, String> listed = listed(source.file());
        for (String id : ids(source.file())) {
            String letters = source.file() + " " + id.replaceFirst("[^A-Za-z].*", "");
            Count count = counts.computeIfAbsent(topics.getOrDefault(letters, letters), key -> new Count());
            count.rows++;
            if (met.containsKey(id)) {
                count.bound++;
                count.met += met.getOrDefault(id, false) ? 1 : 0;
            } else {
                count.listed++;
                reasons.add("| " + source.file() + " " + id + " | " + listed.getOrDefault(id, "no worksheet answers it")
                        + " |");
            }
        }
    }

    private static Map<String, Boolean> ran(Source source) throws Exception {
        Constructor<?> constructor = Class.forName(PACKAGE + source.test()).getDeclaredConstructor();
        constructor.setAccessible(true);
        Method method = constructor.getDeclaringClass().getDeclaredMethod(source.method());
        method.setAccessible(true);
        Map<String, Boolean> met = new TreeMap<>();
        for (Object one : ((Stream<?>) method.invoke(constructor.newInstance())).toList()) {
            DynamicTest test = (DynamicTest) one;
            met.merge(test.getDisplayName().split(" ", 2)[0], passes(test), Boolean::logicalAnd);
        }
        return met;
    }

    private static boolean passes(DynamicTest test) {
        try {
            test.getExecutable().execute();
            return true;
        } catch (Throwable notMet) {
            return false;
        }
    }

    private static List<String> ids(String name) throws IOException {
        Path file = Path.of(System.getProperty("shimwright.checks", ROOT + "/../shared/checks"), name + ".csv");
        Assumptions.assumeTrue(Files.exists(file), "no published values at " + file);
        List<String> ids = new ArrayList<>();
        try (Reader reader = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
            for (CSVRecord row : CSVFormat.DEFAULT
                    .builder()
                    .setHeader()
                    .setSkipHeaderRecord(true)
                    .get()
                    .parse(reader)) {
                ids.add(row.get("id"));
            }
        }
        return ids;
    }

    private static Map<String, String> listed(String name) throws IOException {
        Map<String, String> listed = new TreeMap<>();
        Path tests = Path.of(ROOT, "mechanics", "src", "test", "resources");
        Path file = switch (name) {
            case "fits" -> tests.resolve("shimwright/mechanics/fit/fits-listed.csv");
            case "gears" -> tests.resolve("gears/listed.txt");
            case "joints" -> tests.resolve("shimwright/mechanics/joints/listed.txt");
            default -> tests.resolve("shimwright/mechanics/published/" + name + "-listed.txt");
        };
        if (Files.exists(file)) {
            for (String line : Files.readAllLines(file)) {
                String[] parts = line.split("\\s*(?:::|\\||,)\\s*", 2);
                if (!line.startsWith("#") && parts.length == 2) {
                    listed.put(parts[0].strip(), parts[1].strip());
                }
            }
        }
        return listed;
    }

    private static String page(Map<String, Count> counts, List<String> reasons) {
        StringBuilder out = new StringBuilder();
        out.append("<!-- Made by ChecksTableTest with -Dshimwright.write=true; counted by running the tests. -->\n\n");
        out.append("# Published values and what became of them\n\n");
        out.append("Rows of `../shared/checks/*.csv`. Bound: a test asks our code for the row. Met: within the row's");
        out.append(" own tolerance. Listed: not bound, with the reason below.\n\n");
        out.append("| topic | rows | bound | met | listed |\n|---|---|---|---|---|\n");
        Count all = new Count();
        counts.forEach((topic, count) -> {
            row(out, topic, count);
            all.rows += count.rows;
            all.bound += count.bound;
            all.met += count.met;
            all.listed += count.listed;
        });
        row(out, "**all**", all);
        out.append("\nBound: ")
                .append(Math.round(1000.0 * all.bound / all.rows) / 10.0)
                .append(" % of the rows.\n");
        out.append("\n## Listed\n\n| row | why |\n|---|---|\n");
        reasons.forEach(reason -> out.append(reason).append('\n'));
        return out.toString();
    }

    private static void row(StringBuilder out, String topic, Count count) {
        out.append("| ")
                .append(topic)
                .append(" | ")
                .append(count.rows)
                .append(" | ")
                .append(count.bound);
        out.append(" | ").append(count.met).append(" | ").append(count.listed).append(" |\n");
    }
}
