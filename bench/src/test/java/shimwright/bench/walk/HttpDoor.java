package shimwright.bench.walk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.Map;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import shimwright.bench.ClockedBench;
import shimwright.bench.ClockedBench.Answer;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Acts and questions through the HTTP door. */
final class HttpDoor {
    static final JsonMapper JSON = JsonMapper.builder().build();

    private final ClockedBench bench;

    HttpDoor(ClockedBench bench) {
        this.bench = bench;
    }

    /** An entry of a file as keys and values, to be changed and sent back. */
    static Map<String, Object> map(JsonNode entry) {
        return JSON.convertValue(entry, new TypeReference<LinkedHashMap<String, Object>>() {});
    }

    JsonNode get(String path) {
        Answer answer = bench.get("/api" + path);
        assertThat(answer.status()).as("%s %s", path, answer.body()).isEqualTo(200);
        return JSON.readTree(answer.body());
    }

    JsonNode shop() {
        return get("/shop");
    }

    JsonNode job(String job) {
        return get("/jobs/" + job);
    }

    /** An act that is kept. */
    JsonNode inShop(String act, Map<String, ?> typed) {
        return kept("/api/shop/acts/" + act, typed);
    }

    /** An act that is kept. */
    JsonNode onJob(String job, String act, Map<String, ?> typed) {
        return kept("/api/jobs/" + job + "/acts/" + act, typed);
    }

    private JsonNode kept(String path, Map<String, ?> typed) {
        Answer answer = bench.post(path, JSON.writeValueAsString(typed));
        assertThat(answer.status()).as("%s %s %s", path, typed, answer.body()).isEqualTo(201);
        return JSON.readTree(answer.body());
    }

    /** A page that somebody reads. */
    Document page(String path) {
        Answer answer = bench.get(path);
        assertThat(answer.status()).as("%s %s", path, answer.body()).isEqualTo(200);
        return Jsoup.parse(answer.body());
    }

    /** A form of a page that is kept. */
    void form(String path, Map<String, ?> typed) {
        Answer answer = bench.form(path, typed);
        assertThat(answer.status())
                .as("%s %s %s", path, typed, Jsoup.parse(answer.body()).select(".faults"))
                .isIn(302, 303);
    }

    /** An entry of a unit file that is kept; one that is there is replaced by its id. */
    void entry(String type, String section, String id, Map<String, ?> fields) {
        kept("/api/units/" + type + "/entries/" + section + (id.isEmpty() ? "" : "/" + id), fields);
    }

    /** An act as it may be: its refusals in one text, empty where it was kept. */
    String tried(String job, String act, Map<String, ?> typed) {
        Answer answer = bench.post("/api/jobs/" + job + "/acts/" + act, JSON.writeValueAsString(typed));
        assertThat(answer.status()).as("%s %s %s", act, typed, answer.body()).isIn(201, 422);
        return answer.status() == 201 ? "" : answer.body();
    }

    /** An act that is refused, for a reason that says so. */
    void refused(String job, String act, Map<String, ?> typed, String saying) {
        assertThat(tried(job, act, typed)).as("%s %s", act, typed).contains(saying);
    }
}
