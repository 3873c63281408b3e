package shimwright.mechanics.worksheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.measure.Budget;
import shimwright.mechanics.measure.Contribution;
import shimwright.mechanics.measure.Uncertainties;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.ParsedQuantity;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.Range;
import shimwright.mechanics.quantity.Uncertainty;
import shimwright.mechanics.quantity.UnitSystem;

/** Reads text, or what a JSON reader makes of text, into an input record; a fault leaves a null, and then no record. */
final class CaseReader {
    private static final int LONGEST_TEXT = 2000;

    private final UnitSystem system;
    private final List<Refusal> refusals = new ArrayList<>();
    private final Map<String, List<Uncertainty>> uncertainties = new LinkedHashMap<>();
    private final Set<String> taken = new LinkedHashSet<>();
    private final List<String> cautions = new ArrayList<>();

    private CaseReader(UnitSystem system) {
        this.system = system;
    }

    /**
     * Binds.
     *
     * @param type the input record
     * @param fields its fields
     * @param given values by key: text, numbers, booleans, lists, maps; dotted keys reach into records
     * @param system units of bare numbers
     */
    static <C> Outcome<BoundCase<C>> bind(
            Class<C> type, List<SheetField> fields, Map<String, ?> given, UnitSystem system) {
        CaseReader binder = new CaseReader(system);
        Object value = binder.record(type, fields, binder.nested(given), "");
        if (value == null || !binder.refusals.isEmpty()) {
            return Outcome.refused(binder.refusals);
        }
        return Outcome.ok(new BoundCase<>(type.cast(value), binder.uncertainties, binder.taken, binder.cautions));
    }

    private Map<String, Object> nested(Map<String, ?> given) {
        Map<String, Object> tree = new LinkedHashMap<>();
        for (Map.Entry<String, ?> entry : given.entrySet()) {
            if (entry.getValue() == null) {
                continue;
            }
            int dot = entry.getKey().indexOf('.');
            String head = dot < 0 ? entry.getKey() : entry.getKey().substring(0, dot);
            Object old = tree.get(head);
            Object part = dot < 0 ? entry.getValue() : Map.of(entry.getKey().substring(dot + 1), entry.getValue());
            if (old == null) {
                tree.put(head, part);
            } else if (old instanceof Map<?, ?> && part instanceof Map<?, ?>) {
                Map<String, Object> both = textKeys(old);
                both.putAll(textKeys(part));
                tree.put(head, both);
            } else {
                refuse(head, "given twice, as a whole and in parts", "Give it in one way");
            }
        }
        return tree;
    }

    private static Map<String, Object> textKeys(@Nullable Object map) {
        Map<String, Object> copy = new LinkedHashMap<>();
        if (map instanceof Map<?, ?> old) {
            old.forEach((key, value) -> copy.put(String.valueOf(key), value));
        }
        return copy;
    }

    private @Nullable Object record(Class<?> type, List<SheetField> fields, Map<String, Object> given, String path) {
        int before = refusals.size();
        List<String> names = fields.stream().map(SheetField::name).toList();
        Map<String, Object> known = new LinkedHashMap<>();
        for (Map.Entry<String, Object> entry : given.entrySet()) {
            String key = entry.getKey();
            String name = names.contains(key)
                    ? key
                    : names.stream().filter(n -> Keys.same(n, key)).findFirst().orElse("");
            if (name.isEmpty()) {
                String hint = Keys.meant(key, names)
                        .map(meant -> "Did you mean " + meant + "?")
                        .orElse("Known here: " + String.join(", ", names));
                strange(path + key, "there is no such input", hint);
            } else if (known.putIfAbsent(name, entry.getValue()) != null) {
                strange(path + key, "given twice", "Give it once");
            }
        }
        @Nullable Object[] values = new @Nullable Object[fields.size()];
        for (int i = 0; i < values.length; i++) {
            SheetField field = fields.get(i);
            boolean behind = ListText.blank(known.get(field.name())) && holdsTyped(field, fields, path);
            values[i] = behind ? 0.0 : value(field, known.get(field.name()), path + field.name());
        }
        if (refusals.size() == before) {
            for (int i = 0; i < values.length; i++) {
                take(fields, i, values, known, path);
            }
        }
        return refusals.size() == before ? Records.build(type, values) : null;
    }

    /** Whether an uncertainty left out stands behind the ± of the value it belongs to. */
    private boolean holdsTyped(SheetField uncertainty, List<SheetField> fields, String path) {
        return fields.stream()
                .anyMatch(field -> field.uncertainty().u().equals(uncertainty.name())
                        && uncertainties.containsKey(path + field.name()));
    }

