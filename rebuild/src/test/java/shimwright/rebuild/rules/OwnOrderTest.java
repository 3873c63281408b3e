package shimwright.rebuild.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.demo.DemoUnit;
import shimwright.rebuild.demo.DemoWorkbench;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.plan.Order;
import shimwright.rebuild.plan.Plan;
import shimwright.rebuild.plan.Planner;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Unit;

/** A person who does not follow the plan: out of order, left out, undone, added. The bench is right, the plan follows. */
class OwnOrderTest {
    private static final Unit UNIT = DemoUnit.A;

    private static List<String> against(DemoWorkbench bench, Entry.OfJob entry) {
        return bench.against(entry).stream().map(Refusal::sentence).toList();
    }

    private static List<String> ahead(DemoWorkbench bench) {
        Job job = bench.job();
        return Planner.lay(job.unit(UNIT), job.sides(), job.stepsDone()).orElseThrow().ahead().stream()
                .map(Step::id)
                .toList();
    }

    @Test
    void aStepDoneOutOfOrderIsTakenInWithItsReasonAndStandsOnTheRecord() {
        DemoWorkbench bench = DemoWorkbench.open();
        bench.layDone("P02");
        assertThat(against(bench, new Entry.StepJumped("K01", " ")))
                .containsExactly("reason: nothing typed. Say how it came about; it stands on the record.");
        bench.keep(new Entry.StepJumped("K01", "the oven was hot"));
        List<String> ahead = ahead(bench);
        assertThat(ahead).doesNotContain("K01").contains("P04");
        // what stands on K01 waits for what K01 should have waited for
        assertThat(ahead.indexOf("K02")).isGreaterThan(ahead.indexOf("P04"));
        assertThat(shimwright.rebuild.record.OverruledAdvice.of(bench.job()))
                .containsExactly("Step K01 done before a step it waits for, by the workshop: the oven was hot");
        assertThat(against(bench, new Entry.StepJumped("P01", "x")))
                .containsExactly("step P01: everything it waits for is done. Say that it is done.");
    }

    @Test
    void aStepLeftOutIsNotPlannedAndComesBackWhenTakenUp() {
        DemoWorkbench bench = DemoWorkbench.open();
        bench.keep(new Entry.StepLeftOut("S01", "the forks are new"));
        assertThat(ahead(bench)).doesNotContain("S01");
        assertThat(against(bench, new Entry.StepDone("S01", "")))
                .containsExactly("step S01: this unit has no such step with the choices taken, or it is left out. "
                        + "Go back to the build page.");
        bench.keep(new Entry.StepTakenUp("S01", "read after all"));
        assertThat(ahead(bench)).contains("S01");
        assertThat(against(bench, new Entry.StepTakenUp("S01", ""))).hasSize(1);
    }

    @Test
    void aStepOfOnesOwnStandsWhereItWasPut() {
        DemoWorkbench bench = DemoWorkbench.open();
        Entry.StepAdded chase = new Entry.StepAdded(
                "X1", "Chase the drain thread.", "BENCH", 300, List.of("P01"), List.of("P02"), "burr");
        bench.keep(chase);
        List<String> ahead = ahead(bench);
        assertThat(ahead.indexOf("X1")).isBetween(ahead.indexOf("P01") + 1, ahead.indexOf("P02") - 1);
        assertThat(against(bench, chase))
                .containsExactly("step X1: this unit has a step of that name. Give it another.");
        assertThat(against(
                        bench,
                        new Entry.StepAdded(
                                "X2", "Round and round.", "nowhere", 1, List.of("P02"), List.of("none"), "")))
                .hasSize(3);
        assertThat(against(
                        bench,
                        new Entry.StepAdded(
                                "X2", "Round and round.", "BENCH", 1, List.of("P02"), List.of("P01"), "so")))
                .singleElement()
                .asString()
                .contains("these steps wait for each other");
    }

    /** K01 waits for P04: with K01 done the circle sleeps, undone it would wake. */
    @Test
    void aStepOfOnesOwnThatWouldCloseACircleOnceAnotherIsUndoneIsRefused() {
        DemoWorkbench bench = DemoWorkbench.open();
        bench.layDone("P02");
        bench.keep(new Entry.StepJumped("K01", "the oven was hot"));
        Entry.StepAdded look = new Entry.StepAdded("X1", "Look.", "BENCH", 60, List.of("K01"), List.of("P04"), "so");
        assertThat(against(bench, look)).singleElement().asString().contains("these steps wait for each other");
    }

    @Property(tries = 6)
    void noHistoryMakesAPlanThatContradictsTheBench(@ForAll long seed) {
        Random random = new Random(seed);
        DemoWorkbench bench = DemoWorkbench.open();
        List<String> ids = new ArrayList<>(Order.of(UNIT, Map.of()).steps().keySet());
        for (int i = 0; i < 40; i++) {
            String step = ids.get(random.nextInt(ids.size()));
            Entry.OfJob entry = any(random, step, "X" + i, ids.get(random.nextInt(ids.size())));
            boolean held = UNIT.findStep(step).map(s -> !s.hold().isBlank()).orElse(false);
            if (entry instanceof Entry.StepJumped && held) {
                bench.lay(new Entry.HoldOverruled(step, UNIT.step(step).hold(), "for this test"));
            }
            if (bench.against(entry).isEmpty()) {
                bench.lay(entry);
                if (entry instanceof Entry.StepAdded added) {
                    ids.add(added.step());
                }
            }
        }
        agrees(bench.job());
    }

    private static Entry.OfJob any(Random random, String step, String own, String other) {
        return switch (random.nextInt(8)) {
            case 0, 1 -> new Entry.StepDone(step, "");
            case 2, 3, 4 -> new Entry.StepJumped(step, "so it came");
            case 5 -> random.nextBoolean() ? new Entry.StepLeftOut(step, "so") : new Entry.StepTakenUp(step, "so");
            case 6 -> new Entry.StepUndone(step, "again");
            default -> new Entry.StepAdded(own, "Look.", "BENCH", 60, List.of(step), List.of(other), "so");
        };
    }

    private static void agrees(Job job) {
        Unit unit = job.unit(UNIT);
        Plan plan = Planner.lay(unit, job.sides(), job.stepsDone()).orElseThrow();
        Order order = Order.of(unit, job.sides());
        Set<String> wanted = new HashSet<>(order.steps().keySet());
        wanted.removeAll(job.stepsDone());
        assertThat(job.leftOut().keySet()).noneMatch(wanted::contains);
        assertThat(plan.ahead()).extracting(Step::id).containsExactlyInAnyOrderElementsOf(wanted);
        Set<String> gone = new HashSet<>(job.stepsDone());
        for (Step step : plan.ahead()) {
            assertThat(order.waitsFor(step.id(), gone)).as(step.id()).isEmpty();
            gone.add(step.id());
        }
    }
}
