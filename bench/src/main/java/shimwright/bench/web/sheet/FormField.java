package shimwright.bench.web.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import shimwright.bench.sheet.UnitWords;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.MeasureUnit;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.Range;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.mechanics.worksheet.Shape;
import shimwright.mechanics.worksheet.SheetField;
import shimwright.mechanics.worksheet.Worksheet;

/**
 * One input of a worksheet as a form shows it.
 *
 * @param key name of the input, dotted inside a record
 * @param group what the record around it is; empty at the top
 * @param field the input
 * @param control how it is typed
 * @param typed what stands in it
 * @param usual what is taken when nothing is typed, where the sheet has such; else empty
 * @param hint unit, limits and how to type it
 * @param units unit keys of the pad
 * @param choices words to choose from
 * @param faults sentences about it
 * @param rare true where most cases do without it
 */
public record FormField(
        String key,
        String group,
        SheetField field,
        Control control,
        String typed,
        String usual,
        String hint,
        String units,
        List<String> choices,
        List<Refusal> faults,
        boolean rare) {
    /** The id of its field on the page. */
    public String id() {
        return "in-" + key.replace('.', '-');
    }

    private static final int FEW = 6;

    /** How an input is typed. */
    public enum Control {
        NUMBER,
        TEXT,
        LINES,
        BUTTONS,
        PICK
    }

    /**
     * The form of a worksheet.
     *
     * @param sheet the worksheet
     * @param typed by key
     * @param faults refusals; those of an input stand beside it
     * @param system units of bare numbers and hints
     */
    static List<FormField> of(
            Worksheet<?, ?> sheet, Map<String, String> typed, List<Refusal> faults, UnitSystem system) {
        List<FormField> slots = new ArrayList<>();
        add(sheet.inputs(), "", "", typed, system, slots);
        List<FormField> placed = new ArrayList<>();
        for (FormField slot : slots) {
            List<Refusal> own =
                    faults.stream().filter(fault -> fault.within(slot.key())).toList();
            placed.add(slot.with(own));
        }
        return placed;
    }

    /** Refusals that belong to no single input. */
    static List<Refusal> elsewhere(List<FormField> slots, List<Refusal> faults) {
        return faults.stream()
                .filter(fault -> slots.stream().noneMatch(slot -> slot.faults().contains(fault)))
                .toList();
    }

    private static void add(
            List<SheetField> fields,
            String prefix,
            String group,
            Map<String, String> typed,
            UnitSystem system,
            List<FormField> slots) {
        for (SheetField field : fields) {
            String key = prefix + field.name();
            if (field.shape() == Shape.RECORD) {
                add(field.children(), key + ".", field.label(), typed, system, slots);
                continue;
            }
            String text = typed.getOrDefault(key, "");
            boolean rare = !field.needed() && field.example().isEmpty() && text.isBlank();
            slots.add(new FormField(
                    key,
                    group,
                    field,
                    control(field),
                    text,
                    field.orElse().orElse(""),
                    hint(field, system),
                    units(field),
                    choices(field),
                    List.of(),
                    rare));
        }
    }

    private static Control control(SheetField field) {
        return switch (field.shape()) {
            case LIST -> Control.LINES;
            case YES_NO -> Control.BUTTONS;
            case CHOICE -> field.choices().size() <= FEW ? Control.BUTTONS : Control.PICK;
            case TEXT -> Control.TEXT;
            default -> Control.NUMBER;
        };
    }

    private static List<String> choices(SheetField field) {
        return field.shape() == Shape.YES_NO ? List.of("yes", "no") : field.choices();
    }

    private static SheetField leaf(SheetField field) {
        SheetField leaf = field;
        while (leaf.shape() == Shape.LIST) {
            leaf = leaf.entry();
        }
        return leaf;
    }

    private static String units(SheetField field) {
        SheetField leaf = leaf(field);
        if (leaf.kind() == Kind.NUMBER) {
            return "";
        }
        return Stream.of(UnitSystem.METRIC, UnitSystem.INCH)
                .map(system -> leaf.display(system).unit().symbol())
                .distinct()
                .collect(Collectors.joining("|"));
    }

    private static String hint(SheetField field, UnitSystem system) {
        SheetField leaf = leaf(field);
        List<String> words = new ArrayList<>();
        if (field.shape() == Shape.LIST) {
            words.add(
                    leaf.shape() == Shape.RECORD
                            ? "one a line, as " + leaf.order()
                            : field.entry().shape() == Shape.LIST ? "one round a line, as 0.24 / 0.31" : "one a line");
        }
        switch (leaf.shape()) {
            case QUANTITY, OPTIONAL_QUANTITY, WHOLE_NUMBER -> {
                MeasureUnit unit = leaf.display(system).unit();
                words.add(unit.symbol().isEmpty() ? "a number" : "in " + unit.symbol());
                words.add(limits(leaf.range(), unit));
            }
            case CHOICE -> words.add(field.shape() == Shape.LIST ? String.join(", ", leaf.choices()) : "");
            default -> words.add("");
        }
        String example = field.example();
        words.add(example.isEmpty() || example.length() > 60 ? "" : "such as " + example);
        return words.stream().filter(word -> !word.isEmpty()).collect(Collectors.joining("; "));
    }

    private static String limits(Range range, MeasureUnit unit) {
        boolean low = Double.isFinite(range.min());
        boolean high = Double.isFinite(range.max());
        if (low && high) {
            return Quantities.brief(range.min(), unit) + " to " + Quantities.brief(range.max(), unit);
        }
        if (low) {
            return "at least " + Quantities.brief(range.min(), unit);
        }
        return high ? "at most " + Quantities.brief(range.max(), unit) : "";
    }

    private FormField with(List<Refusal> own) {
        return new FormField(
                key, group, field, control, typed, usual, hint, units, choices, own, rare && own.isEmpty());
    }

    /** The label: the meaning as a heading. */
    public String label() {
        String words = field.meaning();
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    /** A refusal where its input is in sight: of its label only what lies within, and without the key to type. */
    public String sentence(Refusal fault) {
        String label = label(fault.place());
        return Refusal.at(label, fault.fact(), fault.hint().replace(key + "=", ""))
                .sentence();
    }

    private String label(String place) {
        String group = this.group.isEmpty() ? "" : this.group + ", ";
        String own = group + field.label();
        return place.startsWith(own) ? place.substring(own.length()).replaceFirst("^[,. ]+", "") : place;
    }

    /** What was typed, for paper: a bare number with the unit it was meant in. */
    public String printed(UnitSystem system) {
        return UnitWords.carried(field, typed, system).replace("\n", "; ");
    }

    /** What is chosen: what was typed, else the usual. */
    public boolean chosen(String choice) {
        String now = typed.isBlank() ? usual : typed;
        return plain(choice).equals(plain(now));
    }

    private static String plain(String words) {
        return words.replaceAll("[-_\\s]", "").toLowerCase(Locale.ROOT);
    }

    /** Rows of a text area. */
    public int rows() {
        return Math.max(3, Math.min(12, (int) typed.lines().count() + 1));
    }
}
