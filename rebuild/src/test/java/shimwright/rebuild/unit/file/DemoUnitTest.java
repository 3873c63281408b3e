package shimwright.rebuild.unit.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import shimwright.rebuild.unit.model.Clearance.Length;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Item.Shape;
import shimwright.rebuild.unit.model.Kit;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Unit;
import shimwright.rebuild.unit.model.UnitType;
import shimwright.rebuild.unit.sense.StepGraph;

/** The shipped example against the figures of the invented unit; the ids in the comments are those of its list of checks. */
class DemoUnitTest {
    private static final UnitType TYPE = UnitFileTexts.example();

    static Unit unit(String variant) {
        return TYPE.resolve(variant);
    }

    @Test
    void readsWithoutAProblem() {
        assertThat(UnitFiles.read("example", UnitFiles.example()).problems()).isEmpty();
    }

    /** RT-1: 43/12 40/19 33/25 31/33 27/37 41/13. */
    @ParameterizedTest
    @CsvSource({"g1, 3.5833", "g2, 2.1053", "g3, 1.3200", "g4, 0.9394", "g5, 0.7297", "reverse, 3.1538"})
    void ratiosFollowFromTheTeeth(String gear, double ratio) {
        assertThat(unit("A").gear(gear).ratio()).isCloseTo(ratio, within(0.00005));
    }

    /** RT-2: 38/9 and 37/8. */
    @ParameterizedTest
    @CsvSource({"A, 4.2222", "B, 4.6250"})
    void finalDriveBelongsToItsVariant(String variant, double ratio) {
        assertThat(unit(variant).gear("final").ratio()).isCloseTo(ratio, within(0.00005));
    }

    /** The counts of H34 lie 0.2 either side of 5 x gear x final. */
    @ParameterizedTest
    @CsvSource({"A", "B"})
    void turnCountsFollowFromTheRatios(String variant) {
        Unit unit = unit(variant);
        Map<String, String> gears = Map.of(
                "turns_1", "g1", "turns_2", "g2", "turns_3", "g3", "turns_4", "g4", "turns_5", "g5", "turns_R",
                "reverse");
        for (UnitType.Check check : unit.holdPoint("H34").checks()) {
            String gear = gears.get(check.id());
            if (gear != null) {
                double turns = 5 * unit.gear(gear).ratio() * unit.gear("final").ratio();
                assertThat(check.lower().orElseThrow().si()).isCloseTo(turns - 0.2, within(0.006));
                assertThat(check.upper().orElseThrow().si()).isCloseTo(turns + 0.2, within(0.006));
            }
        }
        assertThat(unit.holdPoint("H34").checks()).hasSize(8);
    }

    /** GE-2: 74 - 19.375 - 53.75. */
    @Test
    void reverseGearClearsTheSlidingSleeve() {
        Unit unit = unit("A");
        double centres = unit.shaft("input_line").at().get(1)
                - unit.shaft("pinion_line").at().get(1);
        double gear = unit.item("input_R").diameters().get(1) / 2;
        double teeth = unit.item("slider_12").also().get(0).get(3) / 2;
        assertThat(centres - gear - teeth).isCloseTo(0.875e-3, within(1e-9));
    }

    /** Operations, and minutes of variant A with the shop's choices, summed from the file. */
    @Test
    void usualOrder() {
        StepGraph graph = StepGraph.of(unit("A").type(), Map.of());
        assertThat(graph.steps()).hasSize(95);
        assertThat(minutes(graph)).isCloseTo(1261, within(1e-9));
    }

    /** Less D04, D07 and D08: 8, 12 and 25 minutes. */
    @Test
    void finalDriveLate() {
        StepGraph graph = StepGraph.of(unit("A").type(), Map.of("O1", "late"));
        assertThat(graph.cycle()).isEmpty();
        assertThat(graph.steps()).hasSize(92);
        assertThat(minutes(graph)).isCloseTo(1216, within(1e-9));
    }

    private static double minutes(StepGraph graph) {
        return graph.steps().values().stream().mapToDouble(Step::duration).sum() / 60;
    }

    /** PL-6: the bellhousing needs the pattern, the pattern waits for the end cap. */
    @Test
    void sidesThatContradict() {
        StepGraph graph = StepGraph.of(unit("A").type(), Map.of("O1", "late", "O4", "first"));
        List<String> circle = graph.cycle();
        assertThat(circle).contains("B02", "D03", "Q07");
        assertThat(graph.words(circle)).contains("B02 (Anaerobic on face F)").endsWith("waits for " + circle.get(0));
    }

    /** Every other pair of sides is possible, in both variants. */
    @ParameterizedTest
    @ValueSource(strings = {"A", "B"})
    void allOtherPairsOfSides(String variant) {
        UnitType type = unit(variant).type();
        for (UnitType.Choice one : type.choices()) {
            for (UnitType.Choice two : type.choices()) {
                for (String a : one.sides().keySet()) {
                    for (String b : two.sides().keySet()) {
                        Map<String, String> taken = new HashMap<>(Map.of(one.id(), a));
                        taken.put(two.id(), b);
                        boolean odd = taken.equals(Map.of("O1", "late", "O4", "first"));
                        assertThat(StepGraph.of(type, taken).cycle().isEmpty())
                                .as("%s", taken)
                                .isEqualTo(!odd);
                    }
                }
            }
        }
    }

    /** MO-1: 443 and 429. */
    @ParameterizedTest
    @CsvSource({"A, 443", "B, 429"})
    void kitAddsUp(String variant, double price) {
        Kit kit = unit(variant).kit().orElseThrow();
        assertThat(kit.price()).isEqualTo(price);
        double sum = kit.contents().stream()
                .mapToDouble(l -> l.quantity() * l.price())
                .sum();
        assertThat(sum).isEqualTo(price);
    }

