package shimwright.rebuild.unit.begin;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.plan.Order;
import shimwright.rebuild.unit.begin.Construction.Housing;
import shimwright.rebuild.unit.begin.Construction.Layout;
import shimwright.rebuild.unit.begin.Construction.Reverse;
import shimwright.rebuild.unit.begin.Construction.Shift;
import shimwright.rebuild.unit.file.UnitFiles;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Unit;
import shimwright.rebuild.unit.model.UnitType;

/** A unit begun without a file reads without a problem, whatever the box is like. */
class FirstUnitTest {
    private static Construction box(Layout layout, Set<Housing> housings, List<Integer> cones, int straight) {
        return new Construction(
                layout, housings, cones, straight, Reverse.SLIDING, Shift.RAILS, layout == Layout.IN_LINE ? 1 : 0);
    }

    private static UnitType read(String text) {
        UnitFiles.Result result = UnitFiles.read("begun.yaml", text);
        assertThat(result.problems().stream().map(Refusal::sentence)).as(text).isEmpty();
        return result.outcome().orElseThrow();
    }

    /** Every box that can be: layouts, housings, counts of gears, cones, straight gears, reverse, shift. */
    private static Stream<Construction> every() {
        Random random = new Random(5);
        List<Construction> all = new ArrayList<>();
        for (Layout layout : Layout.values()) {
            for (int bits = 0; bits < 1 << Housing.values().length; bits++) {
                Set<Housing> housings = EnumSet.noneOf(Housing.class);
                int rest = bits;
                for (Housing housing : Housing.values()) {
                    if (rest % 2 == 1) {
                        housings.add(housing);
                    }
                    rest /= 2;
                }
                for (int gears = Construction.FEWEST; gears <= Construction.MOST; gears++) {
                    Reverse reverse = random.nextBoolean() ? Reverse.SLIDING : Reverse.SYNCHRONIZED;
                    Shift shift = List.of(Shift.values()).get(random.nextInt(3));
                    List<Integer> cones = random.ints(gears, 0, 4).boxed().toList();
                    int straight = layout == Layout.IN_LINE ? random.nextInt(gears + 1) : 0;
                    int counters = layout == Layout.IN_LINE ? random.nextBoolean() ? 1 : 3 : 0;
                    all.add(new Construction(layout, housings, cones, straight, reverse, shift, counters));
                }
            }
        }
        return all.stream().filter(box -> box.faults().isEmpty());
    }

    @Test
    void everyBoxThatCanBeIsAUnitFileWithoutAProblem() {
        List<Construction> boxes = every().toList();
        assertThat(boxes).hasSizeGreaterThan(150);
        for (Construction box : boxes) {
            UnitType type = read(FirstUnit.text(box, "Maker", "Model").orElseThrow());
            assertThat(type.section().scheme()).isTrue();
            Set<String> fitted = new HashSet<>();
            type.steps().forEach(step -> fitted.addAll(step.installs()));
            assertThat(type.items().stream().map(Item::id)).as(box.toString()).allMatch(fitted::contains);
        }
    }

    @Test
    void theOrderRunsAndWhatIsOnlyUsualIsMarkedSo() {
        UnitType type = read(FirstUnit.text(
                        box(Layout.ACROSS, Set.of(Housing.BELL, Housing.END_COVER), List.of(2, 1, 1, 1, 1), 0),
                        "Maker",
                        "Five")
                .orElseThrow());
        Unit unit = type.resolve("A");
        assertThat(Order.of(unit, Map.of()).steps()).hasSameSizeAs(type.steps());
        for (Step step : type.steps()) {
            step.after().forEach((other, why) -> {
                boolean habit = why == Step.Why.HABIT;
                assertThat(step.because().containsKey(other))
                        .as(step.id() + " after " + other)
                        .isEqualTo(habit);
            });
        }
    }

    @Test
    void gearsConesAndHousingsAreTheOnesThatWereSeen() {
        List<String> items = read(FirstUnit.text(
                                box(Layout.IN_LINE, Set.of(Housing.TAIL, Housing.PLATE), List.of(2, 1, 1, 0, 1), 4),
                                "Maker",
                                "Rear")
                        .orElseThrow())
                .items()
                .stream()
                .map(Item::id)
                .toList();
        assertThat(items)
                .contains(
                        "plate",
                        "tail",
                        "counter",
                        "wheel_1",
                        "ring_1_inner",
                        "cone_1",
                        "ring_1_outer",
                        "ring_2",
                        "wheel_5")
                .doesNotContain("wheel_4", "ring_4", "bell", "diff_case", "counter_1", "left_seal");
    }

    @Test
    void aBoxThatCannotBeIsRefusedWithEveryReason() {
        Construction none = new Construction(
                Layout.ACROSS,
                Set.of(Housing.TAIL, Housing.SPLIT, Housing.PLATE),
                List.of(1, 9),
                2,
                Reverse.SLIDING,
                Shift.RAILS,
                2);
        List<Refusal> faults = FirstUnit.text(none, " ", "x".repeat(99)).refusals();
        assertThat(faults.stream().map(Refusal::key))
                .containsExactly(
                        "maker", "model", "gears", "cones[1]", "straight", "countershafts", "housings", "housings");
        assertThat(faults).allMatch(fault -> !fault.hint().isBlank());
        Construction sound = box(Layout.ALONG, Set.of(), Collections.nCopies(5, 1), 0);
        assertThat(FirstUnit.text(sound, "Ж", "Я").refusals()).hasSize(1);
    }

    @Test
    void anyNameStaysAName() {
        Construction sound = box(Layout.ALONG, Set.of(), Collections.nCopies(5, 1), 0);
        for (String name :
                List.of("A: b", "\"quoted\"", "back\\slash", "# no comment", "- dash", "{x}", "été 3", "'")) {
            UnitType type = read(FirstUnit.text(sound, name, "M 1").orElseThrow());
            assertThat(type.maker()).isEqualTo(name);
            assertThat(type.id()).matches("[a-z0-9]+(-[a-z0-9]+)*");
        }
        assertThat(IntStream.rangeClosed(0, 7).mapToObj(Names::gear).distinct()).hasSize(8);
    }
}
