package shimwright.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Every section of a unit file and its entries on pages: looked at, changed, added, copied, taken out, refused at the field. */
class EntryPagesTest {
    private static final String HERE = "/units/type/ambleholt-l5-74";

    private static DemoBench bench;

    @BeforeAll
    static void start() {
        bench = DemoBench.fresh();
    }

    @AfterAll
    static void stop() {
        bench.close();
    }

    /** What a browser sends for a form nobody touched. */
    static Map<String, String> fields(Document page, String action) {
        Map<String, List<String>> sent = new LinkedHashMap<>();
        Element form = java.util.Objects.requireNonNull(page.selectFirst("form[action=" + action + "]"));
        for (Element field : form.select("input, select, textarea")) {
            boolean box = field.attr("type").equals("checkbox");
            if (!box || field.hasAttr("checked")) {
                String value = switch (field.tagName()) {
                    case "select" -> {
                        Element chosen = field.selectFirst("option[selected]");
                        Element first = chosen == null ? field.selectFirst("option") : chosen;
                        yield first == null ? "" : first.attr("value");
                    }
                    case "textarea" -> field.wholeText();
                    default -> field.val();
                };
                sent.computeIfAbsent(field.attr("name"), none -> new ArrayList<>())
                        .add(value);
            }
        }
        Map<String, String> fields = new LinkedHashMap<>();
        sent.forEach((name, values) -> fields.put(name, String.join("\n", values)));
        return fields;
    }

    private static HttpResponse<String> send(String action, Map<String, String> fields) {
        List<String> all = new ArrayList<>();
        fields.forEach((name, value) -> all.addAll(List.of(name, value)));
        return bench.post(action, all.toArray(String[]::new));
    }

    private static String firstEntry(Document section) {
        return section.select("ul.shelf a").get(0).attr("href");
    }

