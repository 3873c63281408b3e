package shimwright.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shimwright.bench.store.TestPostgres;
import shimwright.bench.store.backup.Backup;
import shimwright.bench.web.pair.Role;

/** Several real browsers in one shop: two at the bench, a third looking on. */
class BenchesTest {
    private static final String OTHER = "127.0.0.2";
    private static final String JOB = "/job/job-v-0093";
    private static Browser one;
    private static Browser two;
    private static Browser onlooker;

    @BeforeAll
    static void start() {
        one = new Browser();
        two = new Browser();
        onlooker = Browser.trustingAnyCertificate();
    }

    @AfterAll
    static void stop() {
        one.close();
        two.close();
        onlooker.close();
    }

    @Test
    void atOneProgramWithItsFolder() {
        try (DemoBench bench = DemoBench.with("host", OTHER)) {
            work(bench, bench);
        }
    }

    @Test
    void atTwoProgramsWithOneDatabase(@TempDir Path work) throws IOException {
        String address = TestPostgres.get().database();
        try (DemoBench filled = DemoBench.fresh()) {
            Backup.make(filled.folder(), work.resolve("backup"), Optional.empty())
                    .orElseThrow();
        }
        Backup.restore(work.resolve("backup"), address).orElseThrow();
        try (DemoBench first = DemoBench.with("store", address, "host", OTHER);
                DemoBench second = DemoBench.with("store", address)) {
            work(first, second);
        }
    }

    private void work(DemoBench first, DemoBench second) {
        String code = first.running()
                .entrance()
                .devices()
                .code(Role.ONLOOKER, "")
                .orElseThrow()
                .text();
        onlooker.open("https://" + OTHER + ":" + first.running().server().port() + "/pair?code=" + code);
        onlooker.one("input[name=name]").sendKeys("office");
        onlooker.changes(() -> onlooker.one("form button").click());
        onlooker.open("https://" + OTHER + ":" + first.running().server().port() + JOB + "/record");

        one.open(first.url(JOB + "/build"));
        two.open(second.url(JOB + "/build"));
        whatOneKeptComesByItself();
        whatIsBeingTypedStays();
        onTwoJobs(second);
        aFormThatIsOutOfDateIsRefusedAndItsTextIsKept(first, second);
    }

    private static void keepNote(Browser browser, String text) {
        browser.typeUnfolded("form[action$='/note'] input[name=text]", text);
        browser.changes(() -> browser.one("form[action$='/note'] button").click());
    }

    private static void comes(Browser browser, String text) {
        browser.wait(text, () -> browser.text().contains(text) ? Boolean.TRUE : null);
    }

    private void whatOneKeptComesByItself() {
        two.script("document.body.dataset.before = 'yes'; return 1");
        keepNote(one, "seen from the first bench");
        comes(onlooker, "seen from the first bench");
        two.wait(
                "a page by itself",
                () -> two.script("return document.body.dataset.before || 'new'").equals("new") ? Boolean.TRUE : null);
    }

    private void whatIsBeingTypedStays() {
        two.typeUnfolded("form[action$='/note'] input[name=text]", "half a sen");
        keepNote(one, "while the other types");
        comes(two, "Another bench has kept something");
        assertThat(typed(two, "note", "text")).isEqualTo("half a sen");
        two.one("form[action$='/note'] input[name=text]").sendKeys("tence");
        two.changes(() -> two.one("form[action$='/note'] button").click());
        comes(onlooker, "half a sentence");
        comes(onlooker, "while the other types");
        comes(one, "half a sentence");
    }

    private static String typed(Browser browser, String form, String field) {
        return browser.script(
                        "return document.querySelector(\"form[action$='/" + form + "'] [name=" + field + "]\").value")
                .toString();
    }

    /** What is kept on another job does not move this page. */
    private void onTwoJobs(DemoBench second) {
        NewJob.open(second, "V-0200");
        two.open(second.url("/job/job-v-0200/strip"));
        assertThat(two.text()).contains("V-0200");
        one.script("document.body.dataset.before = 'yes'; return 1");
        two.script("document.body.dataset.before = 'yes'; return 1");
        second.post("/job/job-v-0200/note", "step", "", "text", "on the other job", "entry", "note-on-other-job");
        two.wait(
                "a page by itself",
                () -> two.script("return document.body.dataset.before || 'new'").equals("new") ? Boolean.TRUE : null);
        assertThat(one.script("return document.body.dataset.before")).isEqualTo("yes");
        two.open(second.url(JOB + "/build"));
    }

    private void aFormThatIsOutOfDateIsRefusedAndItsTextIsKept(DemoBench first, DemoBench second) {
        String step = first.page(JOB + "/build").select(".step .at b").text();
        one.open(first.url(JOB + "/build?step=" + step));
        two.open(second.url(JOB + "/build?step=" + step));
        two.typeUnfolded("form[action$='/leftout'] input[name=reason]", "no time for it");
        one.typeUnfolded("form[action$='/leftout'] input[name=reason]", "done by the owner");
        one.changes(() -> one.one("form[action$='/leftout'] button").click());
        assertThat(one.has("main > .faults")).as(one.text()).isFalse();
        comes(two, "Another bench has kept something");
        two.changes(() -> two.one("form[action$='/leftout'] button").click());
        assertThat(two.text()).contains("Not kept").contains("no time for it");
        assertThat(first.get("/api/jobs/job-v-0093/entries").body().split("StepLeftOut"))
                .hasSize(2);
        assertThat(first.get(JOB + "/plan").body())
                .contains("done by the owner")
                .doesNotContain("no time for it");
    }
}
