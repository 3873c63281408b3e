package shimwright.bench.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.mechanics.registry.Registry;
import shimwright.mechanics.registry.Topics;
import shimwright.mechanics.worksheet.Answer;
import shimwright.mechanics.worksheet.Shape;
import shimwright.mechanics.worksheet.SheetField;
import shimwright.mechanics.worksheet.Worksheet;
import tools.jackson.databind.json.JsonMapper;

/** Worksheets, answers and refusals as data, the same on the command line and over HTTP. */
public final class SheetJson {
    private static final JsonMapper JSON = JsonMapper.builder().build();

    private SheetJson() {}

    /** One line of JSON. */
    public static String line(Object value) {
        return JSON.writeValueAsString(value);
    }

    /** JSON for a person to read. */
    public static String pretty(Object value) {
        return JSON.writerWithDefaultPrettyPrinter().writeValueAsString(value);
    }

    /** Every worksheet: name, title, topic and what it answers. */
    public static List<Map<String, String>> list() {
        List<Map<String, String>> sheets = new ArrayList<>();
        for (Worksheet<?, ?> sheet : Registry.all()) {
            Map<String, String> entry = new LinkedHashMap<>();
            entry.put("worksheet", sheet.name());
            entry.put("title", sheet.title());
            entry.put("topic", Topics.title(sheet));
            entry.put("doc", sheet.doc());
            sheets.add(entry);
        }
        return sheets;
    }

    /** An answer; with its number where it is one case of many (0 for a single one). */
    public static Map<String, Object> answer(Answer answer, int number) {
        Map<String, Object> json = new LinkedHashMap<>();
        if (number > 0) {
            json.put("case", number);
        }
        json.putAll(answer.json());
        return json;
    }

    /** Refusals; with the number of the case where it is one of many (0 for a single one). */
    public static Map<String, Object> refusals(String sheet, List<Refusal> refusals, int number) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("worksheet", sheet);
        if (number > 0) {
            json.put("case", number);
        }
        List<Map<String, String>> list = new ArrayList<>();
        for (Refusal refusal : refusals) {
            Map<String, String> entry = new LinkedHashMap<>();
            entry.put("key", refusal.key());
            entry.put("place", refusal.place());
            entry.put("fact", refusal.fact());
            entry.put("hint", refusal.hint());
            entry.put("sentence", refusal.sentence());
            list.add(entry);
        }
        json.put("refusals", list);
        return json;
    }

    /** The same refusals, each placed in its case. */
    public static List<Refusal> placed(List<Refusal> refusals, String place) {
        return refusals.stream()
                .map(r -> r.placed(r.key(), r.place().isEmpty() ? place : place + ", " + r.place()))
                .toList();
    }

    /** What a worksheet needs and gives, with units, limits, example and sources. */
    public static Map<String, Object> describe(Worksheet<?, ?> sheet, UnitSystem system) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("worksheet", sheet.name());
        json.put("title", sheet.title());
        json.put("topic", Topics.title(sheet));
        json.put("doc", sheet.doc());
        json.put("inputs", inputs(sheet.inputs(), system));
        json.put("outputs", outputs(sheet.outputs(), system));
        json.put("example", example(sheet));
        json.put("sources", sheet.sources());
        return json;
    }

    /** The worked example as a case: dotted keys become objects. */
    public static Map<String, Object> example(Worksheet<?, ?> sheet) {
        Map<String, Object> nested = new LinkedHashMap<>();
        sheet.example().forEach((key, value) -> put(nested, key, value));
        return nested;
    }

    @SuppressWarnings("unchecked") // objects in this map are only made here
    private static void put(Map<String, Object> map, String key, String value) {
        int dot = key.indexOf('.');
        if (dot < 0) {
            map.put(key, value);
        } else {
            Object inner = map.computeIfAbsent(key.substring(0, dot), name -> new LinkedHashMap<String, Object>());
            put((Map<String, Object>) inner, key.substring(dot + 1), value);
        }
    }

    private static List<Map<String, Object>> inputs(List<SheetField> fields, UnitSystem system) {
        return fields.stream().map(field -> input(field, system)).toList();
    }

    private static Map<String, Object> input(SheetField field, UnitSystem system) {
        Map<String, Object> json = common(field, system);
        json.put("needed", field.needed());
        field.orElse().filter(text -> !text.isEmpty()).ifPresent(text -> json.put("default", text));
        if (!field.example().isEmpty()) {
            json.put("example", field.example());
        }
        if (field.shape() == Shape.LIST) {
            json.put("fewest", field.fewest());
            json.put("most", field.most());
            json.put("entry", input(field.entry(), system));
        } else if (field.shape() == Shape.RECORD) {
            json.put("parts", inputs(field.children(), system));
        } else {
            limits(field, json);
        }
        return json;
    }

    /** Smallest and largest value in SI, where there are such. */
    private static void limits(SheetField field, Map<String, Object> json) {
        if (Double.isFinite(field.range().min())) {
            json.put("min", field.range().min());
        }
        if (Double.isFinite(field.range().max())) {
            json.put("max", field.range().max());
        }
    }

    private static List<Map<String, Object>> outputs(List<SheetField> fields, UnitSystem system) {
        return fields.stream().map(field -> output(field, system)).toList();
    }

    private static Map<String, Object> output(SheetField field, UnitSystem system) {
        Map<String, Object> json = common(field, system);
        if (field.shape() == Shape.LIST) {
            json.put("entry", output(field.entry(), system));
        } else if (field.shape() == Shape.RECORD) {
            json.put("parts", outputs(field.children(), system));
        }
        return json;
    }

    private static Map<String, Object> common(SheetField field, UnitSystem system) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("key", field.name());
        json.put("meaning", field.meaning());
        json.put("shape", field.shape().name());
        if (field.shape() == Shape.QUANTITY || field.shape() == Shape.OPTIONAL_QUANTITY) {
            json.put("kind", field.kind().name());
            json.put("unit", field.display(system).unit().symbol());
            json.put("si", field.kind().siSymbol());
        }
        if (field.shape() == Shape.CHOICE) {
            json.put("choices", field.choices());
        }
        return json;
    }
}
