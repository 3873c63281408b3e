package shimwright.mechanics.worksheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * How lists are typed. Entries stand between semicolons, new lines, comma-and-space or, for numbers, blanks; numbers of
 * one round between slashes; fields of one entry between colons or comma-and-space. A unit behind the last number alone
 * counts for all.
 */
final class ListText {
    private static final Pattern SLASH = Pattern.compile("(?<=\\d)\\s*/\\s*(?=[+-]?[.,]?\\d)");
    private static final Pattern BLANK = Pattern.compile("(?<![±\\-/])\\s+(?=[+-]?[.,]?\\d)");
    private static final Pattern BARE = Pattern.compile("[+-]?[\\d.,]+(?:[eE][+-]?\\d+)?");
    private static final Pattern WITH_UNIT = Pattern.compile("[+-]?[\\d.,]+(?:[eE][+-]?\\d+)?\\s*([^\\d\\s±+.,-].*)");

    private ListText() {}

    /** Entries that are numbers. */
    static List<String> numbers(String text) {
        return spread(cut(text));
    }

    /** Rows of numbers; without semicolons each number, or group joined by slashes, is a row. */
    static List<List<String>> rows(String text) {
        List<List<String>> rows = new ArrayList<>();
        boolean semicolons = hasRows(text);
        for (String row : semicolons ? entries(text) : cut(text)) {
            List<String> cells = new ArrayList<>();
            for (String part : SLASH.split(row)) {
                cells.addAll(cut(part));
            }
            rows.add(cells);
        }
        List<String> flat = spread(rows.stream().flatMap(List::stream).toList());
        List<List<String>> spread = new ArrayList<>();
        int next = 0;
        for (List<String> row : rows) {
            spread.add(flat.subList(next, next + row.size()));
            next += row.size();
        }
        return spread;
    }

    /** Entries between semicolons or new lines. */
    static List<String> entries(String text) {
        return trimmed(text.split("[;\\n]"));
    }

    /** Fields of one entry. */
    static List<String> fields(String text) {
        return Arrays.stream(text.split(text.contains(":") ? ":" : ",\\s", -1))
                .map(String::strip)
                .toList();
    }

    private static boolean hasRows(String text) {
        return text.contains(";") || text.contains("\n");
    }

    private static List<String> cut(String text) {
        if (hasRows(text)) {
            return entries(text);
        }
        if (text.matches("(?s).*,\\s.*")) {
            return trimmed(text.split(",\\s"));
        }
        if (text.contains(".") && text.contains(",") && !text.matches(".*\\s.*")) {
            return trimmed(text.split(","));
        }
        return trimmed(BLANK.split(text.strip()));
    }

    private static List<String> trimmed(String[] parts) {
        return Arrays.stream(parts)
                .map(String::strip)
                .filter(part -> !part.isEmpty())
                .toList();
    }

    private static List<String> spread(List<String> parts) {
        if (parts.size() < 2) {
            return parts;
        }
        List<String> others = parts.subList(0, parts.size() - 1);
        Matcher last = WITH_UNIT.matcher(parts.get(parts.size() - 1));
        if (!last.matches()
                || !others.stream().allMatch(part -> BARE.matcher(part).matches())) {
            return parts;
        }
        List<String> all = new ArrayList<>();
        others.forEach(part -> all.add(part + " " + last.group(1)));
        all.add(parts.get(parts.size() - 1));
        return all;
    }

    /** Whether nothing was typed. */
    static boolean blank(@Nullable Object given) {
        return given == null || (given instanceof String text && text.isBlank());
    }
}
