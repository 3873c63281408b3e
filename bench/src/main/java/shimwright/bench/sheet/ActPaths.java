package shimwright.bench.sheet;

import static shimwright.bench.sheet.OpenApi.map;

import java.lang.reflect.RecordComponent;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import shimwright.rebuild.act.Act;
import shimwright.rebuild.act.ActInput;
import shimwright.rebuild.act.Acts;

/** The paths of jobs and shop in the description: acts as their records declare them, and what can be asked. */
final class ActPaths {
    private static final String JSON = "application/json";
    static final String TAG = "Jobs and shop";

    private ActPaths() {}

    /** Every path, in order. */
    static Map<String, Object> all() {
        Map<String, Object> paths = new LinkedHashMap<>();
        ask(paths, "/api/units", "listUnits", "Units that a job can be opened of", "Units");
        units(paths);
        ask(paths, "/api/shop", "shop", "The shop: what it is, gauges, drawer", "Shop");
        ask(paths, "/api/jobs", "listJobs", "Every job, the newest first", "Jobs");
        ask(paths, "/api/jobs/{job}", "job", "How a job stands and what is next", "Job");
        ask(paths, "/api/jobs/{job}/entries", "entries", "What was kept of a job, in order", "Entries");
        ask(paths, "/api/jobs/{job}/clearances/{clearance}", "clearance", "How a clearance stands", "Clearance");
        ask(paths, "/api/jobs/{job}/changes", "changes", "What a move to another unit file would change", "Changes");
        parameters(paths, "/api/jobs/{job}/changes")
                .addAll(List.of(
                        query("file", "hash of a unit file, from /api/units"), query("variant", "of that file")));
        Acts.byName().forEach((name, act) -> paths.put(path(act) + name, map("post", act(name, act))));
        paths.put("/api/jobs/{job}/pictures", map("post", picture()));
        return paths;
    }

    /** The paths of unit files. */
    @SuppressWarnings("unchecked") // the maps of this class
    private static void units(Map<String, Object> paths) {
        Map<String, Object> begin = operation("beginUnit", "Begin a unit file from how the box is built", "/api/units");
        begin.put("requestBody", object("the inputs of the page /begin, by name"));
        begin.put("responses", changed());
        ((Map<String, Object>) Objects.requireNonNull(paths.get("/api/units"))).put("post", begin);
        ask(paths, "/api/units/{type}", "unitFile", "A unit file as keys and values, and what it lacks", "UnitFile");
        parameters(paths, "/api/units/{type}").add(query("format", "yaml for the text of the file"));
        ask(paths, "/api/units/{type}/history", "unitHistory", "How a unit file came to be as it is", "UnitHistory");
        bundles(paths);
        String section = "/api/units/{type}/entries/{section}";
        Map<String, Object> more = operation("addUnitEntry", "Add an entry to a section of a unit file", section);
        more.put("requestBody", object("the entry: the keys of the file, values as the file writes them"));
        paths.put(section, map("post", entry(more)));
        Map<String, Object> put = operation("putUnitEntry", "Write an entry of a unit file", section + "/{id}");
        put.put("requestBody", object("the entry: the keys of the file, values as the file writes them"));
        Map<String, Object> drop = operation("dropUnitEntry", "Take an entry out of a unit file", section + "/{id}");
        ((List<Object>) Objects.requireNonNull(drop.get("parameters")))
                .add(query("mentions", "true where every mention of it goes with it"));
        paths.put(section + "/{id}", map("post", entry(put), "delete", entry(drop)));
    }

    @SuppressWarnings("unchecked") // the maps of this class
    private static Map<String, Object> entry(Map<String, Object> operation) {
        ((List<Object>) Objects.requireNonNull(operation.get("parameters")))
                .addAll(List.of(
                        query("entry", "id of the change, made by the client: one that is repeated is done once"),
                        query("why", "why it is changed")));
        operation.put("responses", changed());
        return operation;
    }

    private static Map<String, Object> object(String words) {
        Map<String, Object> schema = map("description", words, "type", "object");
        return map("required", true, "content", map(JSON, map("schema", schema)));
    }

    private static Map<String, Object> changed() {
        return map(
                "201", answer("kept: the whole file was read again with all checks", "UnitKept"),
                "400", answer("what came cannot be read", "Refusals"),
                "404", answer("there is no such unit or section", "Refusals"),
                "422", answer("refused, every reason at once", "Refusals"));
    }

    private static String path(Class<? extends Act> act) {
        return Act.OfShop.class.isAssignableFrom(act) ? "/api/shop/acts/" : "/api/jobs/{job}/acts/";
    }

    private static void ask(Map<String, Object> paths, String path, String id, String summary, String schema) {
        Map<String, Object> operation = operation(id, summary, path);
        Map<String, Object> responses = map("200", answer(summary, schema));
        if (path.contains("{")) {
            responses.put("404", answer("there is none of that name", "Refusals"));
        }
        operation.put("responses", responses);
        paths.put(path, map("get", operation));
    }

