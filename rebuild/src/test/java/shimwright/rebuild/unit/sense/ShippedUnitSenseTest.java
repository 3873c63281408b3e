package shimwright.rebuild.unit.sense;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import shimwright.rebuild.demo.DemoUnit;
import shimwright.rebuild.plan.Order;
import shimwright.rebuild.plan.Plan;
import shimwright.rebuild.plan.Planner;
import shimwright.rebuild.unit.file.UnitFiles;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Unit;
import shimwright.rebuild.unit.model.UnitType;
import shimwright.rebuild.unit.model.UnitType.Window;

/** The unit files of our own against a mechanic's eye: common practice, no source. */
class ShippedUnitSenseTest {
    static final Map<String, Function<StepLaws, List<String>>> LAWS = Map.of(
            "stuff", StepLaws::stuff,
            "holds", StepLaws::holds,
            "fields", StepLaws::fields,
            "at hand", StepLaws::atHand,
            "bolts", StepLaws::bolts,
            "other variants", StepLaws::otherVariants,
            "hot", StepLaws::hot,
            "window sizes", StepLaws::windowSizes,
            "gauges", StepLaws::gauges);

    static List<UnitType> types() {
        return List.of(DemoUnit.type(), DemoUnit.inLine());
    }

    static Stream<Unit> units() {
        return types().stream()
                .flatMap(type -> type.variants().keySet().stream().map(type::resolve));
    }

    @Test
    void everyLawHoldsInEveryVariant() {
        List<String> odd = new ArrayList<>();
        for (UnitType type : types()) {
            for (String variant : type.variants().keySet()) {
                StepLaws laws = new StepLaws(type, variant);
                LAWS.forEach((name, law) ->
                        law.apply(laws).forEach(s -> odd.add(type.id() + " " + variant + ", " + name + ": " + s)));
            }
        }
        assertThat(odd).isEmpty();
    }

    /** A fault as it once stood in the file, planted again. */
    record Plant(String law, String right, String wrong, String says) {}

    static List<Plant> plants() {
        return Stream.concat(ofReadings().stream(), ofWork().stream()).toList();
    }

    private static List<Plant> ofReadings() {
        return List.of(
                new Plant("stuff", "[V20]\n    consumables: [TL]", "[V20]", "E04 names locker"),
                new Plant(
                        "stuff",
                        "tightening torques\"}\n  - {id: V20",
                        "tightening torques\", locker: TL}\n  - {id: V20",
                        "E01 shows V6 with TL"),
                new Plant("stuff", "[V18]\n    consumables: [FO]", "[V18]", "X06 names oil"),
                new Plant(
                        "holds",
                        "{id: odd, what: no place stands apart from the others, clearance: e, worked_out: no_odd_place}\n  - id: H17",
                        "{id: slope, what: with the second split the slope is right}\n  - id: H17",
                        "T09 is asked about the second"),
                new Plant("holds", "40 on 40.00\"", "40 on 40.00, 25 on 25.00\"", "D02 is asked about a lip of 25"),
                new Plant("holds", "the mean against K03", "the mean against D01", "F06 is held against D01"),
                new Plant(
                        "fields",
                        "      - {id: right_depth, what: \"right side cup, its rim over the flange of the cover, four clocks\","
                                + " kind: length, lower: 26.30 mm, upper: 27.10 mm, places: 4, spread: 0.02 mm}\n",
                        "",
                        "D01 fits 2 rings and has 1 fields"),
                new Plant(
                        "fields",
                        "      - {id: right, what: \"right cone, the 0.02 feeler enters nowhere, three places\"}\n",
                        "",
                        "Y04 fits 2 rings and has 1 fields"),
                new Plant(
                        "fields",
                        "      - {id: tail_depth, what: \"pinion tail cup, its rim below face G, three places; the mean against"
                                + " K03\", kind: length, lower: -0.01 mm, upper: 0.01 mm, relative_to: H08/tail_depth,"
                                + " judged_on: mean, places: 3, spread: 0.02 mm}\n",
                        "",
                        "F06 reads several"),
                new Plant(
                        "at hand",
                        "hold: H06\n    builds: [left_cover]",
                        "hold: H06",
                        "P07 reads left side cover, which nobody has in hand"));
    }

    private static List<Plant> ofWork() {
        return List.of(
                new Plant("bolts", "where: detent plate,", "where: \"detent plate 4, end cap 10\",", "V7 counts bolts"),
                new Plant(
                        "bolts",
                        "thread: M6x18, property_class: \"8.8\", quantity: 4",
                        "thread: M6x18, quantity: 20",
                        "S06A says"),
                new Plant("bolts", "fasteners: [V14]", "fasteners: [V15]", "Q07 says ten bolts"),
                new Plant("bolts", "four bolts at 20 N.m.", "four bolts at 25 N.m.", "E01 says 25 N.m"),
                new Plant(
                        "other variants",
                        "where: reverse lamp switch,",
                        "where: \"reverse lamp switch, and the plug of variant B\",",
                        "\"reverse lamp switch, and the plug of variant B \" speaks of variant B"),
                new Plant(
                        "hot",
                        "fasteners: [V1]\n    consumables: [TL]",
                        "fasteners: [V1]\n    consumables: [TL]\n    dangers: [heat]",
                        "Y06 puts locker on what is hot"),
                new Plant("hot", "window: WH-HEAT", "window: WH-CASE", "K01 is hot or wet, joins nothing"),
                new Plant(
                        "hot",
                        "Y02: waits}\n    duration: 8 min",
                        "Y02: waits}\n    duration: 11 min",
                        "Y06 takes longer"),
                new Plant("window sizes", "window: WH-HEAD", "window: WH-INPUT", "T01 shows a bore of 30"),
                new Plant("gauges", "    tools: [AIR]\n", "", "X05 reads"),
                new Plant("gauges", "    tools: [BAL]\n", "", "X03 reads"));
    }

    @ParameterizedTest
    @MethodSource("plants")
    void everyFaultThatOnceStoodThereIsFound(Plant plant) {
        String text = UnitFiles.example();
        String wrong = text.replaceFirst(Pattern.quote(plant.right()), Matcher.quoteReplacement(plant.wrong()));
        assertThat(wrong.equals(text)).as("nothing planted").isFalse();
        StepLaws laws = new StepLaws(read(wrong), "A");
        assertThat(Objects.requireNonNull(LAWS.get(plant.law())).apply(laws))
                .anySatisfy(s -> assertThat(s).startsWith(plant.says()));
    }

    @ParameterizedTest
    @MethodSource("units")
    void nothingElseIsBegunWhileAShortWindowIsOpen(Unit unit) {
        Plan plan = Planner.lay(unit, Map.of(), Set.of()).orElseThrow();
        Order order = Order.of(unit, Map.of());
        List<String> ahead = plan.ahead().stream().map(Step::id).toList();
        for (Window window : unit.type().windows()) {
            if (!window.opens().isEmpty() && window.longest() <= 3600) {
                int from = ahead.indexOf(window.opens());
                int to = ahead.indexOf(window.closes());
                assertThat(order.leadingTo(window.closes())).as(window.id()).containsAll(ahead.subList(from, to));
            }
        }
    }

    static UnitType read(String text) {
        return UnitFiles.read("u.yaml", text).outcome().orElseThrow();
    }
}