    /** Takes what was typed behind ± into the inputs for it (JCGM 100:2008 5.1.2; degrees of freedom by G.4.1). */
    private void take(
            List<SheetField> fields, int at, @Nullable Object[] values, Map<String, Object> known, String path) {
        SheetField field = fields.get(at);
        List<Uncertainty> typed = field.uncertainty().u().isEmpty() ? null : uncertainties.remove(path + field.name());
        if (typed == null) {
            return;
        }
        taken.add(path + field.name());
        int u = Fields.indexOf(fields, field.uncertainty().u());
        int nu = field.uncertainty().nu().isEmpty()
                ? -1
                : Fields.indexOf(fields, field.uncertainty().nu());
        double given = (Double) Objects.requireNonNull(values[u]);
        double freedom = nu >= 0 && values[nu] instanceof Double n ? n : Double.POSITIVE_INFINITY;
        List<Contribution> parts = new ArrayList<>();
        parts.add(Contribution.of(field.uncertainty().u(), given, freedom));
        for (Uncertainty uncertainty : typed) {
            if (!uncertainty.shared().isEmpty()) {
                refuse(
                        path + field.name(),
                        "each uncertainty here counts as independent, but this one is shared as \""
                                + uncertainty.shared() + "\"",
                        "Leave shared= out, or give what is shared in an input of its own");
            } else if (nu < 0 && uncertainty.nu() <= 2) {
                refuse(
                        path + field.name(),
                        "from three readings or fewer an uncertainty has no standard deviation",
                        "Read more often, or give the uncertainty without n= and nu=");
            } else {
                boolean spread = nu < 0 && Double.isFinite(uncertainty.nu());
                parts.add(Contribution.of(
                        field.name(),
                        spread ? Uncertainties.ofScaledT(uncertainty.u(), uncertainty.nu()) : uncertainty.u(),
                        spread ? Double.POSITIVE_INFINITY : uncertainty.nu()));
            }
        }
        Budget together = Budget.of(parts);
        String name = path + fields.get(u).name();
        if (!fields.get(u).range().holds(together.u())) {
            refuse(name, "with the ± of " + field.name() + " it leaves its range", "Look at the number behind ±");
        }
        if (!ListText.blank(known.get(fields.get(u).name())) && given > 0) {
            cautions.add("The ± typed at " + path + field.name() + " and " + name + " are put together by squares.");
        }
        values[u] = together.u();
        boolean own = given == 0 && typed.stream().allMatch(uncertainty -> Double.isInfinite(uncertainty.nu()));
        if (nu >= 0 && !own) {
            values[nu] = Double.isInfinite(together.nu()) ? null : (Double) together.nu();
        }
    }

    private @Nullable Object value(SheetField field, @Nullable Object given, String path) {
        Object raw = given instanceof String text && text.isBlank() && field.shape() != Shape.TEXT ? null : given;
        if (raw == null) {
            return absent(field, path);
        }
        return switch (field.shape()) {
            case QUANTITY, OPTIONAL_QUANTITY -> quantity(field, raw, path);
            case WHOLE_NUMBER -> wholeNumber(field, raw, path);
            case YES_NO -> yesNo(raw, path);
            case CHOICE -> choice(field, raw, path);
            case TEXT -> text(raw, path);
            case LIST -> list(field, raw, path);
            case RECORD -> record(field.type(), field.children(), parts(field, raw, path), path + ".");
            case BUDGET -> throw new IllegalStateException("a budget is not an input");
        };
    }

    private @Nullable Object absent(SheetField field, String path) {
        if (field.orElse().isPresent()) {
            String text = field.orElse().get();
            return field.shape() == Shape.TEXT ? text : value(field, text, path);
        }
        if (field.shape() == Shape.OPTIONAL_QUANTITY) {
            return null;
        }
        if (field.shape() == Shape.LIST && field.fewest() == 0) {
            return List.of();
        }
        if (field.shape() == Shape.RECORD) {
            return record(field.type(), field.children(), Map.of(), path + ".");
        }
        String key = path.contains("[") ? "" : path + "=";
        String example = field.example().isEmpty() ? "It is needed" : "Type it, such as " + key + field.example();
        refuse(path, "not given", example);
        return null;
    }

    private @Nullable Object quantity(SheetField field, Object raw, String path) {
        String typed = scalar(raw, path, "one number is needed here");
        if (typed == null) {
            return null;
        }
        Outcome<ParsedQuantity> parsed =
                Quantities.parse(typed, field.kind(), field.display(system).unit(), "", field.range());
        if (!parsed.isOk()) {
            parsed.refusals().forEach(refusal -> refuse(path, refusal.fact(), refusal.hint()));
            return null;
        }
        if (!parsed.orElseThrow().uncertainties().isEmpty()) {
            uncertainties.put(path, parsed.orElseThrow().uncertainties());
        }
        return parsed.orElseThrow().si();
    }

