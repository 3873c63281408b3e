package shimwright.rebuild.supply;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.demo.DemoUnit;
import shimwright.rebuild.demo.DemoWorkbench;
import shimwright.rebuild.demo.EntryStream;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.plan.BuildState;
import shimwright.rebuild.plan.Order;
import shimwright.rebuild.plan.Planner;
import shimwright.rebuild.rules.BuildStateFromLog;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Step;

/** A step that fits what must be new waits until that is ordered and came, or lies here; nothing else is held up. */
class HeldUpTest {
    private static final String SEAL = "input_seal";
    private static final LocalDate DUE =
            EntryStream.BEGIN.atOffset(ZoneOffset.UTC).toLocalDate().plusDays(4);

    private static Map<String, List<Need>> heldUp(DemoWorkbench bench) {
        return bench.lying().heldUp();
    }

    private static List<String> against(DemoWorkbench bench, String step) {
        return bench.against(new Entry.StepDone(step, "")).stream()
                .map(Refusal::sentence)
                .toList();
    }

    private static String fits(String item) {
        return DemoUnit.A.type().steps().stream()
                .filter(step -> HeldUp.fits(step, List.of(item)))
                .map(Step::id)
                .findFirst()
                .orElseThrow();
    }

    /** All that is always renewed lies here but one. */
    private static DemoWorkbench without(String item) {
        DemoWorkbench bench = DemoWorkbench.empty();
        bench.lay(new Entry.LiesHere(
                DemoUnit.A.type().items().stream()
                        .filter(Item::renew)
                        .map(Item::id)
                        .filter(id -> !id.equals(item))
                        .toList(),
                "the kit, one seal short",
                "counted"));
        return bench;
    }

    @Test
    void aStepWaitsForTheOrderAndForWhatWasOrdered() {
        DemoWorkbench bench = without(SEAL);
        String step = fits(SEAL);
        Order.of(DemoUnit.A, Map.of()).leadingTo(step).forEach(bench::layDone);
        assertThat(heldUp(bench)).containsKey(step);
        assertThat(against(bench, step))
                .anyMatch(said -> said.contains("must be new (always renewed) and is neither ordered nor here. "
                        + "Order it, or look at it and say that it lies here"));
        String sent = bench.keep(new Entry.Sent("seal", List.of(SEAL), "the agent", DUE, 0, ""))
                .draft()
                .id();
        assertThat(against(bench, step))
                .anyMatch(said -> said.contains("is awaited"))
                .noneMatch(said -> said.contains("neither ordered"));
        bench.keep(new Entry.CameBack(sent, false, "another size"));
        bench.keep(new Entry.SentBack(sent, "another size"));
        assertThat(heldUp(bench)).containsKey(step);
        bench.keep(new Entry.LiesHere(List.of(SEAL), "from the shelf", "25 x 40 x 7"));
        assertThat(heldUp(bench)).isEmpty();
        assertThat(against(bench, step)).noneMatch(said -> said.contains("ordered"));
    }

    @Test
    void thePlanDoesOtherThingsFirst() {
        DemoWorkbench here = without("");
        DemoWorkbench missing = without(SEAL);
        String step = fits(SEAL);
        Instant now = EntryStream.BEGIN.plusSeconds(3600);
        BuildState present = BuildStateFromLog.present(missing.job(), DemoUnit.A, now, ZoneOffset.UTC);
        assertThat(present.arrives()).containsEntry(step, 86_400.0);
        assertThat(BuildStateFromLog.present(here.job(), DemoUnit.A, now, ZoneOffset.UTC)
                        .arrives())
                .isEmpty();
        assertThat(Planner.problem(DemoUnit.A, Map.of(), present).start().waits())
                .containsKey(step);
    }

    @Test
    void whatIsReusedHoldsNothingUp() {
        DemoWorkbench bench = without("");
        Entry.Judged worn = new Entry.Judged("C10", List.of(), "fork 5", Entry.Decision.REPLACE, "pads gone", "");
        bench.keep(worn);
        assertThat(heldUp(bench).values().stream().flatMap(List::stream).flatMap(need -> need.items().stream()))
                .as("the limit speaks of three forks, the verdict of one")
                .containsOnly("fork_5");
        bench.keep(new Entry.Judged("C10", List.of(), "fork 5", Entry.Decision.REUSE, "read again", ""));
        assertThat(heldUp(bench)).isEmpty();
    }

    @Test
    void ofSeveralThatCameOffTogetherOnlyWhatIsNamedHoldsUp() {
        String cover = DemoUnit.A.type().items().stream()
                .filter(item -> !item.renew() && item.shape() == Item.Shape.BODY)
                .map(Item::id)
                .findFirst()
                .orElseThrow();
        DemoWorkbench bench = without("");
        bench.lay(new Entry.TakenOff(
                "cover with its gasket",
                List.of(cover, "end_nut"),
                "",
                List.of(),
                List.of(),
                "",
                "the gasket",
                "",
                "",
                Map.of(),
                ""));
        assertThat(heldUp(bench)).as("nobody knows which").isEmpty();
        assertThat(Needs.of(DemoUnit.A, bench.job()))
                .as("asked on the orders page all the same")
                .anyMatch(need -> need.items().contains(cover));
        bench.lay(new Entry.TakenOff(
                "cover and more",
                List.of(cover, "end_nut"),
                "",
                List.of(),
                List.of(),
                "",
                DemoUnit.A.item(cover).name(),
                "",
                "",
                Map.of(),
                ""));
        assertThat(heldUp(bench).values().stream().flatMap(List::stream).flatMap(need -> need.items().stream()))
                .containsOnly(cover);
    }

    @Test
    void whatWasFittedOnceIsHere() {
        DemoWorkbench bench = DemoWorkbench.empty();
        String step = fits(SEAL);
        bench.layDone(step);
        assertThat(Needs.of(DemoUnit.A, bench.job()))
                .noneMatch(need -> need.items().contains(SEAL));
    }
}
