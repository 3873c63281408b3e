package shimwright.rebuild.unit.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.plan.Order;
import shimwright.rebuild.unit.begin.Construction;
import shimwright.rebuild.unit.begin.FirstUnit;
import shimwright.rebuild.unit.file.UnitFiles;
import shimwright.rebuild.unit.model.Component;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Section;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Step.Why;
import shimwright.rebuild.unit.model.UnitType;

/** A strip-down turned round in a unit that was begun without a file. */
class StripDownOrderTest {
    private static final UnitType BEGUN = read(FirstUnit.text(
                    new Construction(
                            Construction.Layout.ACROSS,
                            Set.of(Construction.Housing.BELL),
                            List.of(1, 1, 1, 1, 1),
                            0,
                            Construction.Reverse.SLIDING,
                            Construction.Shift.RAILS,
                            0),
                    "Some",
                    "Box")
            .orElseThrow());

    private static UnitType read(String text) {
        UnitFiles.Result result = UnitFiles.read("b.yaml", text);
        assertThat(result.problems().stream().map(Refusal::sentence)).isEmpty();
        return result.outcome().orElseThrow();
    }

    private static Removal off(String name, String item, Integer... inTheWay) {
        return new Removal(
                name,
                item.isEmpty() ? List.of() : List.of(item),
                List.of(inTheWay),
                false,
                List.of(),
                Removal.Found.NOTHING);
    }

    private static Removal free(String name, String item) {
        return new Removal(name, List.of(item), List.of(), true, List.of(), Removal.Found.NOTHING);
    }

    private static UnitType after(UnitType type, Removal... strip) {
        return read(UnitEdit.text(type, new StripDownOrder(List.of(strip))).orElseThrow());
    }

