package shimwright.bench.picture.section;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Area;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import shimwright.bench.picture.svg.DrawnSvg;
import shimwright.bench.picture.svg.SvgRules;
import shimwright.rebuild.unit.begin.Construction;
import shimwright.rebuild.unit.begin.Construction.Housing;
import shimwright.rebuild.unit.begin.Construction.Layout;
import shimwright.rebuild.unit.begin.FirstUnit;
import shimwright.rebuild.unit.file.UnitFiles;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Unit;

/** The section that a box begins with which is in no file: whatever it is like, it can be read, and shows what turns and shifts. */
class FirstUnitSectionTest {
    private static final double TABLET = 620;
    private static final double PHONE = 370;

    private static Unit unit(Construction box) {
        String text = FirstUnit.text(box, "Maker", "Model").orElseThrow();
        return UnitFiles.read("begun", text).outcome().orElseThrow().resolve("A");
    }

    @Provide
    Arbitrary<Construction> boxes() {
        return Arbitraries.longs()
                .map(Random::new)
                .map(FirstUnitSectionTest::box)
                .filter(b -> b.faults().isEmpty());
    }

    private static Construction box(Random random) {
        Layout layout = List.of(Layout.values()).get(random.nextInt(3));
        Set<Housing> housings = EnumSet.noneOf(Housing.class);
        Stream.of(Housing.values()).filter(h -> random.nextInt(3) == 0).forEach(housings::add);
        int gears = Construction.FEWEST + random.nextInt(Construction.MOST - Construction.FEWEST + 1);
        boolean inLine = layout == Layout.IN_LINE;
        return new Construction(
                layout,
                housings,
                random.ints(gears, 0, 4).boxed().toList(),
                inLine ? random.nextInt(gears + 1) : 0,
                List.of(Construction.Reverse.values()).get(random.nextInt(2)),
                List.of(Construction.Shift.values()).get(random.nextInt(3)),
                inLine ? 1 + 2 * random.nextInt(2) : 0);
    }

    @Property(tries = 5)
    void everyStepIsDrawnWithNoNameCutOffNorOverAnother(@ForAll("boxes") Construction box) {
        Unit unit = unit(box);
        Set<String> fitted = new TreeSet<>();
        int at = 0;
        for (Step step : unit.type().steps()) {
            Set<String> hand = new TreeSet<>(step.installs());
            hand.addAll(step.builds());
            SectionState state = SectionState.EMPTY.withFitted(fitted).withInHand(hand);
            for (double width : at++ % 4 == 0 || hand.size() > 3 ? new double[] {TABLET, PHONE} : new double[0]) {
                String svg = SectionDrawing.svg(unit, state, "p", SectionView.FULL.forWidth(width));
                DrawnSvg drawn = SvgRules.check(svg, "p");
                assertThat(drawn.texts())
                        .as(box + " " + step.id())
                        .noneMatch(text -> text.contains("…"))
                        .noneMatch(text -> text.matches("\\d+ mm"));
            }
            fitted.addAll(hand);
        }
    }

    @Property(tries = 8)
    void whatTurnsAndWhatShiftsItIsDrawn(@ForAll("boxes") Construction box) {
        Unit unit = unit(box);
        Set<String> all = unit.type().items().stream().map(Item::id).collect(Collectors.toSet());
        DrawnSvg drawn = DrawnSvg.of(
                SectionDrawing.svg(unit, SectionState.EMPTY.withFitted(all), "p", SectionView.FULL.forWidth(TABLET)));
        Set<String> seen = drawn.withAttribute("data-item").stream()
                .map(e -> e.getAttribute("data-item"))
                .collect(Collectors.toSet());
        List<String> wanted = new ArrayList<>(all);
        wanted.removeIf(id ->
                !id.matches("(wheel|hub|sleeve|fork|rail|needles|ring|cone|idler)(_.*)?|.*_bearing|.*_shaft|.*seal")
                        || id.matches("counter_[23].*"));
        assertThat(seen).as(box.toString()).containsAll(wanted).contains("main_case");
    }

    @Test
    void aForkReachesIntoTheGrooveOfItsSleeveAndTouchesNothingElseOfIt() {
        Unit unit = unit(new Construction(
                Layout.IN_LINE,
                Set.of(),
                List.of(1, 1, 1, 1, 1),
                4,
                Construction.Reverse.SYNCHRONIZED,
                Construction.Shift.RAILS,
                1));
        SceneGeometry geometry = SceneGeometry.of(
                unit,
                Set.of(),
                new SectionPlane(false, 0, new java.awt.geom.Rectangle2D.Double(-0.3, -0.4, 1, 0.8), 1000, 0, 0));
        Set<String> forks = new HashSet<>();
        for (SceneGeometry.Placed fork : geometry.placed()) {
            if (fork.item().shape() == Item.Shape.FORK) {
                String marks = fork.item().id().substring("fork_".length());
                SceneGeometry.Placed sleeve = geometry.placed().stream()
                        .filter(p -> p.item().id().equals("sleeve_" + marks))
                        .findFirst()
                        .orElseThrow();
                Area both = fork.figure().silhouette().createTransformedArea(fork.at());
                assertThat(both.getBounds2D().intersects(sleeve.box()))
                        .as(marks)
                        .isTrue();
                both.intersect(sleeve.figure().silhouette().createTransformedArea(sleeve.at()));
                assertThat(both.isEmpty()).as(marks).isTrue();
                forks.add(marks);
            }
        }
        assertThat(forks).containsExactlyInAnyOrder("12", "34", "5R");
    }
}
