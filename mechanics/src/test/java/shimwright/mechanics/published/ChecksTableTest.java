package shimwright.mechanics.published;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.Constructor;
import java.lang.reflect.Method;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import shimwright.mechanics.fit.FitRows;
import shimwright.mechanics.gears.GearRows;
import shimwright.mechanics.joints.JointRows;
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
        int circular;
        int listed;
    }

    @Test
    void theKeptTableIsTheCountedOne() throws Exception {
        Map<String, String> topics = topics();
        Map<String, Count> counts = new LinkedHashMap<>();
        List<String> reasons = new ArrayList<>();
        Set<String> circular = circular();
        for (Source source : SOURCES) {
            count(source, circular, topics, counts, reasons);
        }
        String page = page(counts, reasons);
        Count all = sum(counts);
        Files.createDirectories(Path.of(ROOT, "mechanics", "target"));
        Files.writeString(
                Path.of(ROOT, "mechanics", "target", "checks.txt"),
                "checks: " + all.bound + " bound, " + all.met + " met, " + all.circular + " circular, " + all.listed
                        + " listed\n");
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
            Source source,
            Set<String> circular,
            Map<String, String> topics,
            Map<String, Count> counts,
            List<String> reasons)
            throws Exception {
        Map<String, Boolean> met = ran(source);

        Map<String, String> listed = listed(source.file());
        for (String id : ids(source.file())) {
            String letters = source.file() + " " + id.replaceFirst("[^A-Za-z].*", "");
            Count count = counts.computeIfAbsent(topics.getOrDefault(letters, letters), key -> new Count());
            count.rows++;
            if (circular.contains(id)) {
                count.circular++;
                reasons.add("| " + source.file() + " " + id + " | circular: what is typed was made from the answer |");
            } else if (met.containsKey(id)) {
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

    private static List<String> ids(String name) {
        return PublishedFiles.rows(name).stream().map(row -> row.get("id")).toList();
    }

    /** Rows of any topic whose answer was typed, found by asking again with each number moved. */
    private static Set<String> circular() {
        return Stream.of(MetrologyChecksTest.checks().typed(), FitRows.typed(), GearRows.typed(), JointRows.typed())
                .flatMap(List::stream)
                .filter(TypedRow::circular)
                .map(TypedRow::id)
                .collect(Collectors.toCollection(TreeSet::new));
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
        out.append("Rows of `published/checks/*.csv`. Bound: a test asks our code for the row. Met: within the row's");
        out.append(
                " own tolerance. Circular: what was typed was made from the answer, so the row proves nothing and does not count as bound. Listed: not bound, with the reason below.\n\n");
        out.append("| topic | rows | bound | met | circular | listed |\n|---|---|---|---|---|---|\n");
        Count all = sum(counts);
        counts.forEach((topic, count) -> row(out, topic, count));
        row(out, "**all**", all);
        out.append("\nBound: ")
                .append(Math.round(1000.0 * all.bound / all.rows) / 10.0)
                .append(" % of the rows.\n");
        out.append("\n## Listed\n\n| row | why |\n|---|---|\n");
        reasons.forEach(reason -> out.append(reason).append('\n'));
        return out.toString();
    }

    private static Count sum(Map<String, Count> counts) {
        Count all = new Count();
        for (Count count : counts.values()) {
            all.rows += count.rows;
            all.bound += count.bound;
            all.met += count.met;
            all.circular += count.circular;
            all.listed += count.listed;
        }
        return all;
    }

    private static void row(StringBuilder out, String topic, Count count) {
        out.append("| ")
                .append(topic)
                .append(" | ")
                .append(count.rows)
                .append(" | ")
                .append(count.bound);
        out.append(" | ")
                .append(count.met)
                .append(" | ")
                .append(count.circular)
                .append(" | ")
                .append(count.listed)
                .append(" |\n");
    }
}
