package shimwright.mechanics.axial.stack;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import shimwright.mechanics.quantity.Units;

/** Printed expansion coefficients by material, from the table {@code expansion.csv}. */
public final class ExpansionTable {
    /**
     * A row of the table.
     *
     * @param material as listed
     * @param coefficient 1/K, near room temperature
     * @param source book and table
     */
    public record Row(String material, double coefficient, String source) {}

    private static final List<Row> ROWS = read();

    private ExpansionTable() {}

    /** All rows, in the order of the file. */
    public static List<Row> rows() {
        return ROWS;
    }

    /** The row of a material, without regard to capitals. */
    public static Optional<Row> find(String material) {
        String wanted = material.strip().toLowerCase(Locale.ROOT);
        return ROWS.stream()
                .filter(row -> row.material().toLowerCase(Locale.ROOT).equals(wanted))
                .findFirst();
    }

    private static List<Row> read() {
        try (InputStream file = ExpansionTable.class.getResourceAsStream("expansion.csv")) {
            if (file == null) {
                throw new IllegalStateException("expansion.csv is not in the jar");
            }
            BufferedReader lines = new BufferedReader(new InputStreamReader(file, StandardCharsets.UTF_8));
            List<String> text =
                    lines.lines().filter(line -> !line.startsWith("#")).toList();
            List<String> columns = Arrays.asList(text.get(0).split(",", -1));
            int material = columns.indexOf("material");
            int coefficient = columns.indexOf("coefficient_um_per_m_K");
            int source = columns.indexOf("source");
            List<Row> rows = new ArrayList<>();
            for (String line : text.subList(1, text.size())) {
                String[] cells = line.split(",", columns.size());
                rows.add(new Row(
                        cells[material],
                        Units.UM_PER_M_K.toSi(Double.parseDouble(cells[coefficient])),
                        cells[source].replace("\"", "")));
            }
            return List.copyOf(rows);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
