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
 * Random boxes begun through the door, with entries taken out at random and a job on each: every page that shows the unit is there,
 * with its drawings, its text and the file for another shop, and each gap names a page that is. {@code -Dshimwright.units=10000} tries as
 * many; with {@code -Dshimwright.one.in=12} all have their own page and that of each gap looked at, and one in twelve, drawn anew for each, its
 * entries, its papers, and a job on it.
 */
class HalfFinishedPagesTest {
    private static final int UNITS = Integer.getInteger("shimwright.units", 6);

    private static final int SHELF = 20;

    private static final int ONE_IN = Integer.getInteger("shimwright.one.in", 1);

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

    private static void looked(DemoBench bench, String here) {
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
        assertThat(page.select(".drawn svg")).as(here).hasSize(2);
    }

    private static void entries(DemoBench bench, Random random, String here) {
        Document page = bench.page(here);
        for (String section : page.select("#sections + p a").eachAttr("href")) {
            Document entries = bench.page(section);
            assertThat(entries.select("h1")).as(section).isNotEmpty();
            List<String> change = entries.select("ul.shelf a").eachAttr("href");
            List<String> open = new ArrayList<>(List.of(section + "/entry"));
            if (!change.isEmpty()) {
                open.add(change.get(random.nextInt(change.size())));
            }
            there(bench, open);
            if (random.nextInt(5) == 0) {
                drawn(bench, section, open.get(open.size() - 1));
            }
        }
    }

    private static void there(DemoBench bench, List<String> pages) {
        pages.forEach(page -> assertThat(bench.get(page).statusCode()).as(page).isEqualTo(200));
    }

    /** What stands in a form is drawn where the drawing shows it. */
    private static void drawn(DemoBench bench, String section, String entry) {
        Document form = bench.page(entry);
        if (!form.select("[data-draws]").isEmpty()) {
            List<String> all = new ArrayList<>();
            EntryPagesTest.fields(form, section + "/entry").forEach((name, value) -> all.addAll(List.of(name, value)));
            var drawing = bench.post(section + "/drawing", all.toArray(String[]::new));
            assertThat(drawing.statusCode()).as(entry).isIn(200, 422);
            assertThat(drawing.body()).as(entry).contains("<svg");
        }
    }

    private static <T> T any(Random random, List<T> of) {
        return of.get(random.nextInt(of.size()));
    }

    /** Its history, text, parts, and the file for another shop. */
    private static void kept(DemoBench bench, Random random, String type) {
        String here = "/units/type/" + type;
        there(
                bench,
                List.of(
                        "/units",
                        here + "/history",
                        here + "/bundle",
                        "/units/shelf/" + type + ".yaml",
                        "/api/units/" + type,
                        "/api/units/" + type + "?format=yaml",
                        "/api/units/" + type + "/history",
                        "/api/units/" + type + "/bundle"));
        there(
                bench,
                bench.page(here + "/history").select("ul.shelf a.button").eachAttr("href").stream()
                        .limit(2)
                        .toList());
        assertThat(bench.post(here + "/bundle", "history", "yes").statusCode()).isEqualTo(200);
        List<String> parts = bench.page(here).select("a.partlink").eachAttr("href");
        if (!parts.isEmpty()) {
            String part = any(random, parts);
            Document page = bench.page(part);
            assertThat(page.select(".partpicture")).as(part).isNotEmpty();
            there(bench, page.select(".partpicture").eachAttr("src"));
        }
    }

    /** A job on it: some things off, their order looked at and put in, a clearance from shims, steps, parts, papers. */
    // size: one job on a half-finished unit, page by page
    private static void worked(DemoBench bench, Random random, String type, int n) {
        assertThat(bench.post("/new/" + type, "number", "H-" + n, "owner", "a farm", "said", "it whines")
                        .statusCode())
                .as(type)
                .isEqualTo(200);
        String job = "/job/job-h-" + n;
        for (int off = 1 + random.nextInt(4); off > 0; off--) {
            List<String> taps =
                    bench.page(job + "/strip").select("button[name=tap]").eachAttr("value");
            if (!taps.isEmpty()) {
                String tap = any(random, taps);
                assertThat(bench.post(job + "/strip", "inTheWay", "last", "tap", tap, "fasteners", "4 x M8x1.25 8.8")
                                .statusCode())
                        .as(tap)
                        .isEqualTo(200);
            }
        }
        assertThat(bench.post(
                                job + "/strip",
                                "gone",
                                "shims",
                                "inTheWay",
                                "last",
                                "shims-sizes",
                                "0.40 mm; 0.15 mm",
                                "shims-acts",
                                random.nextBoolean() ? "closes" : "")
                        .statusCode())
                .isEqualTo(200);
        there(
                bench,
                bench.page(job + "/strip")
                        .select("a[href*=strip/clearance], a[href*=right]")
                        .eachAttr("href"));
        there(
                bench,
                List.of(
                        job + "/strip/order",
                        job + "/strip/questions",
                        job + "/differs",
                        job + "/learn",
                        job + "/guide",
                        job + "/benchsheet",
                        job + "/tags"));
        assertThat(bench.post(job + "/strip/order").statusCode()).isIn(200, 422);
        there(
                bench,
                List.of(
                        job + "/strip",
                        job + "/strip/order",
                        job + "/build",
                        job + "/plan",
                        job + "/clearances",
                        job + "/inspect",
                        job + "/orders",
                        job + "/back",
                        job + "/sheets",
                        job + "/record",
                        "/units/type/" + type + "?job=" + job.substring(5)));
        steps(bench, random, job);
    }

    /** Some steps with the pictures of their parts, and a part alone. */
    private static void steps(DemoBench bench, Random random, String job) {
        List<String> steps =
                bench.page(job + "/plan").select("a[href*='build?step=']").eachAttr("href");
        for (int looks = 3; looks > 0 && !steps.isEmpty(); looks--) {
            String step = any(random, steps);
            Document page = bench.page(step);
            assertThat(page.select("h1.order").text()).as(step).isNotEmpty();
            there(bench, page.select(".partpicture").eachAttr("src"));
        }
        List<String> parts = bench.page(job + "/parts").select("a.partlink").eachAttr("href");
        if (!parts.isEmpty()) {
            String part = any(random, parts);
            there(bench, List.of(part));
            there(bench, bench.page(part).select(".partpicture").eachAttr("src"));
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
                        looked(bench, here);
                        if (random.nextInt(ONE_IN) == 0) {
                            entries(bench, random, here);
                        }
                        if (random.nextInt(ONE_IN) == 0) {
                            kept(bench, random, "old-works-half-" + n);
                        }
                        if (random.nextInt(ONE_IN) == 0) {
                            worked(bench, random, "old-works-half-" + n, n);
                        }
                    }
                }
            }
        }
    }
}
