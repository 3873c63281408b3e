package shimwright.mechanics.worksheet;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.measure.Budget;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.MeasureUnit;
import shimwright.mechanics.quantity.Range;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.mechanics.quantity.Units;

/** Reads the annotations of records. Anything a worksheet may not contain is a bug and throws. */
final class Fields {
    private static final Pattern INDEX = Pattern.compile("\\[\\d+]");

    private static final ClassValue<List<SheetField>> INPUTS = new ClassValue<>() {
        @Override
        protected List<SheetField> computeValue(Class<?> type) {
            return readInputs(type);
        }
    };
    private static final ClassValue<List<SheetField>> OUTPUTS = new ClassValue<>() {
        @Override
        protected List<SheetField> computeValue(Class<?> type) {
            return readOutputs(type);
        }
    };

    private Fields() {}

    static List<SheetField> inputs(Class<?> record) {
        return INPUTS.get(record);
    }

    static List<SheetField> outputs(Class<?> record) {
        return OUTPUTS.get(record);
    }

    private static List<SheetField> readInputs(Class<?> record) {
        List<SheetField> fields = new ArrayList<>();
        for (RecordComponent component : record.getRecordComponents()) {
            if (component.isAnnotationPresent(Group.class)) {
                fields.addAll(inputs(component.getType()));
                continue;
            }
            Input note = component.getAnnotation(Input.class);
            if (note == null) {
                throw new IllegalArgumentException(where(component) + " has no @Input");
            }
            SheetField field = input(component.getName(), component.getGenericType(), note, where(component));
            fields.add(field);
        }
        return List.copyOf(fields);
    }

    private static List<SheetField> readOutputs(Class<?> record) {
        List<SheetField> fields = new ArrayList<>();
        for (RecordComponent component : record.getRecordComponents()) {
            if (component.isAnnotationPresent(Group.class)) {
                fields.addAll(outputs(component.getType()));
                continue;
            }
            Output note = component.getAnnotation(Output.class);
            if (note == null) {
                throw new IllegalArgumentException(where(component) + " has no @Output");
            }
            fields.add(output(component.getName(), component.getGenericType(), note, where(component)));
        }
        return List.copyOf(fields);
    }

    /** A path in the words of its fields: "loose pieces entry 3, measured thickness"; empty where it leads to none. */
    static Optional<String> label(List<SheetField> fields, String path) {
        List<String> words = new ArrayList<>();
        List<SheetField> level = fields;
        for (String step : path.split("\\.", -1)) {
            String name = INDEX.matcher(step).replaceAll("");
            Optional<SheetField> here =
                    level.stream().filter(field -> field.name().equals(name)).findFirst();
            if (here.isEmpty()) {
                return Optional.empty();
            }
            words.add(here.get().label() + Refusal.words(step.substring(name.length())));
            level = leaf(here.get()).children();
        }
        return Optional.of(String.join(", ", words));
    }

    private static SheetField leaf(SheetField field) {
        SheetField leaf = field;
        while (leaf.shape() == Shape.LIST) {
            leaf = leaf.entry();
        }
        return leaf;
    }

    /** The field at a path such as {@code drawer[2].thickness}. */
    static SheetField at(List<SheetField> fields, String path) {
        List<SheetField> level = fields;
        @Nullable SheetField found = null;
        for (String step : path.split("\\.", -1)) {
            String name = INDEX.matcher(step).replaceAll("");
            SheetField here = level.stream()
                    .filter(field -> field.name().equals(name))
                    .findFirst()
                    .orElseThrow(() -> new IllegalArgumentException("no field " + path));
            found = leaf(here);
            level = found.children();
        }
        if (found == null) {
            throw new IllegalArgumentException("empty path");
        }
        return found;
    }

    private static SheetField input(String name, Type type, Input note, String where) {
        Shape shape = shape(type, where);
        if (shape == Shape.BUDGET) {
            throw new IllegalArgumentException(where + ": a budget is not an input");
        }
        List<SheetField> children = List.of();
        if (shape == Shape.RECORD) {
            children = inputs(raw(type));
        } else if (shape == Shape.LIST) {
            children = List.of(input(name, entry(type), note, where));
        }
        Optional<String> orElse = note.orElse().equals(Input.REQUIRED) ? Optional.empty() : Optional.of(note.orElse());
        return new SheetField(
                name,
                shape,
                raw(type),
                note.kind(),
                note.meaning(),
                new Range(note.min(), note.max()),
                display(note.kind(), note.unit(), -1, where),
                orElse,
                note.example(),
                note.fewest(),
                note.most(),
                children,
                new SheetField.UncertaintyPlace(note.u(), note.nu(), "", note.elsewhere()),
                "");
    }

    private static SheetField output(String name, Type type, Output note, String where) {
        Shape shape = shape(type, where);
        List<SheetField> children = List.of();
        if (shape == Shape.RECORD) {
            children = outputs(raw(type));
        } else if (shape == Shape.LIST) {
            children = List.of(output(name, entry(type), note, where));
        }
        return new SheetField(
                name,
                shape,
                raw(type),
                note.kind(),
                note.meaning(),
                Range.ANY,
                display(note.kind(), note.unit(), note.decimals(), where),
                Optional.empty(),
                "",
                0,
                Integer.MAX_VALUE,
                children,
                new SheetField.UncertaintyPlace(note.u(), note.nu(), note.budget(), ""),
                note.infinite());
    }

    private static UnitSystem.Display display(Kind kind, String symbol, int decimals, String where) {
        UnitSystem.Display usual = UnitSystem.METRIC.display(kind);
        MeasureUnit unit = symbol.isEmpty()
                ? usual.unit()
                : Units.find(symbol, kind).orElseThrow(() -> new IllegalArgumentException(where + ": unit " + symbol));
        return new UnitSystem.Display(unit, decimals >= 0 ? decimals : usual.decimals());
    }

    private static Shape shape(Type type, String where) {
        Class<?> raw = raw(type);
        if (raw == double.class) {
            return Shape.QUANTITY;
        }
        if (raw == Double.class) {
            return Shape.OPTIONAL_QUANTITY;
        }
        if (raw == int.class || raw == Integer.class) {
            return Shape.WHOLE_NUMBER;
        }
        if (raw == boolean.class) {
            return Shape.YES_NO;
        }
        if (raw.isEnum()) {
            return Shape.CHOICE;
        }
        if (raw == String.class) {
            return Shape.TEXT;
        }
        if (raw == List.class) {
            return Shape.LIST;
        }
        if (raw == Budget.class) {
            return Shape.BUDGET;
        }
        if (raw.isRecord()) {
            return Shape.RECORD;
        }
        throw new IllegalArgumentException(where + ": a worksheet cannot hold " + type);
    }

    private static Class<?> raw(Type type) {
        if (type instanceof Class<?> plain) {
            return plain;
        }
        if (type instanceof ParameterizedType generic && generic.getRawType() instanceof Class<?> plain) {
            return plain;
        }
        throw new IllegalArgumentException("a worksheet cannot hold " + type);
    }

    /** In a list a number is always there, so {@code Double} is read as {@code double}. */
    private static Type entry(Type list) {
        Type entry = ((ParameterizedType) list).getActualTypeArguments()[0];
        return entry == Double.class ? double.class : entry;
    }

    private static String where(RecordComponent component) {
        return component.getDeclaringRecord().getSimpleName() + "." + component.getName();
    }

    /** The place of a field by its name; -1 where there is none. */
    static int indexOf(List<SheetField> fields, String name) {
        return fields.stream().map(SheetField::name).toList().indexOf(name);
    }
}
