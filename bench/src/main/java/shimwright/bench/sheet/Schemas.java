package shimwright.bench.sheet;

import static shimwright.bench.sheet.OpenApi.map;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.mechanics.worksheet.SheetField;
import shimwright.mechanics.worksheet.Worksheet;
import tools.jackson.databind.json.JsonMapper;

/** JSON Schemas (2020-12, as OpenAPI 3.1 takes them) of what worksheets take and give. */
final class Schemas {
    private static final String SHARED = "/openapi/shared-schemas.json";
    private static final String SHOP = "/openapi/shop-schemas.json";

    private Schemas() {}

    static Map<String, Object> ref(String name) {
        return map("$ref", "#/components/schemas/" + name);
    }

    /** What every sheet shares, from its file. */
    static Map<String, Object> shared() {
        return read(SHARED);
    }

    /** What is told of jobs and shop, from its file. */
    static Map<String, Object> ofShop() {
        return read(SHOP);
    }

    private static Map<String, Object> read(String file) {
        try (InputStream in = Schemas.class.getResourceAsStream(file)) {
            Map<String, Object> shared = new LinkedHashMap<>();
            JsonMapper.builder()
                    .build()
                    .readTree(in)
                    .properties()
                    .forEach(entry -> shared.put(entry.getKey(), entry.getValue()));
            return shared;
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private static Map<String, Object> list(Map<String, Object> items) {
        return map("type", "array", "items", items);
    }

    private static Map<String, Object> object(Map<String, Object> properties, List<String> required) {
        return map("type", "object", "properties", properties, "required", required, "additionalProperties", false);
    }

    /** A case of a worksheet, keys as they are documented; other spellings are read as well. */
    static Map<String, Object> input(Worksheet<?, ?> sheet) {
        return inputs(sheet.inputs());
    }

    private static Map<String, Object> inputs(List<SheetField> fields) {
        Map<String, Object> properties = new LinkedHashMap<>();
        fields.forEach(field -> properties.put(field.name(), input(field)));
        return object(
                properties,
                fields.stream().filter(SheetField::needed).map(SheetField::name).toList());
    }

    private static Map<String, Object> input(SheetField field) {
        Map<String, Object> schema = new LinkedHashMap<>(
                switch (field.shape()) {
                    case QUANTITY, OPTIONAL_QUANTITY -> ref("Quantity");
                    case WHOLE_NUMBER -> map("type", List.of("integer", "string"));
                    case YES_NO -> map("type", List.of("boolean", "string"));
                    case CHOICE -> map("type", "string", "enum", field.choices());
                    case TEXT -> map("type", "string");
                    case LIST ->
                        either(
                                map(
                                        "type",
                                        "array",
                                        "minItems",
                                        field.fewest(),
                                        "maxItems",
                                        field.most(),
                                        "items",
                                        input(field.entry())),
                                "entries in one text, a line or a semicolon between them");
                    case RECORD -> either(inputs(field.children()), "parts in one text: " + field.order());
                    case BUDGET -> throw new IllegalStateException("a budget is not an input");
                });
        schema.put("description", described(field));
        field.orElse().filter(text -> !text.isEmpty()).ifPresent(text -> schema.put("default", text));
        return schema;
    }

    private static Map<String, Object> either(Map<String, Object> data, String text) {
        return map("anyOf", List.of(data, map("type", "string", "description", text)));
    }

    /** Meaning, units of bare numbers, limits in SI. */
    private static String described(SheetField field) {
        StringBuilder words = new StringBuilder(field.meaning());
        if (field.kind() != Kind.NUMBER) {
            String metric = field.display(UnitSystem.METRIC).unit().symbol();
            String inch = field.display(UnitSystem.INCH).unit().symbol();
            words.append("; a bare number is in ").append(metric);
            words.append(metric.equals(inch) ? "" : ", with units=inch in " + inch);
        }
        List<String> limits = new ArrayList<>();
        if (Double.isFinite(field.range().min())) {
            limits.add("at least " + field.range().min());
        }
        if (Double.isFinite(field.range().max())) {
            limits.add("at most " + field.range().max());
        }
        if (!limits.isEmpty()) {
            words.append("; ").append(String.join(", ", limits));
            words.append(field.kind() == Kind.NUMBER ? "" : " " + field.kind().siSymbol());
        }
        return words.toString();
    }

    /** An answer of a worksheet. */
    static Map<String, Object> answer(Worksheet<?, ?> sheet) {
        return object(
                map(
                        "worksheet",
                        map("const", sheet.name()),
                        "case",
                        map("type", "integer"),
                        "result",
                        outputs(sheet.outputs()),
                        "working",
                        list(ref("Line")),
                        "cautions",
                        list(map("type", "string")),
                        "monteCarlo",
                        map(
                                "type",
                                "object",
                                "description",
                                "draws, where asked for or where the first order does not hold: seed, count, and mean, u"
                                        + " and intervals of each output")),
                List.of("worksheet", "result", "working", "cautions"));
    }

    private static Map<String, Object> outputs(List<SheetField> fields) {
        Map<String, Object> properties = new LinkedHashMap<>();
        fields.forEach(field -> properties.put(field.name(), output(field)));
        return object(properties, fields.stream().map(SheetField::name).toList());
    }

    private static Map<String, Object> output(SheetField field) {
        Map<String, Object> schema = new LinkedHashMap<>(
                switch (field.shape()) {
                    case QUANTITY, OPTIONAL_QUANTITY -> ref("Number");
                    case WHOLE_NUMBER -> said(map("type", List.of("integer", "null")));
                    case YES_NO -> said(map("type", List.of("boolean", "null")));
                    case CHOICE, TEXT -> said(map("type", List.of("string", "null")));
                    case LIST -> list(output(field.entry()));
                    case RECORD -> anyOfNull(outputs(field.children()));
                    case BUDGET -> ref("Budget");
                });
        schema.put("description", field.meaning());
        return schema;
    }

    private static Map<String, Object> said(Map<String, Object> value) {
        return object(map("value", value, "text", map("type", "string")), List.of("value", "text"));
    }

    /** A record that is left out is said with a null value. */
    private static Map<String, Object> anyOfNull(Map<String, Object> record) {
        return map("anyOf", List.of(record, said(map("type", "null"))));
    }
}