    /** TH-1: 0.0052... of the loops: net strain 0.0004455 times the aluminum in it. */
    @ParameterizedTest
    @CsvSource({"b, -0.0062", "c, 0.1156", "d, 0.0677", "f, 0"})
    void growthOfTheLoops(String id, double millimetres) {
        Unit unit = unit("A");
        double growth = 0;
        for (Length length : unit.clearance(id).loop()) {
            UnitType.Material material = unit.material(length.material());
            growth += length.sign() * length.nominal() * material.expansion() * material.hotRise();
        }
        assertThat(growth * 1000).isCloseTo(millimetres, within(0.0002));
        assertThat(unit.clearance(id).growth() * 1000).isCloseTo(millimetres, within(0.00005));
    }

    @Test
    void variantsSeeOnlyTheirOwn() {
        Unit a = unit("A");
        Unit b = unit("B");
        assertThat(b.type().steps()).hasSize(96);
        assertThat(a.findStep("S05B")).isEmpty();
        assertThat(a.step("S08").after()).containsKey("S05A").doesNotContainKey("S05B");
        assertThat(a.item("rail_5R").part()).isEqualTo("74-5031");
        assertThat(b.item("rail_5R").part()).isEqualTo("74-5032");
        assertThat(a.step("T07").installs()).contains("worm_ring").doesNotContain("tone_ring");
        assertThat(a.type().variants()).containsOnlyKeys("A");
        assertThat(a.variantName()).isEqualTo("L5-74A");
        assertThat(a.type().tellTales().get(2).shows()).containsEntry("B", "29");
        assertThat(b.clearance("e").positions().get(0).effect()).isEqualTo(-0.4343);
    }

    @Test
    void everyPositionIsChosenForOneClearance() {
        Unit unit = unit("A");
        Map<String, String> chosen = new HashMap<>();
        unit.positions().forEach(p -> chosen.put(p, unit.clearanceOf(p).id()));
        assertThat(chosen)
                .containsExactlyInAnyOrderEntriesOf(
                        Map.of("sP", "a", "SP", "b", "sR", "d", "sL", "e", "sI", "c", "ring", "f"));
        assertThat(unit.position("sI").most()).isEqualTo(2);
    }

    /** What is drawn must go in, stay in, and nothing that stands in for a trial may stay. */
    @ParameterizedTest
    @CsvSource({"A, early", "B, early", "A, late", "B, late"})
    void everythingIsInAtTheEnd(String variant, String side) {
        Unit unit = unit(variant);
        Set<String> in = unit.itemsIn(possible(StepGraph.of(unit.type(), Map.of("O1", side))));
        for (Item item : unit.type().items()) {
            assertThat(in.contains(item.id())).as(item.id()).isEqualTo(!item.trial());
        }
    }

    /** A part is put in only where it is not yet in, and taken out only where it is, in every possible order tried. */
    @ParameterizedTest
    @ValueSource(strings = {"A", "B"})
    void nothingGoesInTwice(String variant) {
        Unit unit = unit(variant);
        Set<String> in = new LinkedHashSet<>();
        for (String id : possible(StepGraph.of(unit.type(), Map.of()))) {
            Step step = unit.step(id);
            step.removes()
                    .forEach(item -> assertThat(in.remove(item))
                            .as(id + " removes " + item)
                            .isTrue());
            step.installs()
                    .forEach(item -> assertThat(in.add(item))
                            .as(id + " installs " + item)
                            .isTrue());
        }
    }

    @Test
    void everyPieceOfTheSectionIsThere() {
        List<Item> drawn =
                TYPE.items().stream().filter(item -> item.shape() != Shape.NONE).toList();
        assertThat(drawn).hasSizeGreaterThan(60);
        assertThat(drawn).allSatisfy(item -> {
            assertThat(item.along()).hasSize(2);
            assertThat(item.diameters()).hasSize(2);
            assertThat(item.shaft()).isNotEmpty();
        });
        assertThat(TYPE.wearLimits()).hasSize(48);
        assertThat(TYPE.holdPoints()).hasSize(46);
        assertThat(TYPE.symptoms()).hasSize(15);
        assertThat(TYPE.tellTales()).hasSize(7);
    }

    @Test
    void reasonsAreInWords() {
        Unit unit = unit("A");
        assertThat(unit.reason("T07", "T06")).contains("before the differential goes in");
        assertThat(unit.reason("T04", "T03")).isEqualTo(Step.Why.SAME_PART.words());
        assertThat(unit.reason("G00", "D06")).contains("choice");
        assertThat(unit.turnOver("FU", "RU")).isEqualTo(240);
        assertThat(unit.turnOver("RU", "BENCH")).isZero();
        assertThat(unit.step("R03").oneWay()).isTrue();
        assertThat(unit.stepsReading("c", Step.Phase.AGAIN))
                .extracting(Step::id)
                .containsExactly("E04");
        assertThat(unit.stepsHolding("H31")).extracting(Step::id).containsExactly("E03", "E04");
        assertThat(unit.itemsFor("I01")).extracting(Item::id).contains("IF_cone", "IR_cone");
    }

    private static List<String> possible(StepGraph graph) {
        List<String> order = new ArrayList<>();
        while (order.size() < graph.steps().size()) {
            graph.steps().keySet().stream()
                    .filter(id -> !order.contains(id))
                    .filter(id -> order.containsAll(graph.before().getOrDefault(id, Set.of())))
                    .findFirst()
                    .ifPresent(order::add);
        }
        return order;
    }
}
