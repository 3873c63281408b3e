package shimwright.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import shimwright.bench.desk.Desk;
import shimwright.bench.desk.UnitShelf;
import shimwright.bench.store.ShopStore;
import shimwright.bench.store.log.OpenLog;
import shimwright.bench.store.sqlite.SummaryFile;
import shimwright.rebuild.job.Draft;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Heads;
import shimwright.rebuild.job.JobLog;
import shimwright.rebuild.job.Shop;

/** The first page says what the log says and waits for no unit file and no plan; what is next comes after. */
class FirstPageTest {
    private static final String BUILD = "shimwright.build";

    private DemoBench bench;

    @BeforeEach
    void start() {
        System.setProperty(BUILD, "one");
        bench = DemoBench.fresh();
    }

    @AfterEach
    void stop() {
        bench.close();
        System.clearProperty(BUILD);
    }

    @Test
    void itIsShownWithoutUnitFilesAndEachCardLeadsOn() {
        Document first = bench.page("/");
        assertThat(first.body().text())
                .contains("V-0093", "V-0091", "Handed back", "Open it to see what is next", "loose pieces")
                .doesNotContain("Next: ");
        assertThat(bench.running().units().asked()).isFalse();
        for (Element card : first.select("a.job")) {
            assertThat(bench.get(card.attr("href")).statusCode()).isEqualTo(200);
            Element whole = bench.page(card.attr("data-card")).expectFirst("a.job");
            assertThat(whole.text()).contains(card.select(".number").text(), "steps", "Ambleholt");
            assertThat(whole.attr("href")).isEqualTo(card.attr("href"));
        }
        assertThat(bench.page("/job/job-v-0093/card").text()).contains("Next: ");
        assertThat(bench.page("/job/job-v-0091/card").text()).contains("Handed back");
        assertThat(bench.get("/job/none/card").statusCode()).isEqualTo(404);
        assertThat(bench.running().units().asked()).isTrue();
    }

    @Test
    void aStartThatFindsSummariesShowsTheSameAndNoEntryIsMissed() {
        String first = shown();
        bench.restart();
        assertThat(shown()).isEqualTo(first);
        bench.post("/drawer", "piece", "d80-99", "family", "SH80", "t1", "1.0", "t2", "1.0", "t3", "1.0");
        String more = shown();
        assertThat(more).isNotEqualTo(first);
        bench.restart();
        assertThat(shown()).isEqualTo(more);
        // the same as the whole shop says, also of pieces that are in units
        Shop shop = bench.running().desk().shop();
        assertThat(bench.running().desk().shopSummary().pieces())
                .containsExactlyElementsOf(shop.pieces().values().stream()
                        .filter(Shop.Piece::inDrawer)
                        .map(Shop.Piece::id)
                        .toList());
        assertThat(bench.running().desk().shopSummary().gauges())
                .containsExactlyElementsOf(shop.gauges().values());
        assertThat(bench.running().desk().facts()).isEqualTo(shop.facts());
    }

    /** The first page without the names of units, which come with the card where nothing has read the unit file yet. */
    private String shown() {
        return bench.page("/").body().text().replace("Ambleholt Transmission Works L5-74 ", "");
    }

    @Test
    void aJobOlderThanUnitFilesGetsItsFileAfterTheStart() {
        Entry old = new Entry.JobOpened("V-0001", "ambleholt-l5-74", "A", "an owner", List.of(), Map.of(), "", "");
        JobLog log = bench.running().log();
        log.append(
                        List.of(new Draft("old-job", "old-job-opened", Instant.now(), "the bench", old)),
                        Heads.ofLog(log.head()))
                .orElseThrow();
        assertThat(bench.page("/").body().text()).contains("V-0001", "0 steps done");
        bench.restart();
        bench.running().settled().join();
        assertThat(bench.running().log().find("pin-old-job")).isPresent();
        assertThat(bench.page("/job/old-job/card").text()).contains("Strip and inspect");
    }

    @Test
    void noJobIsUnfoldedWhereItsSummaryHolds() {
        Path folder = DemoBench.copy();
        try (ShopStore store =
                ShopStore.in(folder, OpenLog.Opening.WRITE, Optional.empty()).orElseThrow()) {
            Desk worked;
            try (SummaryFile file = SummaryFile.in(folder, "one")) {
                worked = desk(store, store.log(), file);
                assertThat(worked.lines()).hasSize(2);
            }
            try (SummaryFile file = SummaryFile.in(folder, "one")) {
                Desk next = desk(store, readingNoJob(store.log()), file);
                assertThat(next.lines()).isEqualTo(worked.lines());
                assertThat(next.shop()).isEqualTo(worked.shop());
                assertThatThrownBy(() -> next.jobs("ambleholt-l5-74", 1)).hasMessageContaining("a job was read");
            }
            try (SummaryFile file = SummaryFile.in(folder, "another program")) {
                Desk other = desk(store, readingNoJob(store.log()), file);
                assertThatThrownBy(other::lines).hasMessageContaining("a job was read");
            }
        }
    }

    private static Desk desk(ShopStore store, JobLog log, SummaryFile file) {
        UnitShelf none = new UnitShelf(UnitFolder.in(Path.of("no such folder")), store.documents());
        return new Desk(log, store.pictures(), none, Clock.systemUTC(), Optional.of(file));
    }

    /** The same log, which fails where a job's entries are asked for. */
    private static JobLog readingNoJob(JobLog log) {
        return (JobLog) Proxy.newProxyInstance(
                JobLog.class.getClassLoader(), new Class<?>[] {JobLog.class}, (proxy, method, args) -> {
                    if (method.getName().equals("read") && !args[0].equals(JobLog.SHOP)) {
                        throw new IllegalStateException("a job was read");
                    }
                    try {
                        return method.invoke(log, args);
                    } catch (InvocationTargetException failed) {
                        throw Objects.requireNonNull(failed.getCause());
                    }
                });
    }

    @Test
    void whatIsNextAppearsByItself() {
        try (Browser browser = new Browser()) {
            browser.tablet();
            browser.open(bench.url("/"));
            browser.wait(
                    "the next step",
                    () -> browser.one("a[href='/job/job-v-0093/build']")
                                    .getText()
                                    .contains("Next: ")
                            ? true
                            : null);
            assertThat(browser.one("a[href='/job/job-v-0093/build']").getText()).contains(" of ");
            browser.picture("tablet-first-page");
            browser.changes(() -> browser.one("a[href='/job/job-v-0093/build']").click());
            assertThat(browser.path()).isEqualTo("/job/job-v-0093/build");
        }
    }
}
