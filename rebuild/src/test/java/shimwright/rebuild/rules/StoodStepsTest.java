package shimwright.rebuild.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.demo.DemoWorkbench;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.LogEntry;
import shimwright.rebuild.record.History;
import shimwright.rebuild.supply.Needs;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Step.Phase;

/** What a reading waits for is said in one go where it stands; what is read, held or timed is done by itself. */
class StoodStepsTest {
    private static Entry.StepsStood stood(List<Step> steps) {
        return new Entry.StepsStood(
                steps.stream()
                        .map(step -> new Entry.StepDone(step.id(), "", step.todo(), List.of(), List.of()))
                        .toList(),
                "");
    }

    private static List<String> against(DemoWorkbench bench, Entry.OfJob entry) {
        return Rules.check(bench.lying(), entry).stream().map(Refusal::sentence).toList();
    }

    @Test
    void whatComesBeforeAReadingIsSaidInOneGoAndStruckInOne() {
        DemoWorkbench bench = DemoWorkbench.open();
        StoodSteps before = StoodSteps.before(bench.lying(), "c", Phase.TRIAL);
        assertThat(before.steps()).isNotEmpty();
        assertThat(before.steps().size() + before.byItself().size()).isLessThanOrEqualTo(before.waiting());
        // none of them is held, reads a clearance that is not read, or opens a window that stays open
        assertThat(before.steps())
                .allMatch(step -> HoldPoints.open(bench.lying(), step).isEmpty()
                        && step.clearance().isBlank());
        Entry.StepsStood said = stood(before.steps());
        assertThat(against(bench, said)).isEmpty();
        LogEntry kept = bench.keep(said);
        List<String> ids = before.steps().stream().map(Step::id).toList();
        assertThat(bench.lying().job().stepsDone()).containsAll(ids);
        assertThat(StoodSteps.before(bench.lying(), "c", Phase.TRIAL).steps())
                .doesNotContainAnyElementsOf(before.steps());
        assertThat(History.of(bench.lying().job(), bench.lying().unit()))
                .anyMatch(line -> line.words().startsWith("Said to be done already: " + ids.get(0)));
        assertThat(against(bench, said))
                .contains("step " + ids.get(0) + ": this step is already done.")
                .hasSameSizeAs(ids);
        bench.keep(new Entry.EntryStruck(kept.draft().id(), "the wrong box"));
        assertThat(bench.lying().job().stepsDone()).doesNotContainAnyElementsOf(ids);
    }

    @Test
    void whatIsHeldIsRefusedAndNothingOutOfOrder() {
        DemoWorkbench bench = DemoWorkbench.open();
        assertThat(against(bench, new Entry.StepsStood(List.of(), "")))
                .containsExactly("steps: nothing chosen. Say which are done.");
        assertThat(against(bench, stood(List.of(bench.lying().unit().step("K03")))))
                .anyMatch(s -> s.startsWith("step K03: it waits for K02"))
                .anyMatch(s -> s.startsWith("hold point H08: not read yet"));
        Step first = bench.lying().unit().step("P01");
        Step next = bench.lying().unit().step("P02");
        assertThat(against(bench, stood(List.of(first, next)))).allMatch(s -> s.startsWith("hold point H01"));
        assertThat(against(bench, stood(List.of(next, first))))
                .anyMatch(s -> s.startsWith("step P02: it waits for P01"));
    }

    /** A seal that is always renewed: the old one does for a reading, is still to be ordered, and does not go back. */
    @Test
    void whatStandsWithWhatCameOutIsStillNeededAndDoesNotGoBack() {
        DemoWorkbench bench = DemoWorkbench.empty();
        Step fits = bench.lying().unit().type().steps().stream()
                .filter(step -> step.installs().stream()
                        .anyMatch(item -> bench.lying().unit().item(item).renew()))
                .findFirst()
                .orElseThrow();
        String seal = fits.installs().stream()
                .filter(item -> bench.lying().unit().item(item).renew())
                .findFirst()
                .orElseThrow();
        bench.lay(stood(List.of(fits)));
        assertThat(bench.lying().job().stepsStood()).containsExactly(fits.id());
        assertThat(Needs.of(bench.lying().unit(), bench.lying().job()))
                .anyMatch(need -> need.items().contains(seal));
        assertThat(against(bench, new Entry.HandedBack("a year", "", "")))
                .anyMatch(s -> s.startsWith("step " + fits.id() + ": it was said to be done before"));
        bench.lay(new Entry.StepUndone(fits.id(), "the new one is here"));
        assertThat(against(bench, new Entry.HandedBack("a year", "", ""))).noneMatch(s -> s.contains("done before"));
    }

    @Test
    void whatStandsOnThemIsUndoneFirst() {
        DemoWorkbench bench = DemoWorkbench.open();
        Step first = bench.lying().unit().step("P01");
        LogEntry kept = bench.keep(stood(List.of(first)));
        bench.layDone("P02");
        assertThat(against(bench, new Entry.EntryStruck(kept.draft().id(), "dirt")))
                .containsExactly("step P02: it stands done on what this says. Undo the step first, then strike it.");
    }
}
