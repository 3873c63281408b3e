package shimwright.bench.picture.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import shimwright.bench.picture.svg.DrawnSvg;
import shimwright.bench.picture.svg.SvgRules;
import shimwright.rebuild.unit.model.GearPair;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Section;
import shimwright.rebuild.unit.model.Unit;

/** Units other than the demo: nothing to draw, little to draw, odd shapes, any names. */
class OtherUnitsTest {
    private static final Section NOTHING = new Section(List.of(), List.of());

    @Test
    void a_unit_without_shapes_says_so() {
        Unit unit = SampleUnits.small(List.of(), NOTHING, List.of());
        DrawnSvg drawn = SvgRules.check(SectionDrawing.svg(unit, SectionState.EMPTY, "p", SectionView.FULL), "p");
        assertThat(drawn.texts())
                .containsExactly("The unit file of Sample gives no shapes, so there is no section to draw.");
    }

    @Test
    void items_without_geometry_are_left_out_and_the_rest_is_drawn() {
        List<Item> items = List.of(
                SampleUnits.item("gear", "gear", Item.Shape.GEAR, List.of(0.01, 0.03), List.of(0.02, 0.06)),
                SampleUnits.item("nowhere", "no place", Item.Shape.GEAR, List.of(), List.of(0.02, 0.06)),
                SampleUnits.item("flat", "no width", Item.Shape.SHIM, List.of(0.05, 0.05), List.of(0.02, 0.06)),
                SampleUnits.item(
                        "turned",
                        "given from rear to front",
                        Item.Shape.WASHER,
                        List.of(0.08, 0.07),
                        List.of(0.06, 0.02)));
        Unit unit = SampleUnits.small(items, SampleUnits.oneShaft(List.of()), List.of());
        SectionState all = SectionState.EMPTY.withFitted(Set.of("gear", "nowhere", "flat", "turned"));
        DrawnSvg drawn = SvgRules.check(SectionDrawing.svg(unit, all, "p", SectionView.FULL), "p");
        List<String> shown = drawn.withAttribute("data-item").stream()
                .map(e -> e.getAttribute("data-item"))
                .toList();
        assertThat(shown).containsExactlyInAnyOrder("gear", "turned");
    }

    @Test
    void names_are_text_and_never_markup() {
        String name = "cup <b>&amp; \"cone\" \u0001 <script>";
        List<Item> items =
                List.of(SampleUnits.item("x", name, Item.Shape.NUT, List.of(0.01, 0.03), List.of(0.02, 0.06)));
        Unit unit = SampleUnits.small(items, SampleUnits.oneShaft(List.of(List.of(0.0, 0.1, 0.02))), List.of());
        SectionState hand = SectionState.EMPTY.withInHand(Set.of("x"));
        DrawnSvg drawn = SvgRules.check(SectionDrawing.svg(unit, hand, "p", SectionView.FULL), "p");
        assertThat(drawn.texts()).contains("Cup <b>&amp; \"cone\"  <script>");
    }

    @Test
    void a_neighbourhood_of_nothing_drawn_is_the_whole() {
        SectionState state = SectionState.EMPTY;
        String whole = SectionDrawing.svg(SampleUnits.A, state, "p", SectionView.FULL);
        String around = SectionDrawing.svg(SampleUnits.A, state, "p", SectionView.around(Set.of("fork_34"), 0.02));
        assertThat(DrawnSvg.of(around).withAttribute("data-item"))
                .hasSameSizeAs(DrawnSvg.of(whole).withAttribute("data-item"));
    }

    @Test
    void a_view_too_narrow_to_read_is_refused() {
        assertThatThrownBy(() -> SectionView.FULL.forWidth(200)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> SectionView.around(Set.of(), -1)).isInstanceOf(IllegalArgumentException.class);
    }

    @Property(tries = 150)
    void any_shapes_on_any_shafts_make_a_sound_picture(
            @ForAll("units") Unit unit, @ForAll("states") SectionState state, @ForAll("views") SectionView view) {
        SvgRules.check(SectionDrawing.svg(unit, state, "p", view), "p");
    }

