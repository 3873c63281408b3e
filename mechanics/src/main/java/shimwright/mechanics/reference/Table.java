package shimwright.mechanics.reference;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A printed table. The file starts with {@code # table:}, {@code # unit:}, {@code # typed:} and {@code # checked:}, then
 * one line of column names, then one line a row; cells stand between commas and hold no comma. A file that breaks this
 * is a bug and throws.
 *
 * @param name number and title of the printed table
 * @param unit of its numbers
 * @param typed by whom, from what
 * @param checked whether and against what
 * @param rows in the order of the file
 */
public record Table(String name, String unit, String typed, String checked, List<Row> rows) {
    public Table {
        rows = List.copyOf(rows);
    }

    /**
     * One line of the table.
     *
     * @param cells text by column name; an empty cell is absent
     */
    public record Row(Map<String, String> cells) {
        public Row {
            cells = Map.copyOf(cells);
        }

        /** Whether the cell is filled. */
        public boolean has(String column) {
            return cells.containsKey(column);
        }

        /** The text of a filled cell. */
        public String text(String column) {
            String cell = cells.get(column);
            if (cell == null) {
                throw new IllegalArgumentException("no cell " + column + " in " + cells);
            }
            return cell;
        }

        /** The number of a filled cell, in the unit of the table. */
        public double number(String column) {
            return Double.parseDouble(text(column));
        }
    }

    /** Reads a file below the folder of reference tables, such as {@code iso-286-1-2010/table-1.csv}. */
    public static Table read(String path) {
        return resource("/shimwright/mechanics/reference/" + path);
    }

    /** Reads a file of the class path by its whole path, for tables that are not printed ones. */
    public static Table resource(String path) {
        try (InputStream file = Table.class.getResourceAsStream(path)) {
            if (file == null) {
                throw new IllegalArgumentException("no reference table " + path);
            }
            return parse(path, new String(file.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException unreadable) {
            throw new UncheckedIOException("reference table " + path, unreadable);
        }
    }

    private static Table parse(String path, String text) {
        Map<String, String> header = new LinkedHashMap<>();
        List<String> columns = List.of();
        List<Row> rows = new ArrayList<>();
        for (String line : text.lines().filter(line -> !line.isBlank()).toList()) {
            if (line.startsWith("#")) {
                String[] pair = line.substring(1).split(":", 2);
                header.merge(pair[0].strip(), pair[pair.length - 1].strip(), (one, two) -> one + " " + two);
            } else if (columns.isEmpty()) {
                columns = List.of(line.split(",", -1));
            } else {
                rows.add(row(path, columns, line.split(",", -1)));
            }
        }
        return new Table(
                needed(path, header, "table"),
                needed(path, header, "unit"),
                needed(path, header, "typed"),
                needed(path, header, "checked"),
                rows);
    }

    private static Row row(String path, List<String> columns, String[] cells) {
        if (cells.length != columns.size()) {
            throw new IllegalArgumentException(path + ": " + String.join(",", cells) + " has " + cells.length
                    + " cells, " + columns.size() + " columns");
        }
        Map<String, String> row = new LinkedHashMap<>();
        for (int i = 0; i < cells.length; i++) {
            if (!cells[i].isBlank()) {
                row.put(columns.get(i).strip(), cells[i].strip());
            }
        }
        return new Row(row);
    }

    private static String needed(String path, Map<String, String> header, String key) {
        String value = header.get(key);
        if (value == null || value.isEmpty()) {
            throw new IllegalArgumentException(path + " lacks its # " + key + ":");
        }
        return value;
    }
}
