package shimwright.mechanics.published;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.joining;
import static java.util.stream.Collectors.toList;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import shimwright.mechanics.published.RowVerdict.Fate;
import shimwright.mechanics.reference.Table;

/**
 * The account of published values.
 *
 * @param verdicts all of them
 * @param topics them by the title of their topic
 */
record ChecksPage(List<RowVerdict> verdicts, Map<String, List<RowVerdict>> topics) {
    private static final Set<Fate> BOUND = Set.of(Fate.MET, Fate.MISSED);

    static ChecksPage of(List<RowVerdict> verdicts) {
        Map<String, String> titles = new LinkedHashMap<>();
        for (Table.Row row : Table.read("../published/topics.csv").rows()) {
            titles.put(row.text("file") + " " + row.text("letters"), row.text("topic"));
        }
        return new ChecksPage(
                verdicts,
                verdicts.stream()
                        .collect(groupingBy(
                                verdict -> {
                                    String letters = verdict.row().topic() + " "
                                            + verdict.row().id().replaceFirst("[^A-Za-z].*", "");
                                    return titles.getOrDefault(letters, letters);
                                },
                                LinkedHashMap::new,
                                toList())));
    }

    private static long count(List<RowVerdict> verdicts, Set<Fate> fates) {
        return verdicts.stream()
                .filter(verdict -> fates.contains(verdict.fate()))
                .count();
    }

    /** One line: bound, met, circular, listed, skipped. */
    String sum() {
        return "checks: " + count(verdicts, BOUND) + " bound, " + count(verdicts, Set.of(Fate.MET)) + " met, "
                + count(verdicts, Set.of(Fate.CIRCULAR)) + " circular, " + count(verdicts, Set.of(Fate.LISTED))
                + " listed, " + count(verdicts, Set.of(Fate.SKIPPED)) + " skipped\n";
    }

    /** The page by topic, and the reasons of what is not bound. */
    String text() {
        return """
                <!-- Made by PublishedValuesTest with -Dshimwright.write=true; counted by running it. -->

                # Published values and what became of them

                Rows of `published/checks/*.csv`. Bound: a test asks our code for the row. Met: within the row's own tolerance. Circular: what is typed was made from the answer, so the row proves nothing and does not count as bound. Listed: not bound, with the reason below. A row that is none of these, or a tolerance so wide that it shows nothing, fails the build.

                | topic | rows | bound | met | circular | listed |
                |---|---|---|---|---|---|
                """
                + topics.entrySet().stream()
                        .map(topic -> row(topic.getKey(), topic.getValue()))
                        .collect(joining())
                + row("**all**", verdicts)
                + "\nBound: " + Math.round(1000.0 * count(verdicts, BOUND) / verdicts.size()) / 10.0
                + " % of the rows.\n\n## Not bound\n\n| row | why |\n|---|---|\n"
                + verdicts.stream()
                        .filter(verdict -> !BOUND.contains(verdict.fate()))
                        .map(verdict -> "| " + verdict.row().topic() + " "
                                + verdict.row().id() + " | " + (verdict.fate() == Fate.CIRCULAR ? "circular: " : "")
                                + verdict.words() + " |\n")
                        .collect(joining());
    }

    private static String row(String title, List<RowVerdict> verdicts) {
        return "| " + title + " | " + verdicts.size() + " | " + count(verdicts, BOUND) + " | "
                + count(verdicts, Set.of(Fate.MET)) + " | " + count(verdicts, Set.of(Fate.CIRCULAR)) + " | "
                + count(verdicts, Set.of(Fate.LISTED)) + " |\n";
    }
}
