package shimwright.rebuild.plan.backout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import shimwright.rebuild.demo.DemoUnit;
import shimwright.rebuild.plan.Order;
import shimwright.rebuild.plan.Planner;
import shimwright.rebuild.plan.backout.Target.OfClearance;
import shimwright.rebuild.plan.backout.Target.OfItem;
import shimwright.rebuild.plan.backout.Target.OfStep;
import shimwright.rebuild.plan.backout.Target.Want;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Unit;

class BackOutTest {
    private static final Unit A = DemoUnit.A;
    private static final List<Want> WANTS = List.of(Want.REACH, Want.OUT, Want.RENEW);
    private static final Map<String, String> LATE = Map.of("O1", "late");

    /** Steps up to and with one, in the order of the plan. */
    private static List<String> upTo(Map<String, String> taken, String last) {
        List<String> all = Planner.lay(A, taken, Set.of()).orElseThrow().ahead().stream()
                .map(Step::id)
                .toList();
        return all.subList(0, all.indexOf(last) + 1);
    }

    /** Only what leads to a step, and the step. */
    private static List<String> leadingTo(Map<String, String> taken, String last) {
        Set<String> leading = new LinkedHashSet<>(Order.of(A, taken).leadingTo(last));
        leading.add(last);
        return Planner.lay(A, taken, Set.of()).orElseThrow().ahead().stream()
                .map(Step::id)
                .filter(leading::contains)
                .toList();
    }

    private static BackOut back(Map<String, String> taken, Collection<String> done, Target target) {
        return BackOut.to(A, taken, done, target).orElseThrow();
    }

    private static List<String> ids(List<Step> steps) {
        return steps.stream().map(Step::id).toList();
    }

    @Test
    void anotherDepthShimAfterThePatternCostsWhatTheDemoSourceSays() {
        // demo source, expected PL-4: redo minutes if sP must change after D06: early 192, late 459
        BackOut early = back(Map.of(), leadingTo(Map.of(), "D06"), new OfClearance("a"));
        assertThat(early.redoMinutes()).isCloseTo(192, within(1e-9));
        assertThat(ids(early.undo()))
                .containsExactlyInAnyOrder("F01", "F02", "F05", "F06", "F03", "F04", "D01", "D03", "D05", "D06");
        assertThat(early.losses()).isEmpty();
        assertThat(early.reopened()).extracting(Clearance::id).contains("a", "e");
        assertThat(early.proven()).isTrue();
        BackOut late = back(LATE, leadingTo(LATE, "D06"), new OfClearance("a"));
        assertThat(late.redoMinutes()).isCloseTo(459, within(1e-9));
        // PL-4: late also kills stack nut, NU205 inner ring, end nut and sealants
        assertThat(late.losses())
                .extracting(Loss::what)
                .contains(
                        "stack nut",
                        "inner ring of the pinion rear bearing (split off)",
                        "end nut",
                        "sealant on G",
                        "silicone of the end cap");
        assertThat(late.losses())
                .filteredOn(loss -> loss.what().equals("stack nut"))
                .singleElement()
                .satisfies(nut -> {
                    assertThat(nut.item()).isEqualTo("stack_nut");
                    assertThat(nut.part()).isEqualTo("74-3031");
                    assertThat(nut.price()).isEqualTo(9);
                });
        assertThat(late.again())
                .filteredOn(c -> c.cure() > 0)
                .extracting(c -> c.id())
                .contains("RTV", "AN");
    }

    @Test
    void theIdlerIsReachedThroughTheSelectorWindowUntilTheBoxIsOn() {
        List<String> open = upTo(Map.of(), "R06");
        BackOut reach = back(Map.of(), open, new OfItem("idler", Want.REACH));
        assertThat(reach.free()).isTrue();
        assertThat(reach.through()).isEqualTo("selector window");
        BackOut out = back(Map.of(), open, new OfItem("idler", Want.OUT));
        assertThat(ids(out.undo())).contains("R05", "R04", "R03", "R02", "S08");
        assertThat(out.losses()).extracting(Loss::what).contains("sealant on G");
        // with the selector box on, taking the box off is cheaper than the rear cover
        List<String> shut = upTo(Map.of(), "X01");
        BackOut again = back(Map.of(), shut, new OfItem("idler", Want.REACH));
        assertThat(again.through()).isEqualTo("selector window");
        assertThat(ids(again.undo())).contains("X01").doesNotContain("R02", "S08");
    }

