package shimwright.rebuild.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.demo.DemoUnit;
import shimwright.rebuild.demo.DemoWorkbench;
import shimwright.rebuild.demo.EntryStream;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.LogEntry;
import shimwright.rebuild.plan.BuildState;
import shimwright.rebuild.plan.Order;
import shimwright.rebuild.plan.Plan;
import shimwright.rebuild.plan.Planner;
import shimwright.rebuild.plan.Weights;
import shimwright.rebuild.plan.search.SearchBudget;
import shimwright.rebuild.plan.search.SearchObserver;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.workbench.Workbench;

/** What was ordered or sent out: its steps wait, the plan does other things first, and what comes back is checked. */
class OrderRulesTest {
    private static final LocalDate OPENED =
            EntryStream.BEGIN.atOffset(ZoneOffset.UTC).toLocalDate();
    private static final Entry.Sent GEAR =
            new Entry.Sent("speed driven gear", List.of("speed_gear"), "the parts counter", OPENED.plusDays(5), 2, "");

    private static List<String> against(DemoWorkbench bench, Entry.OfJob entry) {
        return bench.against(entry).stream().map(Refusal::sentence).toList();
    }

    private static BuildState present(DemoWorkbench bench, Instant now) {
        return BuildStateFromLog.present(bench.job(), bench.job().unit(DemoUnit.A), now, ZoneOffset.UTC);
    }

    @Test
    void allThatIsWrongIsSaidAtOnce() {
        DemoWorkbench bench = DemoWorkbench.open();
        assertThat(against(bench, new Entry.Sent(" ", List.of("no_such"), "", OPENED.minusDays(9), -1, "")))
                .containsExactly(
                        "what: nothing typed. Say what was ordered or sent out.",
                        "days late: -1 is out of range. Give a whole number from 0 to 365.",
                        "due: " + OPENED.minusDays(9) + " is before the unit came in. Look at the date.",
                        "item no_such: this unit has no such item. Choose from the list, or leave the field empty.");
        assertThat(against(bench, new Entry.CameBack("none", true, ""))).hasSize(2);
    }

    @Test
    void aStepWaitsForWhatItFits() {
        DemoWorkbench bench = DemoWorkbench.open();
        Order.of(DemoUnit.A, Map.of()).leadingTo("D09A").forEach(bench::layDone);
        assertThat(against(bench, new Entry.StepDone("D09A", ""))).isEmpty();
        LogEntry sent = bench.keep(GEAR);
        assertThat(against(bench, new Entry.StepDone("D09A", "")))
                .containsExactly("step D09A: speed driven gear is awaited, due on " + OPENED.plusDays(5)
                        + ". Check it and say so under Orders when it is here.");
        assertThat(against(bench, GEAR)).singleElement().asString().contains("is awaited already");
        bench.keep(new Entry.CameBack(sent.draft().id(), false, "teeth 21"));
        assertThat(bench.job().awaited()).hasSize(1);
        assertThat(against(bench, new Entry.StepDone("D09A", "")))
                .singleElement()
                .asString()
                .contains("speed driven gear");
        bench.keep(new Entry.CameBack(sent.draft().id(), true, "teeth 19, bore 10.02"));
        assertThat(bench.job().awaited()).isEmpty();
        assertThat(against(bench, new Entry.StepDone("D09A", ""))).isEmpty();
        bench.keep(new Entry.StepDone("D09A", ""));
        assertThat(against(bench, GEAR)).singleElement().asString().contains("is in the unit");
    }

    @Test
    void aCureThatRunsStandsAgainstItsStepUntilThatIsOverruledWithAReason() {
        DemoWorkbench bench = DemoWorkbench.open();
        Order.of(DemoUnit.A, Map.of()).leadingTo("X05").forEach(bench::layDone);
        Workbench lying = bench.lying();
        Entry.OfJob done = new Entry.StepDone("X05", "");
        List<ClockRules.Broken> broken = ClockRules.broken(lying, "X05");
        assertThat(broken).isNotEmpty().allMatch(ClockRules.Broken::early);
        assertThat(ClockRules.against(lying, "X05"))
                .hasSameSizeAs(broken)
                .allMatch(refusal -> refusal.hint().startsWith("Wait, or say why"));
        assertThat(Rules.check(lying, done)).containsAll(ClockRules.against(lying, "X05"));
        for (ClockRules.Broken one : broken) {
            lying = lying.after(new Entry.TimeOverruled(
                    "X05",
                    one.what(),
                    one.timer().name(),
                    Map.of("left", one.seconds()),
                    "cured by lamp, tried by nail"));
        }
        assertThat(ClockRules.against(lying, "X05")).isEmpty();
    }

