package shimwright.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;
import shimwright.bench.store.SamplePictures;

/** Two shops on two data folders: what one learned of a box goes to the other with its pictures, and out of it again. */
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class BundleBetweenShopsTest {
    private static final String TYPE = "old-works-r5";
    private static final String UNIT = "/units/type/" + TYPE;
    private static DemoBench one;
    private static DemoBench other;

    @BeforeAll
    static void start() throws IOException {
        one = DemoBench.at(Files.createTempDirectory("shimwright-one-"));
        other = DemoBench.at(Files.createTempDirectory("shimwright-other-"));
        begin(one);
        one.post("/new/" + TYPE, "number", "1", "owner", "a farm");
        one.post("/job/job-1/strip", "tap", "bell", "inTheWay", "last");
        picture("strip", SamplePictures.byLibrary("jpg", 64, 48));
        picture("job", SamplePictures.byLibrary("png", 30, 30));
    }

    @AfterAll
    static void stop() {
        one.close();
        other.close();
    }

    private static void begin(DemoBench bench) {
        String[] box = {
            "maker",
            "Old Works",
            "model",
            "r5",
            "layout",
            "ACROSS",
            "housing-BELL",
            "yes",
            "gears",
            "5",
            "straight",
            "0",
            "reverse",
            "SLIDING",
            "shift",
            "RAILS",
            "cones1",
            "1",
            "cones2",
            "1",
            "cones3",
            "1",
            "cones4",
            "1",
            "cones5",
            "1"
        };
        assertThat(bench.post("/begin", box).statusCode()).isEqualTo(200);
    }

    private static void picture(String about, byte[] content) {
        assertThat(one.upload("/job/job-1/picture", "x.jpg", content, "about", about, "caption", "as it lay")
                        .statusCode())
                .isEqualTo(200);
    }

    private static byte[] out(DemoBench bench) {
        return bench.bytes("/api/units/" + TYPE + "/bundle?pictures=proposed&history=true&captions=true");
    }

    private static Map<String, String> files(byte[] packed) throws IOException {
        Map<String, String> files = new TreeMap<>();
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(packed))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                files.put(entry.getName(), new String(zip.readAllBytes(), StandardCharsets.ISO_8859_1));
            }
        }
        return files;
    }

    @Test
    @Order(1)
    void onlyWhatIsChosenGoesOut() throws IOException {
        Document page = one.page(UNIT + "/bundle");
        assertThat(page.select(".bundlechoice li")).hasSize(2);
        assertThat(page.select(".bundlechoice input[checked]")).hasSize(1);
        assertThat(page.select(".bundlechoice option[selected]").eachAttr("value"))
                .contains("item bell", "unit");
        Map<String, String> files = files(out(one));
        assertThat(files).hasSize(3).containsKeys("manifest.json", "unit.yaml");
        assertThat(files.get("manifest.json")).contains("begun from what can be seen", "as it lay");
        assertThat(files(one.bytes("/api/units/" + TYPE + "/bundle")).get("manifest.json"))
                .doesNotContain("begun from what can be seen", "as it lay");
        assertThat(files(one.bytes("/api/units/" + TYPE + "/bundle?pictures=all")))
                .hasSize(4);
        assertThat(one.get("/api/units/" + TYPE + "/bundle?pictures=" + "0".repeat(64))
                        .statusCode())
                .isEqualTo(422);
    }

    @Test
    @Order(2)
    void theOtherShopTakesItInAndShowsItWhereThePartIs() throws IOException {
        byte[] bundle = out(one);
        assertThat(other.get(UNIT).statusCode()).isEqualTo(404);
        byte[] bent = bundle.clone();
        bent[bent.length / 2] ^= 4;
        assertThat(other.uploadAs("file", "/units/bundle", "b.zip", bent).statusCode())
                .isEqualTo(422);
        assertThat(other.get(UNIT).statusCode()).isEqualTo(404);
        assertThat(other.uploadAs("file", "/units/bundle", "b.zip", bundle, "why", "the same box came in")
                        .statusCode())
                .isEqualTo(200);
        assertThat(other.page(UNIT + "?item=bell").select(".fromothers").text())
                .contains("as it lay", "from another shop");
        String elsewhere = other.page(UNIT).select(".partlink").stream()
                .map(link -> link.attr("href"))
                .filter(link -> !link.contains("item=bell"))
                .findFirst()
                .orElseThrow();
        assertThat(other.page(elsewhere).select(".fromothers")).isEmpty();
        assertThat(other.page(UNIT + "/history").text())
                .contains("the same box came in", "begun from what can be seen", "from another shop");
        other.post("/new/" + TYPE, "number", "2", "owner", "a mill");
        assertThat(other.page("/job/job-2/strip").select(".fromothers img")).hasSize(1);
        String step = other.page(UNIT + "/bundle").select("option[value^=step]").stream()
                .filter(option -> option.text().contains("bell"))
                .map(option -> option.attr("value").substring("step ".length()))
                .findFirst()
                .orElseThrow();
        assertThat(other.page("/job/job-2/build?step=" + step).select(".onwide .beside img.small"))
                .hasSize(1);
        assertThat(files(out(other)).entrySet())
                .containsAll(files(out(one)).entrySet().stream()
                        .filter(file -> !file.getKey().equals("manifest.json"))
                        .toList());
    }

    @Test
    @Order(3)
    void aNameThatIsThereIsAskedAboutAndNothingIsWrittenOver() {
        one.post(UNIT + "/weigh", "mass", "38");
        byte[] bundle = out(one);
        String was = other.get("/units/shelf/" + TYPE + ".yaml").body();
        var asked = other.uploadAs("file", "/units/bundle", "b.zip", bundle);
        assertThat(asked.statusCode()).isEqualTo(422);
        assertThat(asked.body()).contains("This shop has another file of that unit");
        assertThat(other.get("/units/shelf/" + TYPE + ".yaml").body()).isEqualTo(was);
        assertThat(other.postBytes("/api/units/bundle", "application/zip", bundle)
                        .statusCode())
                .isEqualTo(422);
        String held = org.jsoup.Jsoup.parse(asked.body())
                .select("main input[name=held]")
                .attr("value");
        var refused = other.uploadAs(
                "none",
                "/units/bundle",
                "",
                new byte[0],
                "held",
                held,
                "clash",
                "other",
                "maker",
                "Old Works",
                "model",
                "r5");
        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.body()).contains("on the shelf already");
        assertThat(other.uploadAs(
                                "none",
                                "/units/bundle",
                                "",
                                new byte[0],
                                "held",
                                held,
                                "clash",
                                "other",
                                "maker",
                                "Old Works",
                                "model",
                                "r5 of theirs")
                        .statusCode())
                .isEqualTo(200);
        assertThat(other.page("/units/type/old-works-r5-of-theirs?item=bell").select(".fromothers img"))
                .hasSize(1);
        assertThat(other.get("/units/shelf/" + TYPE + ".yaml").body()).isEqualTo(was);
        assertThat(other.postBytes("/api/units/bundle?clash=over", "application/zip", bundle)
                        .statusCode())
                .isEqualTo(201);
        assertThat(other.get("/units/shelf/" + TYPE + ".yaml").body())
                .isEqualTo(one.get("/units/shelf/" + TYPE + ".yaml").body());
        // the way back is the one of any change
        assertThat(other.post(UNIT + "/back").statusCode()).isEqualTo(200);
        assertThat(other.get("/units/shelf/" + TYPE + ".yaml").body()).isEqualTo(was);
    }

    @Test
    @Order(4)
    void picturesGoOutOfTheUnitAgainAndAllIsThereAfterARestart() throws IOException {
        String hash = other.page(UNIT).select(".fromothers a").attr("href").substring("/picture/".length());
        other.restart();
        assertThat(other.page(UNIT + "?item=bell").select(".fromothers img")).hasSize(1);
        Path folder = other.folder();
        assertThat(folder).isDirectory();
        assertThat(other.post(UNIT + "/pictures", "type", TYPE, "pictures1", hash)
                        .statusCode())
                .isEqualTo(200);
        assertThat(other.page(UNIT).select(".fromothers")).isEmpty();
        assertThat(other.post(UNIT + "/pictures", "type", TYPE, "pictures1", hash)
                        .statusCode())
                .isEqualTo(404);
        // they come back with the bundle, at whose file nobody asks any more
        assertThat(other.postBytes("/api/units/bundle?clash=over", "application/zip", out(one))
                        .statusCode())
                .isEqualTo(201);
        assertThat(other.page(UNIT).select(".fromothers img")).hasSize(1);
    }

    @Test
    @Order(5)
    void aPersonDoesItByThumb() throws IOException {
        one.post("/job/job-1/strip", "tap", "input_shaft", "inTheWay", "last");
        picture("strip", SamplePictures.byLibrary("jpg", 90, 60));
        one.post(UNIT + "/weigh", "mass", "41");
        Path file = Files.createTempFile("bundle", ".zip");
        Files.write(file, out(one));
        try (Browser browser = new Browser()) {
            browser.tablet();
            browser.open(one.url(UNIT + "/bundle"));
            browser.picture("bundle-choose");
            browser.open(other.url("/units/bundle"));
            browser.picture("bundle-in");
            browser.one("input[type=file]").sendKeys(file.toString());
            browser.press("main button.main");
            assertThat(browser.text()).contains("another file of that unit");
            browser.picture("bundle-asked");
            browser.shown("input[value=over]").click();
            browser.press("main button.main");
            assertThat(browser.text()).contains("is on the shelf, with its pictures");
            browser.picture("bundle-taken");
            browser.open(other.url(UNIT + "/history"));
            browser.picture("bundle-history");
            browser.phone();
            browser.open(one.url(UNIT + "/bundle"));
            browser.picture("bundle-choose-phone");
            browser.open(other.url("/job/job-2/strip"));
            browser.picture("bundle-strip-phone");
        }
    }
}
