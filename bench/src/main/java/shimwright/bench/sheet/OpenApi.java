package shimwright.bench.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.mechanics.registry.Registry;
import shimwright.mechanics.registry.Topics;
import shimwright.mechanics.worksheet.Answer;
import shimwright.mechanics.worksheet.Worksheet;

/** The OpenAPI 3.1.0 description of the door for programs, made from the worksheets and acts. */
public final class OpenApi {
    private static final String JSON = "application/json";

    private OpenApi() {}

    private static final class Made {
        static final Map<String, Object> DESCRIPTION = make();
    }

    /** The description as maps, lists, texts and numbers. */
    public static Map<String, Object> description() {
        return Made.DESCRIPTION;
    }

    private static Map<String, Object> make() {
        Map<String, Object> paths = new LinkedHashMap<>();
        Map<String, Object> schemas = new LinkedHashMap<>(Schemas.shared());
        paths.put(
                "/api/worksheets",
                map("get", get("listWorksheets", "Every worksheet", List.of(), "Names, titles, topics", "List")));
        for (Worksheet<?, ?> sheet : Registry.all()) {
            schemas.put(sheet.name() + "-case", Schemas.input(sheet));
            schemas.put(sheet.name() + "-answer", Schemas.answer(sheet));
            Map<String, Object> path = new LinkedHashMap<>();
            path.put(
                    "get",
                    tagged(
                            get(
                                    "describe-" + sheet.name(),
                                    sheet.title() + ": inputs and outputs",
                                    List.of(units()),
                                    "What it needs and gives, with units, limits, example and sources",
                                    "Description"),
                            sheet));
            path.put("post", tagged(post(sheet), sheet));
            paths.put("/api/worksheets/" + sheet.name(), path);
        }
        paths.put("/api/parts", map("get", parts()));
        paths.putAll(ActPaths.all());
        schemas.putAll(Schemas.ofShop());
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("openapi", "3.1.0");
        all.put(
                "info",
                map(
                        "title",
                        "Shimwright worksheets",
                        "version",
                        "0.1.0",
                        "summary",
                        "The calculations of a gearbox bench, one path each",
                        "license",
                        map("name", "Apache-2.0", "identifier", "Apache-2.0")));
        all.put("servers", List.of(map("url", "/")));
        List<Object> tags = new ArrayList<>();
        Topics.all().forEach(topic -> tags.add(map("name", topic.title())));
        tags.add(map("name", ActPaths.TAG));
        all.put("tags", tags);
        all.put("paths", paths);
        all.put("components", map("schemas", schemas));
        return all;
    }

    private static Map<String, Object> tagged(Map<String, Object> operation, Worksheet<?, ?> sheet) {
        operation.put("tags", List.of(Topics.title(sheet)));
        return operation;
    }

    private static Map<String, Object> get(
            String id, String summary, List<Object> parameters, String answers, String schema) {
        Map<String, Object> operation = new LinkedHashMap<>();
        operation.put("operationId", id);
        operation.put("summary", summary);
        operation.put("parameters", parameters);
        operation.put(
                "responses",
                map("200", map("description", answers, "content", map(JSON, map("schema", Schemas.ref(schema))))));
        return operation;
    }

    private static Map<String, Object> parts() {
        return get(
                "find-parts",
                "Standard parts by what is stamped on them or by measured sizes",
                List.of(
                        units(),
                        query("stamp", "as stamped, such as 6206-2RS or 25x47x7; ? stands for what cannot be read"),
                        query(
                                "sizes",
                                "one to three measured lengths, such as 25x52x15; left out where a stamp is given")),
                "Every part that may be meant, the likeliest first",
                "Parts");
    }

    private static Map<String, Object> units() {
        return map(
                "name",
                "units",
                "in",
                "query",
                "description",
                "what bare numbers mean and texts show",
                "schema",
                map("type", "string", "enum", List.of("metric", "inch"), "default", "metric"));
    }

    private static List<Object> parameters() {
        DrawOptions names = DrawOptions.ADDRESS;
        return List.of(
                units(),
                query(
                        names.count(),
                        "draws beside the first order, a number or auto; left out, they are taken where the first order"
                                + " is shown not to hold"),
                query(names.seed(), "seed of the draws, 1 when left out"),
                query(names.coverage(), "probability of the intervals, 0.95 when left out"));
    }

    private static Map<String, Object> query(String name, String description) {
        return map("name", name, "in", "query", "description", description, "schema", map("type", "string"));
    }

    private static Map<String, Object> post(Worksheet<?, ?> sheet) {
        Map<String, Object> example = SheetJson.example(sheet);
        Answer answer = sheet.answer(example, UnitSystem.METRIC).orElseThrow();
        Map<String, Object> operation = new LinkedHashMap<>();
        operation.put("operationId", sheet.name());
        operation.put("summary", sheet.title());
        operation.put("description", sheet.doc() + " Sources: " + String.join("; ", sheet.sources()) + ".");
        operation.put("parameters", parameters());
        Map<String, Object> content = new LinkedHashMap<>();
        content.put(
                JSON,
                map(
                        "schema",
                        map(
                                "anyOf",
                                List.of(
                                        Schemas.ref(sheet.name() + "-case"),
                                        map(
                                                "type",
                                                "array",
                                                "minItems",
                                                1,
                                                "items",
                                                Schemas.ref(sheet.name() + "-case")))),
                        "examples",
                        map("worked", map("summary", "the worked example", "value", example))));
        content.put(
                "text/csv",
                map("schema", map("type", "string", "description", "keys in the first line, one case a row")));
        operation.put("requestBody", map("required", true, "content", content));
        operation.put("responses", responses(sheet, answer));
        return operation;
    }

    private static Map<String, Object> responses(Worksheet<?, ?> sheet, Answer answer) {
        Map<String, Object> ok = new LinkedHashMap<>();
        ok.put(
                JSON,
                map(
                        "schema",
                        Schemas.ref(sheet.name() + "-answer"),
                        "examples",
                        map("worked", map("summary", "the worked example", "value", answer.json()))));
        ok.put(
                "application/x-ndjson",
                map(
                        "schema",
                        map(
                                "type",
                                "string",
                                "description",
                                "for CSV, or a list of cases: an answer or refusals a line, each with its \"case\"")));
        Map<String, Object> responses = new LinkedHashMap<>();
        responses.put("200", map("description", "result, working and cautions", "content", ok));
        refusal(responses, "400", "what came cannot be read");
        refusal(responses, "413", "what came is too large");
        refusal(responses, "415", "neither JSON nor CSV");
        refusal(responses, "422", "inputs refused, every fault at once");
        return responses;
    }

    private static void refusal(Map<String, Object> responses, String status, String words) {
        responses.put(status, map("description", words, "content", map(JSON, map("schema", Schemas.ref("Refusals")))));
    }

    /** An ordered map of key, value, key, value. */
    static Map<String, Object> map(Object... pairs) {
        Map<String, Object> map = new LinkedHashMap<>();
        for (int i = 0; i < pairs.length; i += 2) {
            map.put(String.valueOf(pairs[i]), pairs[i + 1]);
        }
        return map;
    }
}
