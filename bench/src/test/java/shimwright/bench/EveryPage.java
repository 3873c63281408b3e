package shimwright.bench;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jsoup.nodes.Document;
import shimwright.bench.store.SamplePictures;

/** The pages that a person can come to: those of the demo shop as it is, and those that are there once something more was kept. */
final class EveryPage {
    /** Pages of the demo shop that are measured in each run. */
    static final List<String> PAGES = List.of(
            "/",
            "/drawer",
            "/setup",
            "/units",
            "/gauges",
            "/gauges?kind=feeler",
            "/devices",
            "/new",
            "/new/ambleholt-l5-74",
            "/job/job-v-0093/strip",
            "/job/job-v-0093/inspect?limit=C10",
            "/job/job-v-0093/orders",
            "/job/job-v-0093/sendout/other/seal_track",
            "/job/job-v-0093/money",
            "/job/job-v-0093/tags",
            "/job/job-v-0093/complaint",
            "/job/job-v-0093/sides",
            "/job/job-v-0093/differs",
            "/job/job-v-0093/build",
            "/job/job-v-0093/build?step=K02",
            "/job/job-v-0093/sheets",
            "/job/job-v-0093/sheet/interference?about=joint+head-cone&step=T01",
            "/job/job-v-0093/plan",
            "/job/job-v-0093/plan?begin=18:30&hours=2.5&spread=30&arrives=",
            "/job/job-v-0093/people",
            "/job/job-v-0093/back",
            "/job/job-v-0093/back?to=step:K02",
            "/job/job-v-0093/clearances",
            "/job/job-v-0093/together",
            "/job/job-v-0093/clearance/c",
            "/job/job-v-0093/clearance/a",
            "/job/job-v-0093/clearance/e",
            "/job/job-v-0093/proof",
            "/job/job-v-0093/record",
            "/job/job-v-0091/record",
            "/sheets",
            "/sheets?q=end+float",
            "/parts?stamp=M8",
            "/begin",
            "/units/type/ambleholt-l5-74?item=sP",
            "/units/type/ambleholt-l5-74/fasteners",
            "/units/type/ambleholt-l5-74/clearances/entry?id=c",
            "/units/type/ambleholt-l5-74/history",
            "/sheets/tightening",
            "/sheets/end-play?rounds=0.24/0.32&gauge.step=x",
            "/sheets/mesh-forces?" + SheetPagesTest.example("mesh-forces"),
            "/sheets/interference?" + SheetPagesTest.example("interference"));

    /** Pages of the demo shop that are looked at in pictures and by axe-core, and are too many for each run. */
    static final List<String> FURTHER = List.of(
            "/held",
            "/numbers",
            "/overjobs/ambleholt-l5-74",
            "/overjobs/ambleholt-l5-74/drawer",
            "/job/job-v-0093/learn",
            "/job/job-v-0093/parts",
            "/job/job-v-0093/sendout",
            "/job/job-v-0093/parts/gear_5",
            "/job/job-v-0093/inspect",
            "/job/job-v-0093/inspect?limit=C01",
            "/job/job-v-0093/inspect?limit=C45",
            "/job/job-v-0093/strip/order",
            "/job/job-v-0093/strip/questions",
            "/job/job-v-0093/strip?right=demo-job-v-0093-10",
            "/job/job-v-0093/sendout?spline=G23",
            "/job/job-v-0093/clearance/b",
            "/job/job-v-0093/clearance/d",
            "/job/job-v-0091/build",
            "/job/job-v-0091/plan",
            "/job/job-v-0091/money",
            "/job/job-v-0091/clearance/c",
            "/tag/job-v-0093/item-fork_5",
            "/nowhere",
            "/units/bundle",
            "/job/job-v-0091/guide",
            "/job/job-v-0093/benchsheet",
            "/units/type/ambleholt-l5-74",
            "/units/type/ambleholt-l5-74/steps",
            "/units/type/ambleholt-l5-74/bearings",
            "/units/type/ambleholt-l5-74/kits",
            "/units/type/ambleholt-l5-74/wear_limits",
            "/units/type/ambleholt-l5-74/bundle",
            "/tag");

    /** Pages of a shop in which nothing was kept yet. */
    static final List<String> OF_AN_EMPTY_SHOP = List.of(
            "/", "/new", "/units", "/drawer", "/setup", "/gauges", "/begin", "/sheets", "/parts", "/devices", "/held");

    private static final String JOB = "/job/job-v-0093";

    /** A box without a unit file, as far as the page that begins one asks. */
    private static final String[] BOX = {
        "maker",
        "Old Works",
        "model",
        "seven",
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

    private EveryPage() {}

    /** Pages of the demo shop as it is. */
    static List<String> ofTheDemo() {
        return Stream.concat(PAGES.stream(), FURTHER.stream()).toList();
    }

    /** Keeps a picture, a send-out, a change of the unit and the strip-down of a box without a unit file; answers with the pages of these. */
    static List<String> kept(DemoBench bench) throws IOException {
        bench.upload(
                JOB + "/picture",
                "a.jpg",
                SamplePictures.byLibrary("jpg", 640, 480),
                "about",
                "strip",
                "page",
                "strip");
        bench.keep(JOB + "/sendout", InspectedTest.asked());
        bench.post("/units/type/ambleholt-l5-74/weigh", "mass", "40");
        bench.post("/begin", BOX);
        bench.post("/new/old-works-seven", "number", "W-7", "owner", "a farm");
        String job = "/job/job-w-7";
        bench.post(job + "/strip", "entry", "seven-off-1", "tap", "bell", "inTheWay", "last");
        bench.post(job + "/strip", "entry", "seven-off-2", "tap", "input_seal", "inTheWay", "last");
        bench.post(
                job + "/strip",
                "entry",
                "seven-off-3",
                "gone",
                "shims",
                "inTheWay",
                "last",
                "shims-sizes",
                "0.40; 0.15");
        List<String> pages = new ArrayList<>();
        pages.add(first(bench, JOB + "/strip", "a[href^='/job/'][href*='/picture/']"));
        pages.add(first(bench, JOB + "/orders", "a[href*='/sendout/']"));
        pages.add(job + "/strip/clearance?of=seven-off-3");
        for (String page : List.of(
                "strip",
                "strip/order",
                "strip/questions",
                "differs",
                "build",
                "plan",
                "back",
                "clearances",
                "inspect",
                "orders",
                "parts",
                "sheets",
                "complaint",
                "learn",
                "guide",
                "benchsheet",
                "tags",
                "record")) {
            pages.add(job + "/" + page);
        }
        pages.add("/units/type/old-works-seven?job=job-w-7");
        return List.copyOf(pages);
    }

    private static String first(DemoBench bench, String page, String css) {
        Document stands = bench.page(page);
        return stands.select(css).get(0).attr("href");
    }
}
