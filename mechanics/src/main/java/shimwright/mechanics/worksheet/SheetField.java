package shimwright.mechanics.worksheet;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.Range;
import shimwright.mechanics.quantity.UnitSystem;

/**
 * One input or output of a worksheet, as its annotations describe it.
 *
 * @param name component name, which is also the key
 * @param shape how its value is built
 * @param type its Java type
 * @param kind what its numbers measure
 * @param meaning in words
 * @param range allowed SI values
 * @param metric unit and decimals for the metric system
 * @param orElse text taken when nothing is given
 * @param example text as typed; may be empty
 * @param fewest fewest entries of a list
 * @param most most entries of a list
 * @param children the components of a record, or the one field describing the entries of a list
 * @param uncertainty where the uncertainty of it stands
 * @param infinite words for an infinite result; may be empty
 */
public record SheetField(
        String name,
        Shape shape,
        Class<?> type,
        Kind kind,
        String meaning,
        Range range,
        UnitSystem.Display metric,
        Optional<String> orElse,
        String example,
        int fewest,
        int most,
        List<SheetField> children,
        UncertaintyPlace uncertainty,
        String infinite) {

    /**
     * Where the uncertainty of a number stands: names of siblings, each may be empty.
     *
     * @param u standard uncertainty
     * @param nu its degrees of freedom
     * @param budget its parts
     * @param elsewhere of an input: the output whose uncertainty from ± this standard uncertainty takes in
     */
    public record UncertaintyPlace(String u, String nu, String budget, String elsewhere) {}

    /** The meaning in few words: what stands before the first colon, semicolon or example. */
    public String label() {
        return meaning.split("[:;] |, such as ", 2)[0];
    }

    /** The field of the entries of a list. */
    public SheetField entry() {
        return children.get(0);
    }

    /** The words of a choice, as they are typed and shown; empty where it is none. */
    public List<String> choices() {
        return shape == Shape.CHOICE
                ? Stream.of(type.getEnumConstants())
                        .map(constant -> Render.words((Enum<?>) constant))
                        .toList()
                : List.of();
    }

    /** How the parts of a record are typed in one line: {@code name: length: u}. */
    public String order() {
        return children.stream().map(SheetField::name).collect(Collectors.joining(": "));
    }

    /** The parts of a record typed in one line, by the names of its components; more parts than it has are left out. */
    public Map<String, String> parts(String line) {
        List<String> typed = ListText.fields(line);
        Map<String, String> parts = new LinkedHashMap<>();
        for (int i = 0; i < typed.size() && i < children.size(); i++) {
            parts.put(children.get(i).name(), typed.get(i));
        }
        return parts;
    }

    /** Whether it must be given. */
    public boolean needed() {
        return switch (shape) {
            case OPTIONAL_QUANTITY -> false;
            case LIST -> fewest > 0 && orElse.isEmpty();
            case RECORD -> orElse.isEmpty() && children.stream().anyMatch(SheetField::needed);
            default -> orElse.isEmpty();
        };
    }

    /** Unit and decimals in a system: the field's own in metric, else those of the kind. */
    public UnitSystem.Display display(UnitSystem system) {
        UnitSystem.Display usual = system.display(kind);
        boolean noInchUnit = usual.equals(UnitSystem.METRIC.display(kind));
        return noInchUnit ? metric : usual;
    }
}
