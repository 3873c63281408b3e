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
 * @param sheets worksheets with a topic of their own, each with the title of that topic
 */
record ChecksPage(List<RowVerdict> verdicts, Map<String, List<RowVerdict>> topics, Map<String, String> sheets) {
    private static final int SOURCES = 4;
    private static final int FIVE = 5;
    private static final Set<Fate> BOUND = Set.of(Fate.MET, Fate.MISSED);

    static ChecksPage of(List<RowVerdict> verdicts) {
        Map<String, String> titles = new LinkedHashMap<>();
        Map<String, String> sheets = new LinkedHashMap<>();
        for (Table.Row row : Table.read("../published/topics.csv").rows()) {
            titles.put(row.text("file") + " " + row.text("letters"), row.text("topic"));
            if (!row.text("sheet").equals("-")) {
                sheets.put(row.text("sheet"), row.text("topic"));
            }
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
                                toList())),
                sheets);
    }

    /** The values that a worksheet of its own topic is held against, by the worksheet. */
    Map<String, List<RowVerdict>> bySheet() {
        Map<String, List<RowVerdict>> bySheet = new LinkedHashMap<>();
        sheets.forEach((sheet, title) -> bySheet.put(
                sheet,
                topics.getOrDefault(title, List.of()).stream()
                        .filter(verdict -> verdict.fate() == Fate.MET)
                        .toList()));
        return bySheet;
    }

    private static long read(List<RowVerdict> met) {
        return met.stream()
                .filter(verdict -> verdict.row().origin().equals("found"))
                .count();
    }

    /** Says openly which worksheets have fewer than five values that were read. */
    private String few() {
        String few = bySheet().entrySet().stream()
                .filter(sheet -> read(sheet.getValue()) < FIVE)
                .map(sheet -> "`" + sheet.getKey() + "` (" + read(sheet.getValue()) + ")")
                .collect(joining(", "));
        return few.isEmpty()
                ? ""
                : "\nFewer than five values could be read where they are printed, and the rest are from memory, for "
                        + few + ".\n";
    }

    /** A worksheet with how many values it is held against, how many of them were read where they are printed, and by whom they are. */
    private static String sheet(String name, List<RowVerdict> met) {
        long found = read(met);
        return "| `" + name + "` | " + met.size() + " | " + found + " | " + (met.size() - found) + " | "
                + met.stream()
                        .map(verdict -> verdict.row().source().split("[;:(]")[0].strip())
                        .distinct()
                        .limit(SOURCES)
                        .collect(joining("; "))
                        .replace('|', '/')
                + " |\n";
    }

    private static final String SHEETS = """
            ## Sheet by sheet

            Worksheets whose values stand in a topic of their own. Read: the source was read where it prints the value. From memory: the source is remembered. Several values may be of one source.

            | sheet | values | read | from memory | sources, the first four |
            |---|---|---|---|---|
            """;

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
                + " % of the rows.\n\n"
                + SHEETS
                + bySheet().entrySet().stream()
                        .map(sheet -> sheet(sheet.getKey(), sheet.getValue()))
                        .collect(joining())
                + few()
                + "\n## Not bound\n\n| row | why |\n|---|---|\n"
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