    private static Step fitting(UnitType type, String item) {
        return type.steps().stream()
                .filter(step -> step.builds().contains(item) || step.installs().contains(item))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void habitOfWhatCameOffGivesWayToWhatWasInTheWay() {
        Step seal = fitting(BEGUN, "left_seal");
        assertThat(seal.after().get(fitting(BEGUN, "input_seal").id())).isEqualTo(Why.HABIT);
        UnitType learned = after(
                BEGUN, free("left output seal", "left_seal"), free("input seal", "input_seal"), off("bell", "bell", 1));
        String bell = fitting(learned, "bell").id();
        assertThat(fitting(learned, "input_seal").after()).containsEntry(bell, Why.BLOCKED);
        assertThat(fitting(learned, "left_seal").after())
                .doesNotContainKey(fitting(learned, "input_seal").id());
        assertThat(fitting(learned, "input_seal").because()).containsEntry(bell, LearnedOrder.STRIPPED);
    }

    @Test
    void whatIsPutRightAfterwardsIsPutRightInTheUnit() {
        Removal seal = free("input seal", "input_seal");
        UnitType once = after(BEGUN, free("left output seal", "left_seal"), seal, off("bell", "bell", 0, 1));
        UnitType again = after(once, free("left output seal", "left_seal"), seal, off("bell", "bell", 1));
        String bell = fitting(again, "bell").id();
        assertThat(fitting(once, "left_seal").after()).containsEntry(bell, Why.BLOCKED);
        assertThat(fitting(again, "input_seal").after()).containsEntry(bell, Why.BLOCKED);
        assertThat(fitting(again, "left_seal").after().get(bell)).isNotEqualTo(Why.BLOCKED);
        // struck altogether: nothing is known any more, and nothing is free
        UnitType struck = after(once, seal, off("bell", "bell", 0));
        assertThat(fitting(struck, "left_seal").after()).containsEntry(bell, Why.HABIT);
    }

    @Test
    void aPartThatTheFileLacksBecomesAnItemAndAStepWithItsBolts() {
        Removal baffle = new Removal(
                "oil baffle",
                List.of(),
                List.of(0),
                false,
                List.of(),
                new Removal.Found(
                        "puller", "itself", "tongue to the gears", "3 × M6x1 8.8; 1 x M8", "bent", "grey paste"));
        UnitType learned = after(BEGUN, free("bell housing", "bell"), baffle);
        Item item = learned.items().stream()
                .filter(one -> one.name().equals("oil baffle"))
                .findFirst()
                .orElseThrow();
        Step step = fitting(learned, item.id());
        assertThat(item.renew()).isTrue();
        assertThat(step.todo())
                .isEqualTo(
                        "Fit oil baffle. As it came off: side up tongue to the gears; held by 3 × M6x1 8.8; 1 x M8; it took"
                                + " puller; destroyed: oil baffle; sealed or locked with grey paste; bent.");
        assertThat(step.oneWay()).isTrue();
        assertThat(step.dangers()).contains(Step.Danger.PRESS, Step.Danger.CHEMICAL);
        assertThat(step.consumables()).containsExactly("grey_paste");
        assertThat(learned.consumables().get(0).name()).isEqualTo("grey paste");
        assertThat(fitting(learned, "bell").after()).containsEntry(step.id(), Why.BLOCKED);
        // M6 8.8: 20.1 mm² × 580 MPa (ISO 898-1, proof), half of it, K 0.18 oiled (Shigley table 8-15) × 6 mm = 6.3 N·m
        assertThat(learned.fasteners()).hasSize(1);
        assertThat(learned.fasteners().get(0).torque()).isBetween(6.1, 6.4);
        assertThat(learned.fasteners().get(0).origin()).contains("computed", "light alloy");
        assertThat(new StripDownOrder(List.of(baffle)).withoutTorque()).containsExactly("oil baffle: 1 × M8");
        // nothing sealed it after all
        Removal dry = new Removal("oil baffle", List.of(), List.of(0), false, List.of(), Removal.Found.NOTHING);
        assertThat(after(learned, free("bell housing", "bell"), dry).consumables())
                .isEmpty();
        // said again it changes nothing
        UnitType same = after(learned, free("bell housing", "bell"), baffle);
        assertThat(OrderChanges.of(learned, same).none()).isTrue();
        assertThat(same.steps()).isEqualTo(learned.steps());
        assertThat(same.items()).isEqualTo(learned.items());
    }

    @Test
    void whatWasPickedOffInTheCaseGoesInThereAndWhatCameOutAsOneIsBuiltOnTheBench() {
        UnitType picked = after(
                BEGUN,
                free("bell housing", "bell"),
                off("nut of the output shaft", "output_nut", 0),
                off("output shaft", "output_shaft", 1),
                off("output rear bearing", "output_rear_bearing", 2));
        Step nut = fitting(picked, "output_nut");
        assertThat(nut.installs()).containsExactly("output_nut");
        Step whole = picked.steps().stream()
                .filter(step -> step.installs().contains("output_shaft"))
                .findFirst()
                .orElseThrow();
        assertThat(whole.installs()).contains("output_rear_bearing").doesNotContain("output_nut");
        assertThat(nut.after()).containsEntry(whole.id(), Why.SAME_PART);
        Removal onIt = new Removal("sensor ring", List.of(), List.of(1), false, List.of(1), Removal.Found.NOTHING);
        UnitType asOne = after(BEGUN, free("bell housing", "bell"), off("breather hose bracket", "", 0), onIt);
        Step ring = asOne.steps().stream()
                .filter(step -> step.todo().startsWith("Fit sensor ring"))
                .findFirst()
                .orElseThrow();
        assertThat(ring.builds()).hasSize(1);
        assertThat(ring.at()).isEqualTo("BENCH");
        assertThat(asOne.steps().stream().filter(step -> step.installs().containsAll(ring.builds())))
                .hasSize(1);
    }

    @Test
    void aPartThatCarriesSomeOfTheRestDoesNotTakeAllOfItAlong() {
        UnitType without = new UnitEdit.RemoveItem("output_shaft").on(BEGUN).orElseThrow();
        // what stands on the needles comes off before them
        List<String> onIt = new ArrayList<>();
        for (Step step : without.steps()) {
            step.builds().stream()
                    .filter(item -> !onIt.isEmpty() || item.equals("needles_5"))
                    .forEach(onIt::add);
        }
        Collections.reverse(onIt);
        List<Removal> strip = new ArrayList<>(List.of(free("bell housing", "bell")));
        onIt.forEach(item -> strip.add(off(item, item, strip.size() - 1)));
        UnitType picked = after(without, strip.toArray(Removal[]::new));
        assertThat(fitting(picked, "needles_5").installs()).containsExactly("needles_5");
    }

    @Test
    void whatCannotBeIsRefusedWithASentence() {
        Section section = BEGUN.section();
        UnitType known = Component.with(BEGUN, "section", new Section(section.shafts(), section.castings(), false));
        // the wheel sits on its needles: they cannot have come off before it
        List<Refusal> refused = new StripDownOrder(
                        List.of(free("needles under the wheel of 2nd", "needles_2"), off("wheel of 2nd", "wheel_2", 0)))
                .on(known)
                .refusals();
        assertThat(refused).hasSize(1);
        assertThat(refused.get(0).sentence()).contains("had to be off before", "Put right");
    }

    /** Whatever comes off in whatever order, a person who answers truly frees nothing that is not free. */
    @Property(tries = 60)
    void nothingIsFreedThatIsNotFree(@ForAll long seed) {
        Random random = new Random(seed);
        List<String> steps = BEGUN.steps().stream().map(Step::id).toList();
        Map<String, Set<String>> truth = truth(random, steps);
        List<String> left = new ArrayList<>(BEGUN.items().stream().map(Item::id).toList());
        Collections.shuffle(left, random);
        List<Removal> strip = new ArrayList<>();
        List<String> gone = new ArrayList<>();
        int parts = random.nextInt(left.size() + 1);
        while (strip.size() < parts) {
            String next = left.stream()
                    .filter(item -> left.stream().noneMatch(other -> !other.equals(item) && over(truth, other, item)))
                    .findFirst()
                    .orElseThrow();
            left.remove(next);
            List<Integer> way = new ArrayList<>();
            for (int k = 0; k < gone.size(); k++) {
                if (over(truth, gone.get(k), next)) {
                    way.add(k);
                }
            }
            boolean one = random.nextBoolean() && !way.isEmpty();
            boolean asked = random.nextInt(5) > 0;
            List<Integer> said = one ? List.of(way.get(way.size() - 1)) : way;
            strip.add(new Removal(
                    next, List.of(next), asked ? said : List.of(), asked && !one, List.of(), Removal.Found.NOTHING));
            gone.add(next);
        }
        UnitType learned = read(UnitEdit.text(BEGUN, new StripDownOrder(strip)).orElseThrow());
        Order order = Order.of(learned.resolve("A"), Map.of());
        Order was = Order.of(BEGUN.resolve("A"), Map.of());
        List<String> all = BEGUN.items().stream().map(Item::id).toList();
        for (String then : all) {
            Set<String> led = order.leadingTo(fitting(learned, then).id());
            for (String first : all) {
                String before = fitting(learned, first).id();
                boolean both = gone.contains(first) && gone.contains(then);
                boolean must = both
                        ? over(truth, then, first)
                        : was.leadingTo(fitting(BEGUN, then).id())
                                .contains(fitting(BEGUN, first).id());
                if (must) {
                    assertThat(led.contains(before)
                                    || order.leadingTo(before)
                                            .contains(fitting(learned, then).id()))
                            .as(first + " before " + then + ", off " + gone)
                            .isTrue();
                }
                if (must && both) {
                    assertThat(led).as(first + " before " + then).contains(before);
                }
            }
        }
        assertThat(new StripDownOrder(strip).on(learned).orElseThrow().steps()).isEqualTo(learned.steps());
    }

    /** What really binds: what the begun file binds, and more at random that goes with it. */
    private static Map<String, Set<String>> truth(Random random, List<String> steps) {
        Map<String, Set<String>> truth = new HashMap<>();
        for (Step step : BEGUN.steps()) {
            Set<String> before = new HashSet<>();
            step.after().forEach((other, why) -> {
                if (why != Why.HABIT) {
                    before.add(other);
                    before.addAll(truth.getOrDefault(other, Set.of()));
                }
            });
            for (String other : steps.subList(0, steps.indexOf(step.id()))) {
                if (random.nextInt(30) == 0) {
                    before.add(other);
                    before.addAll(truth.getOrDefault(other, Set.of()));
                }
            }
            truth.put(step.id(), before);
        }
        return truth;
    }

    /** True where the first item goes in after the second. */
    private static boolean over(Map<String, Set<String>> truth, String then, String first) {
        return truth.getOrDefault(fitting(BEGUN, then).id(), Set.of())
                .contains(fitting(BEGUN, first).id());
    }
}
