package shimwright.bench.picture.section;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Area;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.w3c.dom.Element;
import shimwright.bench.picture.section.SceneGeometry.Placed;
import shimwright.bench.picture.svg.DrawnSvg;
import shimwright.bench.picture.svg.SvgRules;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Section;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Unit;
import shimwright.rebuild.unit.model.UnitType;

/** Shafts in line: the pilot of one in the bore of the other, and bearings whose rings sit on both. */
class InLineShaftsTest {
    private static final SectionPlane PLANE =
            new SectionPlane(false, 0, new Rectangle2D.Double(-0.05, -0.05, 0.25, 0.1), 2000, 0, 0);

    private static Section.Shaft shaft(String id, List<List<Double>> steps, List<List<Double>> bores, String item) {
        return new Section.Shaft(id, id, Section.Axis.X, List.of(0.0, 0.0), steps, bores, item, true);
    }

    /** An input with a pocket at its rear, an output whose pilot turns in it. */
    private static Unit unit(List<Item> items) {
        Section section = new Section(
                List.of(
                        shaft("in", List.of(List.of(0.0, 0.05, 0.04)), List.of(List.of(0.03, 0.05, 0.028)), ""),
                        shaft("out", List.of(List.of(0.031, 0.05, 0.016), List.of(0.05, 0.15, 0.03)), List.of(), "")),
                List.of());
        return SampleUnits.small(items, section, List.of());
    }

    private static Item item(String id, Item.Shape shape, String shaft, List<Double> along, List<Double> diameters) {
        return new Item(id, id, "", shape, shaft, along, diameters, List.of(), 1, false, false, false, "", Set.of());
    }

    private static Placed body(SceneGeometry geometry, String shaft) {
        return geometry.placed().stream()
                .filter(p -> p.body() && p.shaft().equals(shaft))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void thePilotStandsFreeInTheBore() {
        SceneGeometry geometry = SceneGeometry.of(unit(List.of()), Set.of(), PLANE);
        Area input = body(geometry, "in").figure().silhouette();
        Area both = new Area(input);
        both.intersect(body(geometry, "out").figure().silhouette());
        assertThat(both.isEmpty()).isTrue();
        assertThat(input.contains(0.04, 0.0139)).as("in the bore").isFalse();
        assertThat(input.contains(0.04, 0.0145)).as("in the wall").isTrue();
        assertThat(input.contains(0.029, 0)).as("before the bore").isTrue();
    }

    @Test
    void aTaperBearingInThePocketHasItsConeOnTheOtherShaft() {
        Item cup = item("cup", Item.Shape.TAPER_CUP, "in", List.of(0.034, 0.044), List.of(0.023, 0.028));
        Item cone = item("cone", Item.Shape.TAPER_CONE, "out", List.of(0.036, 0.048), List.of(0.016, 0.021));
        PartFigures figures = new PartFigures(unit(List.of(cup, cone)), 1e-4);
        assertThat(figures.of(cone).orElseThrow().pieces())
                .as("ring and roller")
                .hasSize(2);
    }

    @Test
    void aBearingRoundThePocketKeepsItsOwnRing() {
        Item pocketCone = item("p", Item.Shape.TAPER_CONE, "out", List.of(0.033, 0.047), List.of(0.016, 0.021));
        Item cup = item("cup", Item.Shape.TAPER_CUP, "in", List.of(0.03, 0.046), List.of(0.062, 0.075));
        Item cone = item("cone", Item.Shape.TAPER_CONE, "in", List.of(0.03, 0.05), List.of(0.04, 0.058));
        PartFigures figures = new PartFigures(unit(List.of(pocketCone, cup, cone)), 1e-4);
        double own = figures.of(cup).orElseThrow().box().getMinX();
        PartFigures alone = new PartFigures(unit(List.of(cup, cone)), 1e-4);
        assertThat(own).isEqualTo(alone.of(cup).orElseThrow().box().getMinX());
        assertThat(figures.of(cup)
                        .orElseThrow()
                        .silhouette()
                        .equals(alone.of(cup).orElseThrow().silhouette()))
                .isTrue();
    }

    @Test
    void aShaftStandsOnlyForWhatIsOnItself() {
        Item hub = item("hub", Item.Shape.HUB, "out", List.of(0.07, 0.09), List.of(0.03, 0.06));
        SectionState state = SectionState.EMPTY.withFitted(Set.of("hub"));
        DrawnSvg drawn = SvgRules.check(SectionDrawing.svg(unit(List.of(hub)), state, "p", SectionView.FULL), "p");
        List<Boolean> dashed = drawn.all("g").stream()
                .filter(g -> g.getAttribute("id").contains("shaft"))
                .map(g -> ((Element) g.getElementsByTagName("path").item(0)).hasAttribute("stroke-dasharray"))
                .toList();
        assertThat(dashed).as("the input is still to come, the output is there").containsExactlyInAnyOrder(true, false);
    }

    @ParameterizedTest
    @CsvSource({"hollinbridge-hb5, 620", "hollinbridge-hb5, 370", "ambleholt-l5-74, 620", "ambleholt-l5-74, 370"})
    void noStepsDrawingFailsAndNoNameIsCut(String id, double width) {
        UnitType type = SampleUnits.type(id);
        for (String variant : type.variants().keySet()) {
            Unit unit = type.resolve(variant);
            Set<String> fitted = new TreeSet<>();
            for (Step step : unit.type().steps()) {
                step.removes().forEach(fitted::remove);
                SectionState state = SectionState.EMPTY.withFitted(fitted).withInHand(Set.copyOf(step.installs()));
                state = step.clearance().isBlank() ? state : state.withClearance(step.clearance());
                String svg = SectionDrawing.svg(unit, state, "p", SectionView.FULL.forWidth(width));
                DrawnSvg drawn = SvgRules.check(svg, "p");
                assertThat(drawn.texts()).as(step.id()).noneMatch(text -> text.contains("…"));
                fitted.addAll(step.installs());
            }
        }
    }
}
