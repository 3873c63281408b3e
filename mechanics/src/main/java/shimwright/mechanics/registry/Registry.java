package shimwright.mechanics.registry;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import shimwright.mechanics.axial.AxialSheets;
import shimwright.mechanics.fit.Fits;
import shimwright.mechanics.worksheet.Worksheet;

/** Every worksheet by name. A topic adds itself with one line. */
public final class Registry {
    private static final List<Worksheet<?, ?>> ALL = Stream.of(AxialSheets.ALL, Fits.SHEETS)
            .flatMap(List::stream)
            .sorted(Comparator.comparing(Worksheet::name))
            .toList();

    private Registry() {}

    /** All worksheets, by name. */
    public static List<Worksheet<?, ?>> all() {
        return ALL;
    }

    /** The worksheet of a name. */
    public static Optional<Worksheet<?, ?>> find(String name) {
        for (Worksheet<?, ?> sheet : ALL) {
            if (sheet.name().equals(name)) {
                return Optional.of(sheet);
            }
        }
        return Optional.empty();
    }
}