    /** A clock started by hand holds its step as a cure does: a wait until it has ended, a limit from then on; struck, it is gone. */
    @Test
    void aClockStartedByHandHoldsItsStepUntilItIsStruck() {
        DemoWorkbench bench = DemoWorkbench.open();
        Entry.OfJob wait = new Entry.ClockStarted("D01", "hub soaks", 1_200, false);
        assertThat(Rules.check(bench.lying(), wait)).isEmpty();
        Workbench runs = bench.lying().after(wait);
        assertThat(runs.timers())
                .anyMatch(timer -> timer.name().equals("hub soaks")
                        && timer.closes().equals("D01")
                        && Duration.between(timer.since(), timer.until()).equals(Duration.ofMinutes(20)));
        assertThat(ClockRules.broken(runs, "D01"))
                .singleElement()
                .matches(ClockRules.Broken::early)
                .matches(broken -> broken.seconds() > 1_100);
        assertThat(Rules.check(runs, new Entry.StepDone("D01", "")))
                .anyMatch(r -> r.fact().contains("hub soaks"));
        assertThat(Rules.check(runs, wait)).anyMatch(r -> r.fact().equals("such a clock runs already"));
        assertThat(Rules.check(bench.lying(), new Entry.ClockStarted("D01", "x", 0, true)))
                .anyMatch(r -> r.fact().equals("it runs for no time"));
        Workbench limit = bench.lying().after(new Entry.ClockStarted("D01", "sealant skins", 600, true));
        assertThat(ClockRules.broken(limit, "D01")).isEmpty();
        // done, undone: the clock was for the first time
        Workbench again = limit.after(new Entry.StepDone("D01", "")).after(new Entry.StepUndone("D01", "crooked"));
        assertThat(again.timers()).noneMatch(timer -> timer.name().equals("sealant skins"));
    }

    @Test
    void thePlanDoesEverythingElseFirst() {
        DemoWorkbench bench = DemoWorkbench.open();
        bench.keep(GEAR);
        // by the usual weight it does not pay to turn the case for it; where an evening sooner is worth an evening it
        // does
        BuildState present =
                present(bench, EntryStream.BEGIN.plus(Duration.ofHours(1))).weighing(new Weights(3 * 3600));
        assertThat(present.arrives().get("D09A")).isBetween(4.0 * 86_400, 6.0 * 86_400);
        Plan plan = Planner.lay(DemoUnit.A, Map.of(), present, SearchBudget.page(), SearchObserver.nobody(), List.of())
                .orElseThrow();
        List<String> ahead = plan.ahead().stream().map(Step::id).toList();
        Order order = Order.of(DemoUnit.A, Map.of());
        assertThat(ahead.subList(ahead.indexOf("D09A") + 1, ahead.size()))
                .allMatch(later -> order.leadingTo(later).contains("D09A"));
        assertThat(plan.cost().waiting()).isGreaterThan(3.0 * 86_400);
        // overdue: it may come tomorrow
        assertThat(present(bench, EntryStream.BEGIN.plus(Duration.ofDays(30))).arrives())
                .containsEntry("D09A", 86_400.0);
    }

    @Test
    void theLogKnowsSinceWhen() {
        DemoWorkbench bench = DemoWorkbench.open();
        bench.layDone("P01");
        Instant done = Objects.requireNonNull(bench.job().doneAt().get("P01"));
        assertThat(present(bench, done.plusSeconds(90)).ago()).containsEntry("P01", 90.0);
        assertThat(present(bench, done.minusSeconds(5)).ago()).containsEntry("P01", 0.0);
    }
}
