package shimwright.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.RecordComponent;
import java.net.http.HttpResponse;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.act.Act;
import shimwright.rebuild.act.ActInput;
import shimwright.rebuild.act.Acts;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What is wrong with an input of an act is told by the key of that input, and its field on the page is marked. */
class ActKeysTest {
    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final String JOB = "/job/job-v-0093";
    private static DemoBench bench;

    @BeforeAll
    static void start() {
        bench = DemoBench.fresh();
    }

    @AfterAll
    static void stop() {
        bench.close();
    }

    private static List<Refusal> refusals(String name, String body) {
        boolean shop = Act.OfShop.class.isAssignableFrom(Acts.find(name).orElseThrow());
        HttpResponse<String> answer = bench.postBody(
                (shop ? "/api/shop/acts/" : "/api/jobs/job-v-0093/acts/") + name, "application/json", body);
        assertThat(answer.statusCode())
                .as("%s %s: %s", name, body, answer.body())
                .isEqualTo(422);
        return JSON.readTree(answer.body())
                .get("refusals")
                .valueStream()
                .map(ActKeysTest::refusal)
                .toList();
    }

    private static Refusal refusal(JsonNode one) {
        return new Refusal(
                one.get("key").asString(),
                one.get("place").asString(),
                one.get("fact").asString(),
                one.get("hint").asString());
    }

    @TestFactory
    Stream<DynamicTest> whatCannotBeReadIsToldAtItsInput() {
        return Acts.byName().entrySet().stream()
                .map(act -> DynamicTest.dynamicTest(act.getKey(), () -> {
                    List<String> inputs = Arrays.stream(act.getValue().getRecordComponents())
                            .map(RecordComponent::getName)
                            .toList();
                    for (RecordComponent input : act.getValue().getRecordComponents()) {
                        List<Refusal> told =
                                refusals(act.getKey(), JSON.writeValueAsString(Map.of(input.getName(), bad(input))));
                        assertThat(told)
                                .as("%s of %s", input.getName(), act.getKey())
                                .anyMatch(refusal -> refusal.within(input.getName())
                                        && !refusal.fact().equals("nothing typed")
                                        && refusal.place()
                                                .contains(input.getAnnotation(ActInput.class)
                                                        .value()))
                                .allMatch(refusal -> inputs.stream().anyMatch(refusal::within));
                        // a sheet says at once what else it lacks
                        assertThat(told.stream()
                                        .filter(refusal -> refusal.within(input.getName()))
                                        .filter(refusal -> input.getType() != Map.class
                                                || refusal.key().equals(input.getName() + ".k")))
                                .hasSize(1);
                    }
                }));
    }

    private static Object bad(RecordComponent input) {
        String long_ = "y".repeat(input.getAnnotation(ActInput.class).longest() + 1);
        if (input.getType() == List.class) {
            return List.of(long_);
        }
        return input.getType() == Map.class ? Map.of("k", long_) : input.getType() == String.class ? long_ : "odd";
    }

