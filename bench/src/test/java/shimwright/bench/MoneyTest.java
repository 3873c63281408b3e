package shimwright.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.time.LocalDate;
import java.time.ZoneId;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** From the rate to the quote, to what the owner says, to what was found since, to what it came to; and a box that goes back as it is. */
class MoneyTest {
    private static final String JOB = "/job/job-v-0093";
    private static final String MONEY = JOB + "/money";
    private static DemoBench bench;

    @BeforeAll
    static void start() {
        bench = DemoBench.fresh();
    }

    @AfterAll
    static void stop() {
        bench.close();
    }

    private static String today() {
        return LocalDate.now(ZoneId.systemDefault()).toString();
    }

    private static String paper(String name) throws IOException {
        try (PDDocument paper = Loader.loadPDF(bench.bytes(JOB + "/" + name))) {
            return new PDFTextStripper().getText(paper);
        }
    }

    @Test
    void theOwnerIsToldARangeAgreesAndIsAskedAgainWhenMoreIsFound() throws IOException {
        assertThat(bench.page(MONEY).text()).contains("The owner was not told yet", "What an hour at the bench costs");
        assertThat(bench.keep(MONEY + "/quote", "spread", "30").body()).contains("nobody has said what an hour costs");
        assertThat(bench.keep(MONEY + "/owner", "says", "agreed", "by", "by_telephone", "day", today())
                        .body())
                .contains("was not told yet what it may cost");
        bench.keep(MONEY + "/rate", "fact-rate", "60 EUR");
        assertThat(bench.keep(MONEY + "/quote", "spread", "").body())
                .contains("by how many percent the hours ahead may be off");
        assertThat(bench.keep(
                                MONEY + "/quote",
                                "spread",
                                "30",
                                "chances-rework-C37",
                                "200",
                                "prices-rework-C37",
                                "many")
                        .body())
                .contains("is no percentage from 0 to 100", "is no amount");
        bench.keep(MONEY + "/quote", "spread", "30", "chances-rework-C37", "100", "prices-rework-C37", "380");
        assertThat(bench.page(MONEY).select("h2.told, h2:contains(Told)").text())
                .containsPattern("Told: \\d+ to \\d+ EUR");
        assertThat(bench.page(MONEY).text())
                .contains("rework:", "380.00", "Not in it", "The owner was told and has not answered");
        assertThat(bench.keep(MONEY + "/owner", "says", "less", "by", "in_person", "day", today())
                        .body())
                .contains("Say what is left out");
        assertThat(bench.keep(MONEY + "/owner", "says", "agreed", "by", "by_telephone", "day", "2020-01-01")
                        .body())
                .contains("is before the unit came in");
        bench.keep(MONEY + "/owner", "says", "agreed", "by", "by_telephone", "day", today(), "who", "Ms Fleet");
        assertThat(bench.page(MONEY).text()).contains("The owner agreed.", "Ms Fleet, by telephone on " + today());
        assertThat(bench.page(JOB + "/orders").text()).doesNotContain("Ask the owner");
        // more is found than was reckoned with
        bench.keep(JOB + "/judge", "what", "crown wheel", "decision", "replace", "reason", "a tooth is cracked");
        assertThat(bench.page(MONEY).text()).contains("more was found since", "crown wheel: a tooth is cracked");
        assertThat(bench.page(JOB + "/orders").text()).contains("Ask the owner");
        assertThat(bench.page(JOB + "/record").text())
                .contains("Agreed with the owner", "Ms Fleet, by telephone on " + today() + ": go on");
        assertThat(paper("quote.pdf")).contains("Quote for V-0093", "Not in it", "EUR");
    }

    @Test
    void whatItCameToIsHoursAndWhatThingsCost() throws IOException {
        bench.keep(MONEY + "/rate", "fact-rate", "60 EUR");
        assertThat(bench.page(MONEY).text()).contains("how many hours are to be paid for");
        assertThat(bench.keep(MONEY + "/hours", "hours", "many").statusCode()).isEqualTo(422);
        bench.keep(MONEY + "/hours", "hours", "14.5", "reason", "the evening of the ferry is on the shop");
        assertThat(bench.keep(MONEY + "/cost", "what", "bore and sleeve", "amount", "lots")
                        .body())
                .contains("is no amount");
        bench.keep(MONEY + "/cost", "what", "bore and sleeve", "amount", "380");
        bench.keep(MONEY + "/cost", "what", "=HYPERLINK(\"http://x\")", "amount", "1.50");
        String csv = bench.get(JOB + "/invoice.csv").body();
        assertThat(csv)
                .startsWith("what,remark,amount,currency\n")
                .contains("\"Work\",\"14.5 h at 60 EUR an hour\",\"870.00\",\"EUR\"")
                .contains("\"'=HYPERLINK(\"\"http://x\"\")\",")
                .contains("\"together, without tax\",\"\",\"1251.50\",\"EUR\"");
        assertThat(paper("invoice.pdf")).contains("What it came to, V-0093", "bore and sleeve", "1251.50");
        // it costs something else, and one line was a mistake
        bench.keep(MONEY + "/cost", "about", "bore and sleeve", "what", "bore and sleeve", "amount", "395.20");
        String id = bench.page(MONEY)
                .select(".found:contains(HYPERLINK) ~ .strike input[name=struck]")
                .get(0)
                .val();
        bench.keep(JOB + "/strike", "struck", id, "page", "money", "reason", "typed by a joker");
        assertThat(bench.get(JOB + "/invoice.csv").body())
                .doesNotContain("HYPERLINK")
                .contains("\"1265.20\"");
    }

    @Test
    void aBoxWhoseOwnerDeclinesGoesBackAsItIs() {
        try (DemoBench other = DemoBench.fresh()) {
            assertThat(other.post(JOB + "/handback", "entry", "declines-0", "warranty", "none")
                            .body())
                    .contains("steps are not done");
            other.post(MONEY + "/rate", "entry", "declines-1", "fact-rate", "60 EUR");
            other.post(MONEY + "/quote", "entry", "declines-2", "spread", "30");
            other.post(MONEY + "/owner", "entry", "declines-3", "says", "declined", "by", "in_writing", "day", today());
            assertThat(other.page(MONEY).text()).contains("wants it back as it is");
            other.post(JOB + "/handback", "entry", "declines-4", "warranty", "none: nothing was finished");
            assertThat(other.page(JOB + "/record").text())
                    .contains("Handed back as it is: the owner declined the rebuild", "give it back as it is");
            // what is to be paid can still be said
            other.post(MONEY + "/hours", "entry", "declines-5", "hours", "3");
            assertThat(other.page(MONEY).text()).contains("To be paid for: 3.0 h");
        }
    }
}
