package shimwright.bench.picture.section;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Element;
import shimwright.bench.picture.svg.DrawingStyle;
import shimwright.bench.picture.svg.DrawnSvg;
import shimwright.bench.picture.svg.SvgRules;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.Clearance.Length;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Section;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Unit;

class SectionDrawingTest {
    private static final Set<String> ALL = SampleUnits.allItems(SampleUnits.A);
    private static final SectionState WHOLE = SectionState.EMPTY.withFitted(ALL);

    private static Set<String> drawnItems(DrawnSvg drawn) {
        return drawn.withAttribute("data-item").stream()
                .map(e -> e.getAttribute("data-item"))
                .collect(Collectors.toSet());
    }

    @ParameterizedTest
    @ValueSource(strings = {"A", "B"})
    void every_item_with_a_shape_on_a_drawn_shaft_appears(String variant) {
        Unit unit = SampleUnits.unit(variant);
        Set<String> shafts = unit.type().section().shafts().stream()
                .filter(Section.Shaft::drawn)
                .map(Section.Shaft::id)
                .collect(Collectors.toSet());
        Set<String> wanted = unit.type().items().stream()
                .filter(i -> i.shape() != Item.Shape.NONE && !i.trial() && shafts.contains(i.shaft()))
                .map(Item::id)
                .collect(Collectors.toSet());
        SectionState whole = SectionState.EMPTY.withFitted(SampleUnits.allItems(unit));
        DrawnSvg drawn = SvgRules.check(SectionDrawing.svg(unit, whole, "p", SectionView.FULL), "p");
        assertThat(wanted).hasSizeGreaterThan(60);
        assertThat(drawnItems(drawn)).containsAll(wanted).contains("main_case", "rear_cover", "bellhousing", "end_cap");
    }

    @ParameterizedTest
    @ValueSource(doubles = {820, 1180, 390, 280})
    void every_step_can_be_drawn_at_every_width(double width) {
        Set<String> fitted = new TreeSet<>();
        for (Step step : SampleUnits.A.type().steps()) {
            step.removes().forEach(fitted::remove);
            Set<String> hand = new TreeSet<>(step.installs());
            SectionState state = SectionState.EMPTY.withFitted(fitted).withInHand(hand);
            String near = SectionDrawing.svg(
                    SampleUnits.A,
                    state,
                    "n" + step.id(),
                    SectionView.around(hand, 0.02).forWidth(width));
            assertThat(SvgRules.check(near, "n" + step.id()).width()).isEqualTo(width);
            if (width == 820 || step.id().startsWith("G")) {
                SvgRules.check(SectionDrawing.svg(SampleUnits.A, state, "f", SectionView.FULL.forWidth(width)), "f");
            }
            fitted.addAll(step.installs());
        }
    }

    @Test
    void what_is_in_the_hand_is_heavy_blue_and_named_and_what_is_to_come_is_dashed() {
        SectionState state = SectionState.EMPTY
                .withFitted(Set.of("main_case", "pinion", "wheel_4"))
                .withInHand(Set.of("hub_34"));
        DrawnSvg drawn = SvgRules.check(SectionDrawing.svg(SampleUnits.A, state, "p", SectionView.FULL), "p");
        assertThat(drawn.texts()).contains("Hub 3/4", "fitted", "in your hand", "still to come");
        assertThat(strokes(drawn, "hub_34")).contains(DrawingStyle.BLUE + " 2.2 ");
        assertThat(strokes(drawn, "wheel_4"))
                .contains(DrawingStyle.INK + " 1.1 ")
                .noneMatch(s -> s.contains(DrawingStyle.BLUE));
        assertThat(strokes(drawn, "wheel_3")).containsOnly(DrawingStyle.GREY + " 0.8 " + DrawingStyle.COMING_DASH);
        assertThat(drawn.all("desc").get(0).getTextContent()).contains("In your hand: hub 3/4");
    }

    private static List<String> strokes(DrawnSvg drawn, String item) {
        List<String> strokes = new ArrayList<>();
        for (Element g : drawn.withAttribute("data-item")) {
            if (g.getAttribute("data-item").equals(item)) {
                var paths = g.getElementsByTagName("path");
                for (int i = 0; i < paths.getLength(); i++) {
                    Element p = (Element) paths.item(i);
                    if (p.hasAttribute("stroke")) {
                        strokes.add(p.getAttribute("stroke") + " " + p.getAttribute("stroke-width") + " "
                                + p.getAttribute("stroke-dasharray"));
                    }
                }
            }
        }
        return strokes;
    }

    @Test
    void a_part_in_for_the_trial_only_is_told_from_a_fitted_one_and_is_gone_afterwards() {
        Set<String> fitted = Set.of("main_case", "pinion", "PH_cone", "set_PH", "dummy_tube");
        DrawnSvg trial = SvgRules.check(
                SectionDrawing.svg(SampleUnits.A, SectionState.EMPTY.withFitted(fitted), "p", SectionView.FULL), "p");
        assertThat(trial.texts()).contains("in for the trial only");
        assertThat(drawnItems(trial)).contains("dummy_tube");
        assertThat(strokes(trial, "dummy_tube")).anyMatch(s -> s.endsWith(" 8 2.5"));
        DrawnSvg later = SvgRules.check(SectionDrawing.svg(SampleUnits.A, WHOLE, "p", SectionView.FULL), "p");
        assertThat(drawnItems(later)).doesNotContain("dummy_tube", "set_PH");
        assertThat(later.texts()).doesNotContain("in for the trial only");
    }

