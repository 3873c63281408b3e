package shimwright.bench.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import shimwright.rebuild.job.Draft;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Fold;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.LogEntry;
import shimwright.rebuild.job.Shop;
import shimwright.rebuild.plan.Plan;
import shimwright.rebuild.plan.search.SearchBudget;
import shimwright.rebuild.unit.file.UnitFiles;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Unit;
import shimwright.rebuild.workbench.PinnedUnit;
import shimwright.rebuild.workbench.Workbench;

/** A plan that is not proven is looked at longer when asked, watched and stopped. */
class PlanCacheTest {
    private static final Instant NOW = Instant.parse("2031-03-03T08:00:00Z");
    private static final SearchBudget POOR = new SearchBudget(1, 0);
    private static final Unit UNIT = UnitFiles.read("example.yaml", UnitFiles.example())
            .outcome()
            .orElseThrow()
            .resolve("A");

    private static PlanCache plans(SearchBudget longer) {
        return new PlanCache(Clock.fixed(NOW, ZoneOffset.UTC), POOR, longer, Runnable::run);
    }

    private static Job job(Entry.OfJob... more) {
        Entry.JobOpened opened =
                new Entry.JobOpened("V-1", UNIT.type().id(), "A", "the shop", List.of(), Map.of(), "", "");
        Entry.LiesHere here = new Entry.LiesHere(
                UNIT.type().items().stream().filter(Item::renew).map(Item::id).toList(), "the kit", "counted");
        List<Entry.OfJob> all = new ArrayList<>(List.of(opened, here));
        all.addAll(List.of(more));
        List<LogEntry> kept = IntStream.rangeClosed(1, all.size())
                .mapToObj(number -> kept(number, all.get(number - 1)))
                .toList();
        return Fold.job(kept).orElseThrow();
    }

    private static Workbench bench(Job job) {
        return new Workbench(job, new PinnedUnit("", UNIT.type()), new Shop(Map.of(), Map.of()), NOW, ZoneOffset.UTC);
    }

    private static LogEntry kept(int number, Entry.OfJob entry) {
        return new LogEntry(
                number,
                number,
                new Draft("job-v-1", "e" + number, NOW, "the bench", entry),
                "%064x".formatted(0),
                "%064x".formatted(number));
    }

    private static void untilOver(PlanCache plans) {
        for (int tenths = 0; tenths < 600 && plans.looking("job-v-1").isPresent(); tenths++) {
            CompletableFuture.runAsync(() -> {}, CompletableFuture.delayedExecutor(100, TimeUnit.MILLISECONDS))
                    .join();
        }
        assertThat(plans.looking("job-v-1")).isEmpty();
    }

    @Test
    void aLongerLookFindsTheProvenBest() {
        PlanCache plans = plans(SearchBudget.proof());
        Plan poor = plans.of(bench(job())).plan().orElseThrow();
        assertThat(poor.proven()).isFalse();
        plans.look("job-v-1");
        untilOver(plans);
        Plan better = plans.of(bench(job())).plan().orElseThrow();
        assertThat(better.proven()).isTrue();
        assertThat(better.value()).isLessThanOrEqualTo(poor.value());
    }

    @Test
    void aLookThatIsStoppedLeavesAPossiblePlanAndSaysHowItGoes() {
        PlanCache plans = plans(new SearchBudget(1024, Integer.MAX_VALUE));
        Plan poor = plans.of(bench(job())).plan().orElseThrow();
        plans.look("job-v-1");
        plans.looking("job-v-1").ifPresent(one -> assertThat(one.since()).isEqualTo(NOW));
        plans.stop("job-v-1");
        untilOver(plans);
        Plan after = plans.of(bench(job())).plan().orElseThrow();
        assertThat(after.value()).isLessThanOrEqualTo(poor.value());
        assertThat(after.ahead()).hasSameSizeAs(poor.ahead());
    }

    @Test
    void nobodyWaitsForASearchAndTheBetterPlanStandsOnceItIsFound() {
        List<Runnable> behind = new ArrayList<>();
        PlanCache plans =
                new PlanCache(Clock.fixed(NOW, ZoneOffset.UTC), SearchBudget.page(), SearchBudget.proof(), behind::add);
        PlanCache.Shown first = plans.of(bench(job()));
        assertThat(first.improving()).isFalse();
        assertThat(behind).isEmpty();
        Plan best = first.plan().orElseThrow();

        // out of order: of those that wait for nothing the last of the plan
        String surprise = best.ahead().stream()
                .filter(step -> step.after().isEmpty())
                .reduce((one, other) -> other)
                .orElseThrow()
                .id();
        Job on = job(new Entry.StepDone(surprise, ""));
        PlanCache.Shown onward = plans.of(bench(on));
        assertThat(onward.improving()).isTrue();
        assertThat(ids(onward.plan().orElseThrow()))
                .isEqualTo(ids(best).stream().filter(id -> !id.equals(surprise)).toList());
        behind.remove(0).run();
        PlanCache.Shown better = plans.of(bench(on));
        assertThat(better.improving()).isFalse();
        assertThat(better.plan().orElseThrow().value())
                .isLessThan(onward.plan().orElseThrow().value());
    }

    @Test
    void aPlanMadeBetterForABenchThatWentOnDoesNotCount() {
        List<Runnable> behind = new ArrayList<>();
        PlanCache plans =
                new PlanCache(Clock.fixed(NOW, ZoneOffset.UTC), SearchBudget.page(), SearchBudget.proof(), behind::add);
        Plan before = plans.of(bench(job())).plan().orElseThrow();
        Job on = job(new Entry.StepDone(before.ahead().get(0).id(), ""));
        PlanCache.Shown onward = plans.of(bench(on));
        List<String> two = before.ahead().stream().limit(2).map(Step::id).toList();
        Job further = job(new Entry.StepDone(two.get(0), ""), new Entry.StepDone(two.get(1), ""));
        PlanCache.Shown later = plans.of(bench(further));
        behind.remove(0).run();
        assertThat(plans.of(bench(further))).isEqualTo(later);
        behind.remove(0).run();
        assertThat(plans.of(bench(further)).improving()).isFalse();
        assertThat(onward.improving()).isTrue();
    }

    private static List<String> ids(Plan plan) {
        return plan.ahead().stream().map(Step::id).toList();
    }

    @Test
    void whatIsFoundForABenchThatWentOnDoesNotCount() {
        PlanCache plans = plans(SearchBudget.proof());
        Step first = plans.of(bench(job())).plan().orElseThrow().next().orElseThrow();
        plans.look("job-v-1");
        Job on = job(new Entry.StepDone(first.id(), ""));
        plans.of(bench(on));
        Plan now = plans.of(bench(on)).plan().orElseThrow();
        untilOver(plans);
        assertThat(plans.of(bench(on)).plan().orElseThrow()).isEqualTo(now);
        assertThat(now.ahead()).extracting(Step::id).doesNotContain(first.id());
    }
}
