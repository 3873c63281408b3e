package shimwright.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Objects;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import shimwright.rebuild.unit.file.UnitFiles;

/** From the hand-back to the owner's word, to the return and its cause, each with its way back; and a number that was replaced. */
class AfterHandBackTest {
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

    private static String day(int from) {
        return LocalDate.now(ZoneId.systemDefault()).plusDays(from).toString();
    }

    /** Strikes the entry whose strike form stands next after a line that says so. */
    private static void strike(String selector) {
        String id = bench.page(JOB + "/record").select(selector).get(0).val();
        bench.keep(JOB + "/strike", "struck", id, "page", "record", "reason", "on the wrong box");
    }

    @Test
    void whatIsSaidAndFoundAfterTheHandBackStaysWithTheJob() {
        // an owner who declines gets the box back as it is
        bench.keep(JOB + "/money/quote", "spread", "30");
        bench.keep("/setup", "fact-rate", "60 EUR");
        bench.keep(JOB + "/money/rate", "fact-rate", "60 EUR");
        bench.keep(JOB + "/money/quote", "spread", "30");
        bench.keep(JOB + "/money/owner", "says", "declined", "by", "in_person", "day", day(0), "words", "too dear");
        assertThat(bench.keep(JOB + "/handback", "warranty", "none", "followUp", "in spring")
                        .body())
                .contains("is no day");
        bench.keep(JOB + "/handback", "warranty", "none", "followUp", day(-1), "lesson", "ask for the oil first");
        assertThat(bench.page("/").text()).contains("Ask the owner how it goes", "V-0093", "on " + day(-1), "overdue");
        assertThat(bench.page(JOB + "/record").text()).contains("Ask the owner on " + day(-1), "ask for the oil first");
        // asked: it is off the shop's page, and another day is on it
        assertThat(bench.keep(JOB + "/followup", "form", "followup", "said", "").body())
                .contains("Say what the owner said");
        bench.keep(JOB + "/followup", "form", "followup", "said", "it drives", "followUp", day(90));
        assertThat(bench.page("/").text()).contains("on " + day(90)).doesNotContain("overdue");
        bench.restart();
        assertThat(bench.page("/").text()).contains("on " + day(90));
        strike(".wait ~ .strike input[name=struck]");
        assertThat(bench.page("/").text()).doesNotContain("Ask the owner how it goes");
        bench.keep(JOB + "/ask", "form", "ask", "followUp", day(30), "about", "look at the oil");
        assertThat(bench.page(JOB + "/record").text()).contains("Ask the owner on " + day(30) + " look at the oil");
        // it comes back
        assertThat(bench.keep(JOB + "/return", "form", "return", "day", day(1), "said", "", "items", "no such part")
                        .body())
                .contains("Say what the owner says it does");
        bench.keep(JOB + "/return", "form", "return", "day", day(1), "said", "it howls", "items", "crown wheel");
        assertThat(bench.page(JOB + "/record").select("section.came").text())
                .contains("Came back on " + day(1), "it howls", "crown wheel");
        String returned = bench.page(JOB + "/record")
                .select("section.came input[name=returned]")
                .val();
        assertThat(bench.keep(JOB + "/return/why", "form", "why-1", "returned", returned, "name", "a chip")
                        .body())
                .contains("Say the part, our work, its use, or not known");
        bench.keep(
                JOB + "/return/why",
                "returned",
                returned,
                "name",
                "a chip",
                "lies",
                "OUR_WORK",
                "items",
                "crown wheel");
        assertThat(bench.page(JOB + "/record").text())
                .contains("a chip, lies in: our work", "Why it came back: a chip, our work");
        strike("section.came .found ~ .strike input[name=struck]");
        assertThat(bench.page(JOB + "/record").text()).contains("The cause is not on the record");
        strike("section.came > .strike input[name=struck]");
        assertThat(bench.page(JOB + "/record").select("section.came")).isEmpty();
    }

    @Test
    void aReplacedNumberStandsInTheOrderListUntilItIsTakenBack() {
        try (DemoBench other = DemoBench.fresh()) {
            for (Element here : other.page(JOB + "/orders").select("input[name=struck]")) {
                String id = here.val();
                other.post(
                        JOB + "/strike",
                        "entry",
                        "x-" + id,
                        "struck",
                        id,
                        "page",
                        "orders",
                        "reason",
                        "of another box");
            }
            String said = other.get(JOB + "/orders.csv").body();
            String old = "74-5055";
            assertThat(said).contains("\"" + old + " ");
            assertThat(other.page("/numbers").text()).contains("None yet");
            other.post(
                    "/numbers",
                    "entry",
                    "n-1",
                    "part",
                    old,
                    "by",
                    "NEW-77",
                    "who",
                    "the agent",
                    "back",
                    JOB + "/orders");
            assertThat(other.get(JOB + "/orders.csv").body())
                    .contains("\"NEW-77 ", "in place of " + old + ", says the agent");
            assertThat(other.page(JOB + "/orders").text()).contains("NEW-77", "in place of " + old);
            assertThat(other.page("/numbers?back=" + JOB + "/orders").text())
                    .contains(old + " is now NEW-77, says the agent");
            assertThat(other.post("/numbers/stands", "entry", "n-2", "form", "stands", "part", old, "reason", "")
                            .body())
                    .contains("Say why it stands after all");
            other.post("/numbers/stands", "entry", "n-3", "part", old, "reason", "misread");
            assertThat(other.get(JOB + "/orders.csv").body()).isEqualTo(said);
        }
    }

    @Test
    void anEmptyShopIsToldWhatItMissesOnEachOfThesePages() throws IOException {
        Path folder = Files.createTempDirectory("shimwright-empty-");
        String type = "ambleholt-l5-74";
        Files.createDirectories(folder.resolve("units"));
        try (InputStream unit = UnitFiles.class.getResourceAsStream("/units/" + type + ".yaml")) {
            Files.copy(Objects.requireNonNull(unit), folder.resolve("units/" + type + ".yaml"));
        }
        try (DemoBench other = DemoBench.at(folder)) {
            assertThat(other.page("/overjobs/" + type).text())
                    .contains("No box of this type was handed back", "From four on a chart has limits");
            assertThat(other.page("/overjobs/" + type + "/drawer").text())
                    .contains("No box of this type was handed back");
            assertThat(other.get("/overjobs/none").statusCode()).isEqualTo(404);
            assertThat(other.page("/overjobs/" + type + "/drawer?jobs=many").text())
                    .contains("Not kept");
        }
    }
}