    @TestFactory
    Stream<DynamicTest> whatIsMissingIsToldAtItsInput() {
        return Acts.byName().entrySet().stream()
                .map(act -> DynamicTest.dynamicTest(act.getKey(), () -> {
                    List<String> needed = Arrays.stream(act.getValue().getRecordComponents())
                            .filter(input -> !input.getAnnotation(ActInput.class)
                                    .missing()
                                    .isEmpty())
                            .map(RecordComponent::getName)
                            .toList();
                    if (!needed.isEmpty()) {
                        assertThat(refusals(act.getKey(), "{}").stream()
                                        .map(Refusal::key)
                                        .filter(key -> key.indexOf('.') < 0))
                                .containsExactlyInAnyOrderElementsOf(needed);
                    }
                }));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "name-pieces | clearance=zz | clearance",
                "name-pieces | clearance=c; in.sI=no-such | in.sI",
                "read-round | clearance=zz; v=0.2, 0.2 | clearance",
                "read-round | clearance=c; v=x, 0.2 | v[0]",
                "read-round | clearance=c; v=0.2, 9000 | v[1]",
                "read-round | clearance=c; v=0.2, 0.3, 0.4 | v",
                "read-round | clearance=c; gauge=none; v=0.2, 0.3 | gauge",
                "choose-pack | clearance=zz | clearance",
                "choose-pack | clearance=c; pack=no-such | pack",
                "choose-together | clearance=zz | clearance",
                "choose-together | clearance=c | clearance",
                "accept-clearance | clearance=zz | clearance",
                "read-check | step=P02; hold=H01; check=zz; values=1 | check",
                "read-check | step=P02; hold=zz; check=flat; values=1 | hold",
                "read-check | step=P02; hold=H01; check=flat; values=x | values",
                "read-check | step=P02; hold=H01; check=flat; values=4000 | values",
                "read-check | step=P02; hold=H01; check=dowels; attest=perhaps | attest",
                "pass-hold | step=P02; hold=zz; reason=so | hold",
                "move-unit | file=zz; variant=A; reason=so | file",
                "inspect | limit=zz; values=1 | limit",
                "inspect | limit=C10; values=x | values",
                "inspect | limit=C10; values= | values",
                "inspect | limit=C04; attest=perhaps | attest",
                "decide | limit=zz; what=ring; decision=reuse; reason=so | limit",
                "add-picture | picture=zz; size=5 | picture",
                "strike | struck=zz; reason=so | struck",
                "take-off | gone=ring; inTheWay=zz | inTheWay",
                "take-off | gone=ring; asOneWith=zz | asOneWith",
                "take-off | gone=ring; shims.acts=both | shims.acts",
                "correct-taken-off | takenOff=zz; gone=ring; reason=so | takenOff",
                "read-as-found | what=end play; play=900 | play",
                "read-as-found | what=end play | play",
                "send-out | what=shims; items=zz; due=2099-01-01 | items[0]",
                "send-out | what=shims; due=2001-01-01 | due",
                "take-delivery | sent=zz; good=yes; measured=it | sent",
                "open-job | type=zz; number=1; owner=I | type",
                "open-job | type=ambleholt-l5-74; number=V-0093; owner=I; variant=A; because=so | number",
                "open-job | type=ambleholt-l5-74; number=Q-1; owner=I; variant=zz; because=so | variant",
                "add-shim | piece=d52-10; family=SH52; t=0.4, 0.4, 0.4 | piece",
                "add-shim | piece=new; family=SH52; t=0.4, x, 0.4 | t[1]",
                "add-shims | family=SH52; list=d1 0.4 x9 | list",
                "measure-shim | piece=zz; t=0.4, 0.4, 0.4 | piece",
                "remove-shim | piece=zz; reason=so | piece",
                "return-shim | piece=zz; reason=so | piece",
                "add-gauge | gauge=G9; name=dial; step=0; errorLimit=0.01; range=10 | step",
                "add-gauge | gauge=G9; name=dial; step=0.01; errorLimit=-1; range=10 | errorLimit",
                "add-gauge | gauge=G9; name=dial; step=0.01; errorLimit=0.01; range=0 | range",
                "retire-gauge | gauge=zz; reason=so | gauge",
                "describe-shop | fact.begins=noon | fact.begins",
                "describe-shop | fact.evening=lots | fact.evening",
                "done | step=zz | step",
                "done-out-of-order | step=zz; reason=so | step",
                "undo | step=zz; reason=so | step",
                "leave-out | step=zz; reason=so | step",
                "take-up | step=zz | step",
                "add-step | step=Z9; todo=it; at=zz; duration=5; reason=so | at",
                "add-step | step=P02; todo=it; at=BENCH; duration=5; reason=so | step",
                "add-step | step=Z9; todo=it; at=BENCH; duration=5; after=zz; reason=so | after[0]",
                "add-step | step=Z9; todo=it; at=BENCH; duration=5; before=zz; reason=so | before[0]",
                "cannot-now | step=zz; reason=so | step",
                "take-side | choice=zz; side=early | choice",
                "take-side | choice=O1; side=zz | side",
            })
    void whatIsWrongIsToldAtItsInput(String act, String inputs, String key) {
        assertThat(refusals(act, JSON.writeValueAsString(body(act, inputs))))
                .extracting(Refusal::key)
                .contains(key)
                .allMatch(told -> told.isEmpty() || told.equals(key));
    }

    private static Map<String, Object> body(String act, String inputs) {
        Map<String, Object> body = new LinkedHashMap<>();
        for (String input : inputs.split("; ")) {
            String[] pair = input.split("=", -1);
            String[] path = pair[0].split("\\.");
            boolean list = Arrays.stream(Acts.find(act).orElseThrow().getRecordComponents())
                    .anyMatch(one -> one.getName().equals(pair[0]) && one.getType() == List.class);
            body.put(
                    path[0],
                    path.length > 1 ? Map.of(path[1], pair[1]) : list ? List.of(pair[1].split(", ")) : pair[1]);
        }
        return body;
    }

    @Test
    void theFieldOfThePageIsMarkedAndSaysIt() {
        Document drawer = posted("/drawer", "piece", "new", "family", "SH52", "t1", "0.4", "t2", "x", "t3", "0.4");
        assertThat(drawer.select("[aria-invalid]").eachAttr("name")).containsExactly("t2");
        assertThat(drawer.select("#" + drawer.select("[aria-invalid]").attr("aria-describedby"))
                        .text())
                .contains("\"x\" is not a number")
                .doesNotContain("micrometer, place 2:");
        Document gauges = posted("/gauges", "gauge", "G9", "name", "", "step", "x", "errorLimit", "1 Nm", "range", "5");
        assertThat(gauges.select("[aria-invalid]").eachAttr("name"))
                .containsExactlyInAnyOrder("name", "step", "errorLimit");
        Document inspect = posted(
                JOB + "/inspect/pieces",
                "form",
                "read-C10",
                "limit",
                "C10",
                "values-fork_12",
                "6.7",
                "values-fork_5",
                "x");
        assertThat(inspect.select("[aria-invalid]").eachAttr("name")).containsExactly("values-fork_5");
        assertThat(inspect.select("input[name=values-fork_12]").val()).isEqualTo("6.7");
        assertThat(inspect.select("form:has([aria-invalid]) input[name=limit]").eachAttr("value"))
                .containsOnly("C10");
        Document orders = posted(JOB + "/orders", "what", "", "due", "2099-01-01");
        assertThat(orders.select("[aria-invalid]").eachAttr("name")).containsExactly("what");
        Document strip = posted(JOB + "/strip", "gone", "");
        assertThat(strip.select("[aria-invalid]").eachAttr("name")).containsExactly("gone");
    }

    private static Document posted(String path, String... fields) {
        HttpResponse<String> answer = bench.post(path, fields);
        assertThat(answer.statusCode()).as(path).isEqualTo(422);
        return Jsoup.parse(answer.body());
    }
}