    @ParameterizedTest
    @ValueSource(strings = {"a", "b", "c", "d", "f"})
    void the_loop_is_written_with_every_length_and_its_limits(String id) {
        Clearance clearance = SampleUnits.clearance(id);
        SectionState state = WHOLE.withClearance(id);
        for (SectionView view : List.of(
                SectionView.FULL,
                SectionView.FULL.forWidth(390),
                SectionView.FULL.forWidth(1180).in(UnitSystem.INCH))) {
            DrawnSvg drawn = SvgRules.check(SectionDrawing.svg(SampleUnits.A, state, "p", view), "p");
            for (Length length : clearance.loop()) {
                String figure = (length.sign() > 0 ? "+ " : "− ") + figure(length.nominal(), view.units());
                assertThat(drawn.texts()).as(length.name()).anyMatch(t -> t.endsWith(figure));
            }
            assertThat(String.join(" ", drawn.texts())).contains(clearance.name());
            assertThat(drawn.texts()).contains(Integer.toString(clearance.loop().size()));
        }
    }

    private static String figure(double metres, UnitSystem units) {
        return units == UnitSystem.METRIC
                ? String.format(java.util.Locale.ROOT, "%.2f mm", metres * 1e3)
                : String.format(java.util.Locale.ROOT, "%.3f in", metres / 0.0254);
    }

    @Test
    void limits_of_a_preload_are_written_as_preload_and_of_an_end_play_as_play() {
        DrawnSvg preload =
                DrawnSvg.of(SectionDrawing.svg(SampleUnits.A, WHOLE.withClearance("b"), "p", SectionView.FULL));
        assertThat(preload.texts()).anyMatch(t -> t.endsWith("0.020 to 0.060 mm"));
        DrawnSvg play = DrawnSvg.of(SectionDrawing.svg(SampleUnits.A, WHOLE.withClearance("c"), "p", SectionView.FULL));
        assertThat(play.texts()).anyMatch(t -> t.endsWith("0.020 to 0.080 mm"));
    }

    @Test
    void the_place_of_the_shim_is_pointed_at_until_it_is_in() {
        Set<String> without = new HashSet<>(ALL);
        without.remove("sI");
        String name = "End play shim behind the input rear cup";
        DrawnSvg open = DrawnSvg.of(SectionDrawing.svg(
                SampleUnits.A, SectionState.EMPTY.withFitted(without).withClearance("c"), "p", SectionView.FULL));
        assertThat(open.texts()).contains(name + " goes here");
        DrawnSvg in = DrawnSvg.of(SectionDrawing.svg(SampleUnits.A, WHOLE.withClearance("c"), "p", SectionView.FULL));
        assertThat(in.texts()).contains(name);
        assertThat(strokes(in, "sI")).contains(DrawingStyle.BLUE + " 0.6 ");
    }

    @Test
    void a_shim_can_be_seen_even_where_its_true_width_is_less_than_a_line() {
        DrawnSvg drawn = DrawnSvg.of(SectionDrawing.svg(SampleUnits.A, WHOLE, "p", SectionView.FULL));
        double[] box = extent(drawn, "p-up-sI");
        assertThat(box[1] - box[0]).isGreaterThanOrEqualTo(3);
        double[] cup = extent(drawn, "p-up-IR_cup");
        double scale = (cup[1] - cup[0]) / 13.0;
        assertThat((box[0] + box[1]) / 2).isCloseTo(cup[1] + 0.5 * scale, org.assertj.core.data.Offset.offset(0.1));
    }

    /** Least and largest x of the first path of a group. */
    private static double[] extent(DrawnSvg drawn, String id) {
        Element g = drawn.withAttribute("id").stream()
                .filter(e -> e.getAttribute("id").equals(id))
                .findFirst()
                .orElseThrow();
        String d = ((Element) g.getElementsByTagName("path").item(0)).getAttribute("d");
        double[] box = {Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY};
        for (String point : d.split("[MLQCZ]")) {
            if (!point.isBlank()) {
                double x = Double.parseDouble(point.strip().split(" ")[0]);
                box[0] = Math.min(box[0], x);
                box[1] = Math.max(box[1], x);
            }
        }
        return box;
    }

    @Test
    void the_same_state_gives_the_same_picture() {
        SectionState state = WHOLE.withClearance("d").withInHand(Set.of("sL", "sR", "DL_cup"));
        String once = SectionDrawing.svg(SampleUnits.A, state, "p", SectionView.FULL);
        String again = SectionDrawing.svg(SampleUnits.unit("A"), state, "p", SectionView.FULL);
        assertThat(again).isEqualTo(once);
    }

    @Test
    void pictures_with_different_prefixes_share_no_id() {
        Set<String> one = ids(SectionDrawing.svg(SampleUnits.A, WHOLE, "one", SectionView.FULL));
        Set<String> two = ids(SectionDrawing.svg(SampleUnits.A, WHOLE, "two", SectionView.FULL));
        assertThat(one).isNotEmpty().doesNotContainAnyElementsOf(two);
    }

    private static Set<String> ids(String svg) {
        return DrawnSvg.of(svg).withAttribute("id").stream()
                .map(e -> e.getAttribute("id"))
                .collect(Collectors.toSet());
    }
}
