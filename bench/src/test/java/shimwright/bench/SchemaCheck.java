package shimwright.bench;

import java.util.ArrayList;
import java.util.List;
import tools.jackson.databind.JsonNode;

/** The part of JSON Schema 2020-12 that the description uses. An unknown keyword is a fault of the description. */
final class SchemaCheck {
    private static final List<String> KNOWN = List.of(
            "$ref",
            "type",
            "description",
            "default",
            "properties",
            "required",
            "additionalProperties",
            "items",
            "minItems",
            "maxItems",
            "minimum",
            "enum",
            "const",
            "anyOf");

    private final JsonNode root;
    private final List<String> faults = new ArrayList<>();

    private SchemaCheck(JsonNode root) {
        this.root = root;
    }

    /** What in a value breaks a schema of the description. */
    static List<String> faults(JsonNode root, JsonNode schema, JsonNode value) {
        SchemaCheck check = new SchemaCheck(root);
        check.check(schema, value, "");
        return check.faults;
    }

    private void fault(String path, String words) {
        faults.add(path + " " + words);
    }

    private void check(JsonNode schema, JsonNode value, String path) {
        schema.propertyNames().stream()
                .filter(name -> !KNOWN.contains(name))
                .forEach(name -> fault(path, "has the keyword " + name));
        if (schema.has("$ref")) {
            JsonNode target = root.at(schema.get("$ref").asString().substring(1));
            if (target.isMissingNode()) {
                fault(path, "refers to nothing: " + schema.get("$ref"));
                return;
            }
            check(target, value, path);
        }
        if (schema.has("const") && !schema.get("const").equals(value)) {
            fault(path, "is not " + schema.get("const"));
        }
        if (schema.has("enum") && !schema.get("enum").valueStream().anyMatch(value::equals)) {
            fault(path, value + " is none of " + schema.get("enum"));
        }
        if (schema.has("type") && !typed(schema.get("type"), value)) {
            fault(path, value + " is no " + schema.get("type"));
        }
        if (schema.has("anyOf")
                && schema.get("anyOf")
                        .valueStream()
                        .noneMatch(one -> faults(root, one, value).isEmpty())) {
            fault(path, value + " fits none of the ways");
        }
        if (value.isObject()) {
            object(schema, value, path);
        }
        if (value.isArray()) {
            array(schema, value, path);
        }
    }

    private static boolean typed(JsonNode type, JsonNode value) {
        if (type.isArray()) {
            return type.valueStream().anyMatch(one -> typed(one, value));
        }
        return switch (type.asString()) {
            case "string" -> value.isString();
            case "number" -> value.isNumber();
            case "integer" -> value.isIntegralNumber();
            case "boolean" -> value.isBoolean();
            case "null" -> value.isNull();
            case "array" -> value.isArray();
            case "object" -> value.isObject();
            default -> false;
        };
    }

    private void object(JsonNode schema, JsonNode value, String path) {
        JsonNode properties = schema.path("properties");
        schema.path("required").forEach(name -> {
            if (!value.has(name.asString())) {
                fault(path, "lacks " + name);
            }
        });
        value.properties().forEach(entry -> {
            if (properties.has(entry.getKey())) {
                check(properties.get(entry.getKey()), entry.getValue(), path + "/" + entry.getKey());
            } else if (schema.path("additionalProperties").isBoolean()) {
                fault(path, "has " + entry.getKey());
            }
        });
    }

    private void array(JsonNode schema, JsonNode value, String path) {
        if (value.size() < schema.path("minItems").asInt(0)
                || value.size() > schema.path("maxItems").asInt(Integer.MAX_VALUE)) {
            fault(path, "has " + value.size() + " entries");
        }
        if (schema.has("items")) {
            value.forEach(item -> check(schema.get("items"), item, path + "[]"));
        }
    }
}