    @Provide
    Arbitrary<SectionView> views() {
        return Combinators.combine(
                        Arbitraries.of(0.0, 0.02, 0.1),
                        Arbitraries.doubles().between(280, 1400),
                        Arbitraries.of("0", "1", "2").set().ofMaxSize(2))
                .as((margin, width, around) ->
                        SectionView.around(around, margin).forWidth(width));
    }

    private static SectionState.Stand stand(String id) {
        SectionState.Stand[] all = SectionState.Stand.values();
        return all[Integer.parseInt(id) % all.length];
    }

    @Provide
    Arbitrary<SectionState> states() {
        Arbitrary<Set<String>> some =
                Arbitraries.of("0", "1", "2", "3", "4", "5").set();
        return Combinators.combine(some, some, some, some)
                .as((fitted, hand, named, trial) -> SectionState.EMPTY
                        .withFitted(fitted)
                        .withInHand(hand)
                        .withVerdicts(
                                named.size() < 4
                                        ? Map.of()
                                        : named.stream().collect(Collectors.toMap(id -> id, OtherUnitsTest::stand)))
                        .withTrial(trial));
    }

    @Provide
    Arbitrary<Unit> units() {
        Arbitrary<Double> place = Arbitraries.doubles().between(-0.3, 0.3);
        Arbitrary<Double> size = Arbitraries.doubles().between(0, 0.2);
        Arbitrary<Item.Shape> shape = Arbitraries.of(Item.Shape.class);
        Arbitrary<Item> item = Combinators.combine(
                        shape, place, place, size, size, Arbitraries.of("s", "t", "u", "y", "none"))
                .as((what, a, b, d1, d2, shaft) -> new Item(
                        "",
                        "a part",
                        "",
                        what,
                        shaft,
                        List.of(a, b),
                        List.of(d1, d2),
                        List.of(),
                        1,
                        false,
                        false,
                        false,
                        "",
                        Set.of()));
        return Combinators.combine(item.list().ofMaxSize(6), place, place).as((items, z, x) -> {
            List<Item> numbered = new ArrayList<>();
            for (Item one : items) {
                String id = Integer.toString(numbered.size());
                numbered.add(new Item(
                        id,
                        "part " + id,
                        "",
                        one.shape(),
                        one.shaft(),
                        one.along(),
                        one.diameters(),
                        List.of(),
                        1,
                        false,
                        false,
                        false,
                        "",
                        Set.of()));
            }
            return SampleUnits.small(numbered, section(z, x), List.of(pair("0", "1"), pair("2", "3")));
        });
    }

    private static Section section(double z, double x) {
        return new Section(
                List.of(
                        new Section.Shaft(
                                "s",
                                "s",
                                Section.Axis.X,
                                List.of(0.0, 0.0),
                                List.of(List.of(0.0, 0.1, 0.03)),
                                List.of(List.of(0.06, 0.1, Math.abs(x)), List.of(-z, z, 0.01)),
                                "4",
                                true),
                        new Section.Shaft(
                                "u",
                                "u",
                                Section.Axis.X,
                                List.of(0.0, 0.0),
                                List.of(List.of(0.07, 0.2, 0.02)),
                                List.of(),
                                "",
                                true),
                        new Section.Shaft("t", "t", Section.Axis.X, List.of(0.0, z), List.of(), List.of(), "", true),
                        new Section.Shaft("y", "y", Section.Axis.Y, List.of(x, 0.0), List.of(), List.of(), "5", true)),
                List.of(new Section.Outline(
                        "case", "3", List.of(List.of(-0.1, 0.1), List.of(0.2, 0.1), List.of(0.25, x)), z > 0)));
    }

    private static GearPair pair(String driver, String driven) {
        GearPair model = SampleUnits.A.type().gears().get(0);
        return new GearPair(
                driver + driven,
                "pair",
                false,
                12,
                43,
                0,
                0.002,
                0,
                0.074,
                model.shifts(),
                model.face(),
                driver,
                driven,
                "",
                Set.of());
    }
}