    @Test
    void theDrawingShowsWhatIsTypedBeforeItIsKept() {
        String entry = HERE + "/clearances/entry?id="
                + bench.page(HERE + "/clearances").select("ul.shelf b").get(0).text();
        assertThat(bench.page(entry).select("[data-draws] svg")).hasSize(2);
        Map<String, String> fields = fields(bench.page(HERE + "/items/entry?id=sleeve_4"), HERE + "/items/entry");
        fields.put("name", "sleeve of another name");
        HttpResponse<String> drawn = send(HERE + "/items/drawing", fields);
        assertThat(drawn.statusCode()).isEqualTo(200);
        assertThat(drawn.body()).containsIgnoringCase("sleeve of another name").contains("not kept yet");
        assertThat(bench.page(HERE).text()).doesNotContain("sleeve of another name");
        fields.put("along", "one to two");
        HttpResponse<String> refused = send(HERE + "/items/drawing", fields);
        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.body()).contains("Not drawn yet").contains("<svg");
    }

    @Test
    void everySectionAndTheFormOfAnEntryOfEachIsThere() {
        List<String> sections = bench.page(HERE).select("#sections + p a").eachAttr("href");
        assertThat(sections).hasSizeGreaterThan(25);
        for (String section : sections) {
            Document page = bench.page(section);
            assertThat(page.select("h1").text()).as(section).isNotEmpty();
            if (!page.select("ul.shelf a").isEmpty()) {
                Document form = bench.page(firstEntry(page));
                assertThat(form.select("form.card .slot").size()).as(section).isPositive();
            }
            assertThat(bench.get(section + "/entry").statusCode()).as(section).isEqualTo(200);
        }
        assertThat(bench.get(HERE + "/nothing").statusCode()).isEqualTo(404);
        assertThat(bench.get("/units/type/none/items").statusCode()).isEqualTo(404);
        assertThat(bench.get(HERE + "/items/entry?id=none").statusCode()).isEqualTo(404);
    }

    @Test
    void whatCannotBeIsSaidAtItsFieldAndNothingTypedIsLost() {
        String entry = firstEntry(bench.page(HERE + "/hold_points"));
        Map<String, String> fields = fields(bench.page(entry), HERE + "/hold_points/entry");
        String before = fields.get("checks.0.what");
        fields.put("chance", "often");
        fields.put("checks.0.gauge", "");
        fields.put("checks.0.places", "x");
        fields.put("checks.0.what", "what I typed");
        HttpResponse<String> refused = send(HERE + "/hold_points/entry", fields);
        assertThat(refused.statusCode()).isEqualTo(422);
        Document again = Jsoup.parse(refused.body());
        assertThat(again.select("[aria-invalid=true]").eachAttr("name"))
                .containsExactlyInAnyOrder("chance", "checks.0.places");
        assertThat(again.select("[name=checks.0.what]").val()).isEqualTo("what I typed");
        assertThat(again.select("[name=chance]").val()).isEqualTo("often");
        assertThat(fields(bench.page(entry), HERE + "/hold_points/entry")).containsEntry("checks.0.what", before);
    }

    @Test
    void anEntryIsChangedAddedCopiedAndTakenOut() {
        Map<String, String> mass = fields(bench.page(HERE + "/unit"), HERE + "/unit/entry");
        mass.put("mass", "39");
        mass.put("why", "weighed on the crane scale");
        assertThat(send(HERE + "/unit/entry", mass).statusCode()).isEqualTo(200);
        assertThat(bench.page(HERE + "/unit").select("[name=mass]").val()).isEqualTo("39 kg");
        HttpResponse<String> added =
                bench.post(HERE + "/tools/entry", "was", "", "entry", "add-a-tool", "value", "oil gun");
        assertThat(added.body()).contains("Kept: tools oil gun");
        bench.post(HERE + "/tools/entry", "was", "", "entry", "add-a-tool", "value", "oil gun");
        assertThat(bench.page(HERE + "/tools").select("li").eachText().stream().filter(t -> t.contains("oil gun")))
                .hasSize(1);
        Document copy = bench.page(HERE + "/tools/entry?copy=oil_gun");
        assertThat(copy.select("[name=value]").val()).isEqualTo("oil gun");
        assertThat(copy.select("[name=key]").val()).isEmpty();
        bench.post(HERE + "/tools/drop", "id", "oil_gun", "entry", "drop-a-tool");
        assertThat(bench.page(HERE + "/tools").text()).doesNotContain("oil gun");
        Document tools = bench.page(HERE + "/items");
        String needed = tools.select("li input[name=id]").get(0).val();
        HttpResponse<String> refused = bench.post(HERE + "/items/drop", "id", needed, "entry", "drop-an-item");
        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(Jsoup.parse(refused.body()).select(".faults").text()).contains("is not among the items");
    }

    @Test
    void listsSayAtEachTorqueAndLimitWhereItComesFrom() {
        Document bolts = bench.page(HERE + "/fasteners");
        assertThat(bolts.select("h1").text()).isEqualTo("Fasteners");
        assertThat(bolts.select("p.origin")).hasSameSizeAs(bolts.select("ul.shelf > li"));
        assertThat(bolts.select("p.origin").get(0).text()).startsWith("torque ").contains("repair book");
        assertThat(bench.page(HERE + "/wear_limits").select("p.origin").get(0).text())
                .startsWith("limit ")
                .doesNotContain("not written");
        assertThat(bench.page(HERE).select("#sections + p a").eachText())
                .allMatch(heading -> Character.isUpperCase(heading.charAt(0)));
    }

    @Test
    void everyGapNamesThePageWhereItIsMended() {
        for (Element gap : bench.page(HERE).select(".gaps a")) {
            String at = gap.attr("href");
            assertThat(at.startsWith("#") ? bench.page(HERE).select(at).size() : 1)
                    .isPositive();
            assertThat(bench.get(at.startsWith("#") ? HERE : at).statusCode()).isEqualTo(200);
        }
    }

    @Test
    void eachChangeIsKeptWithWhoWhenAndWhyAndOneCanGoBackAfterARestart() {
        try (DemoBench own = DemoBench.fresh()) {
            Map<String, String> unit = fields(own.page(HERE + "/unit"), HERE + "/unit/entry");
            String was = unit.get("mass");
            String text = own.get("/units/shelf/ambleholt-l5-74.yaml").body();
            for (String kilograms : List.of("39 kg", "41 kg")) {
                unit.put("mass", kilograms);
                unit.put("why", "weighed " + kilograms);
                unit.put("entry", "weigh-" + kilograms.replace(' ', '-'));
                List<String> all = new ArrayList<>();
                unit.forEach((name, value) -> all.addAll(List.of(name, value)));
                assertThat(own.post(HERE + "/unit/entry", all.toArray(String[]::new))
                                .statusCode())
                        .isEqualTo(200);
            }
            own.restart();
            Document history = own.page(HERE + "/history");
            assertThat(history.select("ul.shelf > li")).hasSize(2);
            assertThat(history.select("ul.shelf > li").get(0).text())
                    .contains("what it is", "weighed 41 kg", "mass: 39 kg → 41 kg");
            String before = history.select("ul.shelf > li")
                    .get(1)
                    .select("a:contains(before)")
                    .attr("href");
            assertThat(own.get(before).body()).isEqualTo(text);
            assertThat(own.get(HERE + "/history/" + "0".repeat(64)).statusCode())
                    .isEqualTo(404);
            String hash = before.substring(before.lastIndexOf('/') + 1);
            assertThat(own.post(HERE + "/history/back", "hash", hash, "entry", "back-to-first")
                            .body())
                    .contains("Kept: back to");
            assertThat(own.page(HERE + "/unit").select("[name=mass]").val()).isEqualTo(was);
            assertThat(own.get("/units/shelf/ambleholt-l5-74.yaml").body()).isEqualTo(text);
            assertThat(own.post(HERE + "/back", "entry", "take-it-back").body()).contains("taken back");
            assertThat(own.page(HERE + "/unit").select("[name=mass]").val()).isEqualTo("41 kg");
            assertThat(own.page(HERE + "/history").select("ul.shelf > li")).hasSize(4);
            HttpResponse<String> late =
                    own.post(HERE + "/history/text", "before", hash, "text", text, "entry", "late-text");
            assertThat(late.statusCode()).isEqualTo(422);
            assertThat(late.body()).contains("changed meanwhile");
        }
    }

    @Test
    void programsReadAndChangeAUnitFileWithTheSameChecks() {
        String api = "/api" + HERE.replace("/type", "");
        assertThat(bench.get(api).body()).contains("\"content\"", "\"lacks\"");
        assertThat(bench.get(api + "?format=yaml").body()).contains("format: ");
        String seal = "{\"where\": \"at the speed drive\", \"size\": \"9 x 2\", \"quantity\": 2}";
        HttpResponse<String> added =
                bench.postBody(api + "/entries/seals/SX?entry=door-seal-1&why=found", "application/json", seal);
        assertThat(added.statusCode()).as(added.body()).isEqualTo(201);
        assertThat(bench.postBody(api + "/entries/seals/SX?entry=door-seal-1", "application/json", seal)
                        .statusCode())
                .isEqualTo(201);
        assertThat(bench.page(HERE + "/seals/entry?id=SX")
                        .select("[name=quantity]")
                        .val())
                .isEqualTo("2");
        HttpResponse<String> wrong = bench.postBody(
                api + "/entries/seals/SX", "application/json", "{\"where\": \"x\", \"quantity\": \"two\"}");
        assertThat(wrong.statusCode()).isEqualTo(422);
        assertThat(wrong.body()).contains("not a whole number", "\"key\":\"quantity\"");
        assertThat(bench.postBody(api + "/entries/nothing/x", "application/json", "{}")
                        .statusCode())
                .isEqualTo(404);
        assertThat(bench.postBody(api + "/entries/seals/x", "application/json", "[]")
                        .statusCode())
                .isEqualTo(400);
        assertThat(bench.delete(api + "/entries/seals/SX?entry=door-seal-2").statusCode())
                .isEqualTo(201);
        assertThat(bench.page(HERE + "/seals").text()).doesNotContain("at the speed drive");
        assertThat(bench.get(api + "/history").body()).contains("seals SX", "found", "without seals SX");
        String box = "{\"maker\": \"Old Works\", \"model\": \"by door\", \"layout\": \"IN_LINE\", \"gears\": 4,"
                + " \"straight\": 4, \"countershafts\": 1, \"reverse\": \"SLIDING\", \"shift\": \"RAILS\","
                + " \"cones\": [1, 0, 1, 1]}";
        HttpResponse<String> begun = bench.postBody("/api/units", "application/json", box);
        assertThat(begun.statusCode()).as(begun.body()).isEqualTo(201);
        assertThat(bench.postBody("/api/units", "application/json", box).statusCode())
                .isEqualTo(422);
        assertThat(bench.get("/api/units/old-works-by-door").statusCode()).isEqualTo(200);
    }
}