    private static Map<String, Object> operation(String id, String summary, String path) {
        List<Object> parameters = new ArrayList<>();
        Arrays.stream(path.split("/"))
                .filter(part -> part.startsWith("{"))
                .map(part -> part.substring(1, part.length() - 1))
                .forEach(name -> parameters.add(
                        map("name", name, "in", "path", "required", true, "schema", map("type", "string"))));
        return map("operationId", id, "summary", summary, "tags", List.of(TAG), "parameters", parameters);
    }

    @SuppressWarnings("unchecked") // the maps of this class
    private static List<Object> parameters(Map<String, Object> paths, String path) {
        Map<String, Object> of = (Map<String, Object>) Objects.requireNonNull(paths.get(path));
        Map<String, Object> get = (Map<String, Object>) Objects.requireNonNull(of.get("get"));
        return (List<Object>) Objects.requireNonNull(get.get("parameters"));
    }

    private static Map<String, Object> query(String name, String description) {
        return map("name", name, "in", "query", "description", description, "schema", map("type", "string"));
    }

    private static Map<String, Object> answer(String words, String schema) {
        return map("description", words, "content", map(JSON, map("schema", Schemas.ref(schema))));
    }

    private static Map<String, Object> act(String name, Class<? extends Act> act) {
        Map<String, Object> properties = new LinkedHashMap<>();
        List<String> required = new ArrayList<>();
        properties.put(
                "entry", described("id of the entry, made by the client: a post repeated is the same entry", "string"));
        for (RecordComponent input : act.getRecordComponents()) {
            ActInput given = input.getAnnotation(ActInput.class);
            properties.put(input.getName(), input(input, given));
            if (!given.missing().isEmpty()) {
                required.add(input.getName());
            }
        }
        Map<String, Object> operation = operation(name, words(name), path(act));
        Map<String, Object> body =
                map("type", "object", "properties", properties, "required", required, "additionalProperties", false);
        operation.put("requestBody", map("required", true, "content", map(JSON, map("schema", body))));
        operation.put("responses", kept());
        return operation;
    }

    private static Map<String, Object> kept() {
        return map(
                "201", answer("kept, all of it or nothing", "Kept"),
                "400", answer("what came cannot be read", "Refusals"),
                "404", answer("there is no such act", "Refusals"),
                "422", answer("refused, every reason at once", "Refusals"));
    }

    private static String words(String name) {
        String words = name.replace('-', ' ');
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    private static Map<String, Object> described(String words, Object type) {
        return map("description", words, "type", type);
    }

    private static Map<String, Object> input(RecordComponent input, ActInput given) {
        Class<?> type = input.getType();
        if (type == List.class) {
            Map<String, Object> list = described(given.value(), "array");
            list.put("items", map("type", List.of("string", "number")));
            return list;
        }
        if (type == Map.class) {
            Map<String, Object> all = described(given.value(), "object");
            all.put("additionalProperties", map("type", List.of("string", "number")));
            return all;
        }
        if (type.isEnum()) {
            Map<String, Object> one = described(given.value(), "string");
            one.put(
                    "enum",
                    Arrays.stream(type.getEnumConstants())
                            .map(constant -> ((Enum<?>) constant).name().toLowerCase(Locale.ROOT))
                            .toList());
            return one;
        }
        if (type == LocalDate.class) {
            return described(given.value() + ", such as 2026-12-24", "string");
        }
        return type == String.class
                ? described(given.value(), "string")
                : described(given.value() + ", a bare number or with its unit", List.of("string", "number"));
    }

    /** The two doors of bundles. */
    @SuppressWarnings("unchecked") // the maps of this class
    private static void bundles(Map<String, Object> paths) {
        String out = "/api/units/{type}/bundle";
        Map<String, Object> give = operation("bundle", "A unit file with its pictures, as a zip for another shop", out);
        ((List<Object>) Objects.requireNonNull(give.get("parameters")))
                .addAll(List.of(
                        query("pictures", "hashes with commas between, proposed, or all; none where it is left out"),
                        query("captions", "true where what was written under them goes with them"),
                        query("history", "true where who changed the file, when and why goes with it"),
                        query("named", "true where the shop says what it calls itself")));
        Map<String, Object> zip = map("application/zip", map("schema", map("type", "string")));
        give.put(
                "responses",
                map("200", map("description", "the zip", "content", zip), "422", answer("why not", "Refusals")));
        paths.put(out, map("get", give));
        String in = "/api/units/bundle";
        Map<String, Object> take = operation("takeBundle", "Take in a unit file with its pictures", in);
        ((List<Object>) Objects.requireNonNull(take.get("parameters")))
                .addAll(List.of(
                        query("clash", "over or other, where this shop has another file of that unit type"),
                        query("maker", "with other: who made it"),
                        query("model", "with other: what it is called"),
                        query("why", "why it is taken in")));
        take.put("requestBody", map("required", true, "content", zip));
        take.put("responses", changed());
        paths.put(in, map("post", take));
    }

    private static Map<String, Object> picture() {
        Map<String, Object> operation =
                operation("add-picture-content", "Add a picture, PNG or JPEG", "/api/jobs/{job}/pictures");
        operation.put(
                "requestBody",
                map(
                        "required",
                        true,
                        "content",
                        map("application/octet-stream", map("schema", map("type", "string")))));
        Map<String, Object> responses = kept();
        responses.put("413", answer("it is too large", "Refusals"));
        operation.put("responses", responses);
        return operation;
    }
}
