package shimwright.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.lang.reflect.RecordComponent;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import shimwright.bench.command.CalcCommand;
import shimwright.mechanics.registry.Registry;
import shimwright.mechanics.worksheet.Worksheet;
import shimwright.rebuild.act.Act;
import shimwright.rebuild.act.ActInput;
import shimwright.rebuild.act.Acts;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The door for programs: the same answers and refusals as on the command line, and a description that is true. */
class ApiTest {
    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final String SHEETS = "/api/worksheets";
    private static DemoBench bench;

    @BeforeAll
    static void start() {
        bench = DemoBench.fresh();
    }

    @AfterAll
    static void stop() {
        bench.close();
    }

    private static HttpResponse<String> json(String sheet, String body) {
        return bench.postBody(SHEETS + "/" + sheet, "application/json", body);
    }

    private static JsonNode calc(Worksheet<?, ?> sheet) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        List<String> args = new ArrayList<>(List.of(sheet.name(), "--json"));
        sheet.example().forEach((key, value) -> args.add(key + "=" + value));
        PrintStream stream = new PrintStream(out, true, StandardCharsets.UTF_8);
        assertThat(CalcCommand.run(args, stream, stream)).as(sheet.name()).isZero();
        return JSON.readTree(out.toString(StandardCharsets.UTF_8));
    }

    @Test
    void everyWorksheetIsListedAndDescribed() {
        JsonNode list = JSON.readTree(bench.get(SHEETS).body());
        assertThat(list.valueStream().map(one -> one.get("worksheet").asString()))
                .containsExactlyElementsOf(
                        Registry.all().stream().map(Worksheet::name).toList());
        for (Worksheet<?, ?> sheet : Registry.all()) {
            JsonNode one = JSON.readTree(
                    bench.get(SHEETS + "/" + sheet.name() + "?units=inch").body());
            assertThat(one.get("inputs").size()).isEqualTo(sheet.inputs().size());
            assertThat(one.get("outputs").size()).isEqualTo(sheet.outputs().size());
            assertThat(one.get("sources").size()).isEqualTo(sheet.sources().size());
        }
        JsonNode pack = JSON.readTree(bench.get(SHEETS + "/growth?units=inch").body());
        assertThat(pack.at("/inputs/0/entry/parts/1/unit").asString()).isEqualTo("in");
        assertThat(pack.at("/inputs/1/si").asString()).isEqualTo("K");
    }

    @Test
    void anExampleIsAnsweredAsOnTheCommandLineFromJsonAndFromCsv() {
        JsonNode api = JSON.readTree(bench.get("/api/openapi.json").body());
        for (Worksheet<?, ?> sheet : Registry.all()) {
            String example = api.at("/paths/~1api~1worksheets~1" + sheet.name()
                            + "/post/requestBody/content/application~1json/examples/worked/value")
                    .toString();
            HttpResponse<String> answer = json(sheet.name(), example);
            assertThat(answer.statusCode())
                    .as("%s %s", sheet.name(), answer.body())
                    .isEqualTo(200);
            JsonNode told = calc(sheet);
            assertThat(JSON.readTree(answer.body())).as(sheet.name()).isEqualTo(told);
            HttpResponse<String> row = bench.postBody(SHEETS + "/" + sheet.name(), "text/csv", csv(sheet));
            assertThat(row.statusCode()).isEqualTo(200);
            assertThat(row.headers().firstValue("Content-Type")).contains("application/x-ndjson");
            JsonNode line = JSON.readTree(row.body());
            assertThat(line.get("case").asInt()).isEqualTo(1);
            assertThat(line.get("result")).as(sheet.name()).isEqualTo(told.get("result"));
        }
    }

    @Test
    void drawsAreTakenWhereAsked() {
        String doubted = "{\"torque\":\"60 ± 1 N·m\",\"length\":\"400 mm\",\"extension\":\"80 mm\"}";
        assertThat(JSON.readTree(json("wrench-extension", doubted).body()).has("monteCarlo"))
                .isFalse();
        HttpResponse<String> drawn = json("wrench-extension?monte-carlo=20000&monte-carlo-seed=9", doubted);
        JsonNode draws = JSON.readTree(drawn.body()).get("monteCarlo");
        assertThat(draws.get("seed").asString()).isEqualTo("9");
        assertThat(draws.at("/outputs/setting/u").asDouble()).isGreaterThan(0);
        HttpResponse<String> wrong = json("wrench-extension?monte-carlo=some", doubted);
        assertThat(wrong.statusCode()).isEqualTo(422);
        assertThat(wrong.body()).contains("\\\"some\\\" is not a number");
        assertThat(json("wrench-extension?monte-carlo-seed=3", doubted).body()).contains("not given");
        assertThat(json("wrench-extension?monte-carlo-coverage=x&monte-carlo=auto", doubted)
                        .body())
                .contains("Type one, such as 0.95");
        JsonNode auto = JSON.readTree(json("wrench-extension?monte-carlo=auto&monte-carlo-coverage=90%25", doubted)
                .body());
        assertThat(auto.at("/monteCarlo/coverage").asDouble()).isEqualTo(0.9);
    }

    private static String csv(Worksheet<?, ?> sheet) {
        Map<String, String> example = sheet.example();
        return String.join(",", example.keySet()) + "\r\n"
                + example.values().stream().map(value -> "\"" + value + "\"").collect(Collectors.joining(","))
                + "\r\n";
    }

    @Test
    void theDescriptionIsSoundAndItsExamplesFitIt() {
        JsonNode api = JSON.readTree(bench.get("/api/openapi.json").body());
        assertThat(api.get("openapi").asString()).startsWith("3.1.");
        assertThat(api.at("/info/title").isString()).isTrue();
        assertThat(api.at("/info/version").isString()).isTrue();
        List<String> ids = new ArrayList<>();
        List<String> tags = api.get("tags")
                .valueStream()
                .map(tag -> tag.get("name").asString())
                .toList();
        api.get("paths")
                .properties()
                .forEach(path -> path.getValue().properties().forEach(operation -> {
                    assertThat(operation.getKey()).isIn("get", "post", "delete");
                    JsonNode one = operation.getValue();
                    ids.add(one.get("operationId").asString());
                    one.path("tags").forEach(tag -> assertThat(tag.asString()).isIn(tags));
                    one.path("parameters")
                            .forEach(parameter ->
                                    assertThat(parameter.propertyNames()).contains("name", "in", "schema"));
                    assertThat(one.get("responses").propertyNames()).containsAnyOf("200", "201");
                    one.get("responses")
                            .forEach(response -> assertThat(
                                            response.get("description").asString())
                                    .isNotBlank());
                    contents(one).forEach(content -> fits(api, path.getKey(), content));
                    if (operation.getKey().equals("get") && !path.getKey().matches(".*/(changes|bundle)")) {
                        JsonNode schema = one.at("/responses/200/content/application~1json/schema");
                        assertThat(SchemaCheck.faults(
                                        api,
                                        schema,
                                        JSON.readTree(
                                                bench.get(real(path.getKey())).body())))
                                .as(path.getKey())
                                .isEmpty();
                    }
                }));
        // seven questions about jobs and shop, eight about unit files and their bundles, pictures
        int jobs = 7 + 8 + 1 + Acts.byName().size();
        assertThat(ids).doesNotHaveDuplicates().hasSize(2 + 2 * Registry.all().size() + jobs);
    }

    /** The address of a path in the demo shop. */
    private static String real(String path) {
        return path.replace("{job}", "job-v-0093")
                .replace("{type}", "ambleholt-l5-74")
                .replace("{clearance}", "c")
                .replaceFirst("/parts$", "/parts?stamp=6206");
    }

    @Test
    void everyActIsDescribedWithTheInputsOfItsRecord() {
        JsonNode paths = JSON.readTree(bench.get("/api/openapi.json").body()).get("paths");
        Acts.byName().forEach((name, act) -> {
            boolean shop = Act.OfShop.class.isAssignableFrom(act);
            String path = (shop ? "/api/shop/acts/" : "/api/jobs/{job}/acts/") + name;
            JsonNode schema = paths.path(path).at("/post/requestBody/content/application~1json/schema");
            List<String> inputs = Arrays.stream(act.getRecordComponents())
                    .map(RecordComponent::getName)
                    .toList();
            List<String> described = new ArrayList<>(schema.get("properties").propertyNames());
            assertThat(described.remove("entry")).as(path).isTrue();
            assertThat(described).as(path).containsExactlyElementsOf(inputs);
            List<String> needed = Arrays.stream(act.getRecordComponents())
                    .filter(input ->
                            !input.getAnnotation(ActInput.class).missing().isEmpty())
                    .map(RecordComponent::getName)
                    .toList();
            assertThat(schema.get("required").valueStream().map(JsonNode::asString))
                    .as(path)
                    .containsExactlyElementsOf(needed);
        });
    }

    @Test
    void anActWithoutWhatItNeedsIsRefusedAndOneThatIsKeptAnswersAsDescribed() {
        JsonNode api = JSON.readTree(bench.get("/api/openapi.json").body());
        for (String name : Acts.byName().keySet()) {
            boolean shop = Act.OfShop.class.isAssignableFrom(Acts.byName().get(name));
            String path = (shop ? "/api/shop/acts/" : "/api/jobs/job-v-0093/acts/") + name;
            HttpResponse<String> answer = bench.postBody(path, "application/json", "{}");
            assertThat(answer.statusCode()).as("%s %s", path, answer.body()).isEqualTo(422);
            assertThat(SchemaCheck.faults(api, api.at("/components/schemas/Refusals"), JSON.readTree(answer.body())))
                    .as(path)
                    .isEmpty();
        }
        HttpResponse<String> kept = bench.postBody(
                "/api/jobs/job-v-0093/acts/make-note", "application/json", "{\"text\": \"by the door\"}");
        assertThat(kept.statusCode()).isEqualTo(201);
        assertThat(SchemaCheck.faults(api, api.at("/components/schemas/Kept"), JSON.readTree(kept.body())))
                .isEmpty();
    }

    private static List<JsonNode> contents(JsonNode operation) {
        List<JsonNode> contents = new ArrayList<>();
        operation.at("/requestBody/content").forEach(contents::add);
        operation.get("responses").forEach(response -> response.path("content").forEach(contents::add));
        return contents;
    }

    private static void fits(JsonNode api, String path, JsonNode content) {
        assertThat(content.has("schema")).as(path).isTrue();
        content.path("examples")
                .forEach(example -> assertThat(SchemaCheck.faults(api, content.get("schema"), example.get("value")))
                        .as(path)
                        .isEmpty());
    }

    @Test
    void aRefusedCaseFitsItsSchemaAndAWrongOneDoesNot() {
        JsonNode api = JSON.readTree(bench.get("/api/openapi.json").body());
        JsonNode schema = api.at("/components/schemas/Refusals");
        JsonNode refused = JSON.readTree(json("growth", "{\"caseRize\": 60}").body());
        assertThat(SchemaCheck.faults(api, schema, refused)).isEmpty();
        assertThat(SchemaCheck.faults(
                        api, api.at("/components/schemas/growth-case"), JSON.readTree("{\"caseRize\": 60}")))
                .contains(" lacks \"legs\"", " has caseRize");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "growth | application/json | {\"caseRise\": \"60 N\"} | 422 | is a force",
                "growth | application/json | {\"caseRise\": 60 | 400 | is not sound JSON",
                "growth | application/json | {\"caseRise\": 60, \"caseRise\": 61} | 400 | is not sound JSON",
                "growth | application/json | {} {} | 400 | is not sound JSON",
                "growth | application/json | 7 | 400 | is not an object",
                "growth | application/json | [] | 400 | holds no case",
                "growth | application/json | null | 400 | holds no case",
                "growth | application/json; charset=utf-8 | {} | 422 | not given",
                "growth | text/csv | a,a | 400 | empty or repeated key",
                "growth | text/csv | a,b | 400 | no case stands below",
                "growth | application/xml | <a/> | 415 | is not understood here",
                "growht | application/json | {} | 404 | there is no worksheet",
                "growth?units=cubit | application/json | {} | 400 | is not known",
            })
    void whatCannotBeAnsweredIsASentenceWithItsStatus(
            String sheet, String type, String body, int status, String sentence) {
        HttpResponse<String> answer = bench.postBody(SHEETS + "/" + sheet, type, body);
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(status);
        assertThat(answer.headers().firstValue("Content-Type").orElse("")).startsWith("application/json");
        assertThat(JSON.readTree(answer.body())
                        .get("refusals")
                        .valueStream()
                        .map(one -> one.get("sentence").asString()))
                .anyMatch(one -> one.contains(sentence));
    }

    @Test
    void manyCasesAreALineEachInOrder() {
        String lines = json("involute", "[{\"angle\": 20}, {\"angle\": \"7 N\"}, {\"involute\": 0.0149}]")
                .body();
        List<JsonNode> cases = lines.lines().map(JSON::readTree).toList();
        assertThat(cases).extracting(one -> one.get("case").asInt()).containsExactly(1, 2, 3);
        assertThat(cases.get(1).at("/refusals/0/sentence").asString())
                .isEqualTo("body, case 2, pressure angle: \"7 N\" is a force; an angle is needed here.");
        // ISO 21771-1:2022, inv 20° = 0.014904; two decimals less are enough here
        assertThat(cases.get(0).at("/result/involute/value").asDouble())
                .isCloseTo(0.014904, org.assertj.core.api.Assertions.within(5e-7));
        String rows = bench.postBody(SHEETS + "/involute?units=inch", "text/csv", "angle\n20\nx\n30\n1,2\n40\n")
                .body();
        List<JsonNode> read = rows.lines().map(JSON::readTree).toList();
        assertThat(read).hasSize(4);
        assertThat(read.get(1).at("/refusals/0/place").asString()).isEqualTo("body:3, pressure angle");
        assertThat(read.get(1).at("/refusals/0/key").asString()).isEqualTo("angle");
        assertThat(read.get(3).at("/refusals/0/sentence").asString()).contains("2 cells under 1 keys");
    }

    @Test
    void aBodyTooLargeIsRefusedAndTextThatIsNoneToo() {
        String large = "{\"angle\": \"" + "1".repeat(4_200_000) + "\"}";
        assertThat(json("involute", large).statusCode()).isEqualTo(413);
        assertThat(bench.postBody(SHEETS + "/involute", "text/csv", "angle\n" + "x\n".repeat(2_200_000))
                        .statusCode())
                .isEqualTo(413);
        assertThat(json("involute", "[".repeat(3000)).statusCode()).isEqualTo(400);
        assertThat(bench.get("/api/nothing").statusCode()).isEqualTo(404);
        assertThat(bench.get("/api/nothing").body()).startsWith("{");
    }
}
