package shimwright.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;

/**
 * Random boxes begun through the door, with entries taken out at random: every page of the unit, of each section and of an entry
 * is there, and each gap names a page that is. {@code -Dshimwright.units=10000} tries as many.
 */
class HalfFinishedPagesTest {
    private static final int UNITS = Integer.getInteger("shimwright.units", 6);

    private static final int SHELF = 20;

    private static String box(Random random, String model) {
        int gears = 3 + random.nextInt(5);
        boolean line = random.nextBoolean();
        List<String> cones = new ArrayList<>();
        for (int gear = 0; gear < gears; gear++) {
            cones.add(String.valueOf(random.nextInt(4)));
        }
        return "{\"maker\": \"Old Works\", \"model\": \"" + model + "\", \"layout\": \""
                + (line ? "IN_LINE" : random.nextBoolean() ? "ACROSS" : "ALONG") + "\", \"gears\": " + gears
                + ", \"straight\": " + (line ? random.nextInt(gears + 1) : 0) + ", \"countershafts\": "
                + (random.nextBoolean() ? 1 : 3) + ", \"reverse\": \""
                + (random.nextBoolean() ? "SLIDING" : "SYNCHRONIZED") + "\", \"shift\": \""
                + List.of("RAILS", "SINGLE_RAIL", "CABLES").get(random.nextInt(3)) + "\", \"cones\": " + cones + "}";
    }

    private static String encoded(String word) {
        return URLEncoder.encode(word, StandardCharsets.UTF_8).replace("+", "%20");
    }

    private static void dropped(DemoBench bench, Random random, String api, String here) {
        List<String> sections = bench.page(here).select("#sections + p a").eachAttr("href");
        String section = sections.get(random.nextInt(sections.size()));
        List<String> ids = bench.page(section).select("li input[name=id]").eachAttr("value");
        if (!ids.isEmpty()) {
            String id = ids.get(random.nextInt(ids.size()));
            int status = bench.delete(api + "/entries/" + section.substring(here.length() + 1) + "/" + encoded(id)
                            + "?mentions=" + random.nextBoolean())
                    .statusCode();
            assertThat(status).as(section + " " + id).isIn(201, 422);
        }
    }

    private static void looked(DemoBench bench, Random random, String here) {
        Document page = bench.page(here);
        for (Element gap : page.select(".gaps a")) {
            String at = gap.attr("href");
            assertThat(
                            at.startsWith("#")
                                    ? page.select(at).size()
                                    : bench.get(at).statusCode() / 200)
                    .as(at)
                    .isEqualTo(1);
        }
        assertThat(bench.get(here + "/history").statusCode()).isEqualTo(200);
        for (String section : page.select("#sections + p a").eachAttr("href")) {
            Document entries = bench.page(section);
            assertThat(entries.select("h1")).as(section).isNotEmpty();
            List<String> change = entries.select("ul.shelf a").eachAttr("href");
            List<String> open = new ArrayList<>(List.of(section + "/entry"));
            if (!change.isEmpty()) {
                open.add(change.get(random.nextInt(change.size())));
            }
            open.forEach(
                    entry -> assertThat(bench.get(entry).statusCode()).as(entry).isEqualTo(200));
        }
    }

    @Test
    void everyPageOfAHalfFinishedUnitIsThere() throws IOException {
        Random random = new Random(Long.getLong("shimwright.seed", 7));
        for (int begun = 0; begun < UNITS; begun += SHELF) {
            try (DemoBench bench = DemoBench.at(Files.createTempDirectory("shimwright-half-"))) {
                for (int n = begun; n < Math.min(UNITS, begun + SHELF); n++) {
                    String box = box(random, "half " + n);
                    int status = bench.postBody("/api/units", "application/json", box)
                            .statusCode();
                    assertThat(status).as(box).isIn(201, 422);
                    if (status == 201) {
                        String here = "/units/type/old-works-half-" + n;
                        for (int drops = random.nextInt(4); drops > 0; drops--) {
                            dropped(bench, random, "/api/units/old-works-half-" + n, here);
                        }
                        looked(bench, random, here);
                    }
                }
            }
        }
    }
}