    @Test
    void aConeOnItsShaftIsOutWithTheShaftAndAloneOnlyOffIt() {
        List<String> done = upTo(Map.of(), "G01");
        BackOut out = back(Map.of(), done, new OfItem("IF_cone", Want.OUT));
        BackOut alone = back(Map.of(), done, new OfItem("IF_cone", Want.RENEW));
        assertThat(ids(out.undo())).containsExactly("G01");
        assertThat(ids(alone.undo())).containsExactly("G01", "I01");
        assertThat(alone.renew()).extracting(Item::id).containsExactlyInAnyOrder("IF_cone", "IR_cone");
        assertThat(alone.holds()).extracting(Step::hold).contains("H44");
    }

    @Test
    void whatIsNotInIsInTheHandAndWhatIsNotKnownIsRefused() {
        assertThat(back(Map.of(), List.of(), new OfItem("idler", Want.RENEW)).free())
                .isTrue();
        assertThat(back(Map.of(), List.of("P01"), new OfStep("X07")).free()).isTrue();
        for (Target target : List.of(
                new OfItem("gear 9", Want.OUT), new OfStep("Z99"), new OfClearance("z"), new OfItem("P01", Want.OUT))) {
            assertThat(BackOut.to(A, Map.of(), List.of(), target).refusals())
                    .singleElement()
                    .satisfies(r -> assertThat(r.sentence()).contains(target.id()));
        }
    }

    @Test
    void anEndPlayPackComesOutWithItsPlateAlone() {
        BackOut back = back(Map.of(), upTo(Map.of(), "E04"), new OfClearance("c"));
        assertThat(ids(back.undo())).containsExactly("E04", "E03");
        assertThat(back.losses()).isEmpty();
        assertThat(back.reopened()).extracting(Clearance::id).containsExactly("c");
        // undo_time of the unit file (invented): E03 6 min, E04 8 min
        assertThat(back.undoMinutes()).isCloseTo(14, within(1e-9));
        assertThat(back.turnMinutes()).isEqualTo(0);
    }

    /** Steps done in some possible order, not that of the plan. */
    private static List<String> history(Random random, Order order, int wanted) {
        List<String> done = new ArrayList<>();
        while (done.size() < wanted) {
            List<String> free = order.steps().keySet().stream()
                    .filter(step -> !done.contains(step) && order.free(step, done))
                    .toList();
            if (free.isEmpty()) {
                break;
            }
            done.add(free.get(random.nextInt(free.size())));
        }
        return done;
    }

    private static Target target(Random random) {
        List<Item> items = A.type().items();
        List<Step> steps = A.type().steps();
        List<Clearance> clearances = A.type().clearances();
        return switch (random.nextInt(5)) {
            case 0 -> new OfStep(steps.get(random.nextInt(steps.size())).id());
            case 1 ->
                new OfClearance(
                        clearances.get(random.nextInt(clearances.size())).id());
            default -> new OfItem(items.get(random.nextInt(items.size())).id(), WANTS.get(random.nextInt(3)));
        };
    }

    @Property(tries = 150)
    void undoneAndRedoneStepByStepTheJobsRulesAreKept(@ForAll long seed) {
        Random random = new Random(seed);
        Map<String, String> taken = random.nextBoolean() ? Map.of() : LATE;
        Order order = Order.of(A, taken);
        List<String> done = history(random, order, random.nextInt(order.steps().size() + 1));
        BackOut back = back(taken, done, target(random));
        Set<String> stands = new LinkedHashSet<>(done);
        for (Step step : back.undo()) {
            // rules of the job: undone only while nothing done stands on it
            assertThat(order.waiting(step.id())).extracting(Step::id).doesNotContainAnyElementsOf(stands);
            assertThat(stands.remove(step.id())).isTrue();
        }
        for (Step step : back.redo()) {
            assertThat(order.free(step.id(), stands)).as(step.id()).isTrue();
            stands.add(step.id());
        }
        assertThat(stands).containsExactlyInAnyOrderElementsOf(done);
        assertThat(back.proven()).isTrue();
        if (back.target() instanceof OfStep step && done.contains(step.id())) {
            assertThat(back.redo().get(0).id()).isEqualTo(step.id());
        }
        assertThat(back(taken, done, back.target())).isEqualTo(back);
    }
}