    private @Nullable Object wholeNumber(SheetField field, Object raw, String path) {
        String typed = scalar(raw, path, "one whole number is needed here");
        if (typed == null) {
            return null;
        }
        double least = Math.max(field.range().min(), Integer.MIN_VALUE);
        double most = Math.min(field.range().max(), Integer.MAX_VALUE);
        Range range = new Range(least, most);
        Outcome<ParsedQuantity> parsed =
                Quantities.parse(typed, Kind.NUMBER, field.display(system).unit(), "", range);
        if (!parsed.isOk()) {
            parsed.refusals().forEach(refusal -> refuse(path, refusal.fact(), refusal.hint()));
            return null;
        }
        double number = parsed.orElseThrow().si();
        if (number != Math.rint(number) || parsed.orElseThrow().u().isPresent()) {
            refuse(path, "\"" + typed + "\" is not a whole number", "Type a count such as 3");
            return null;
        }
        return (int) number;
    }

    private @Nullable Object yesNo(Object raw, String path) {
        return switch (String.valueOf(raw).strip().toLowerCase(Locale.ROOT)) {
            case "yes", "true", "y", "1" -> true;
            case "no", "false", "n", "0" -> false;
            default -> {
                refuse(path, "\"" + ScalarText.shortened(raw) + "\" is neither yes nor no", "Type yes or no");
                yield null;
            }
        };
    }

    private @Nullable Object choice(SheetField field, Object raw, String path) {
        String typed = String.valueOf(raw);
        for (Object constant : field.type().getEnumConstants()) {
            if (Keys.same(((Enum<?>) constant).name(), typed)) {
                return constant;
            }
        }
        refuse(
                path,
                "\"" + ScalarText.shortened(raw) + "\" is none of the choices",
                "Choose one of: " + choices(field));
        return null;
    }

    static String choices(SheetField field) {
        return String.join(", ", field.choices());
    }

    private @Nullable Object text(Object raw, String path) {
        String typed = scalar(raw, path, "a text is needed here");
        if (typed != null && typed.length() > LONGEST_TEXT) {
            refuse(path, "the text is longer than " + LONGEST_TEXT + " letters", "Shorten it");
            return null;
        }
        return typed == null ? null : typed.strip();
    }

    private @Nullable Object list(SheetField field, Object raw, String path) {
        List<?> items = items(field, raw);
        if (items.size() < field.fewest() || items.size() > field.most()) {
            boolean few = items.size() < field.fewest();
            refuse(
                    path,
                    items.size() + (items.size() == 1 ? " entry" : " entries") + " given",
                    few ? "At least " + field.fewest() + " needed" : "At most " + field.most() + " are taken");
            return null;
        }
        List<@Nullable Object> values = new ArrayList<>();
        for (int i = 0; i < items.size(); i++) {
            Object item = items.get(i);
            String entry = path + "[" + i + "]";
            if (item == null || (item instanceof String blank && blank.isBlank())) {
                refuse(entry, "nothing typed", "Fill it or leave the entry out");
                continue;
            }
            values.add(value(field.entry(), item, entry));
        }
        return values;
    }

    private static List<?> items(SheetField field, Object raw) {
        if (raw instanceof List<?> list) {
            return list;
        }
        if (!(raw instanceof String text)) {
            return List.of(raw);
        }
        SheetField entry = field.entry();
        return switch (entry.shape()) {
            case LIST -> ListText.rows(text);
            case QUANTITY, OPTIONAL_QUANTITY, WHOLE_NUMBER -> ListText.numbers(text);
            default -> ListText.entries(text);
        };
    }

    /** The parts of a record: by name, or in order when typed as one text or list. */
    private Map<String, Object> parts(SheetField field, Object raw, String path) {
        if (raw instanceof Map<?, ?>) {
            return nested(textKeys(raw));
        }
        List<?> inOrder = raw instanceof List<?> list ? list : ListText.fields(String.valueOf(raw));
        Map<String, Object> parts = new LinkedHashMap<>();
        for (int i = 0; i < inOrder.size(); i++) {
            Object part = inOrder.get(i);
            if (i >= field.children().size()) {
                refuse(path, "more than " + field.children().size() + " parts given", "Order: " + field.order());
                break;
            }
            if (part != null) {
                parts.put(field.children().get(i).name(), part);
            }
        }
        return parts;
    }

    private @Nullable String scalar(Object raw, String path, String needed) {
        Optional<String> typed = ScalarText.of(raw);
        if (typed.isEmpty()) {
            refuse(path, needed, "");
        }
        return typed.orElse(null);
    }

    /** A key that is no input is shown as it was handed in. */
    private void strange(String typed, String fact, String hint) {
        refusals.add(new Refusal(typed, typed, fact, hint));
    }

    private void refuse(String path, String fact, String hint) {
        refusals.add(Refusal.of(path, fact, hint));
    }
}
