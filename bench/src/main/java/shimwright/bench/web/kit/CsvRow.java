package shimwright.bench.web.kit;

import java.util.Arrays;
import java.util.stream.Collectors;

/** A row of a table for other programs: each cell in quotes, and none that a spreadsheet would take for a formula. */
public final class CsvRow {
    /** What a formula begins with in the spreadsheets there are, also in letters of full width and behind blanks. */
    private static final String FORMULA = "(?s)[\\s\\p{Cc}\\p{Z}]*[=+@\\-\\uFF1D\\uFF0B\\uFF20\\uFF0D].*|[\\t\\r\\n].*";

    private CsvRow() {}

    /** The row with its line end; a cell that could be taken for a formula is led by an apostrophe. */
    public static String of(String... cells) {
        return Arrays.stream(cells).map(CsvRow::cell).collect(Collectors.joining(",")) + "\n";
    }

    private static String cell(String text) {
        return '"' + (text.matches(FORMULA) ? "'" + text : text).replace("\"", "\"\"") + '"';
    }
}
