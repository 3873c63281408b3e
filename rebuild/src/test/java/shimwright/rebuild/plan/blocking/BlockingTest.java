package shimwright.rebuild.plan.blocking;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import shimwright.rebuild.demo.DemoUnit;
import shimwright.rebuild.plan.blocking.Finding.Kind;
import shimwright.rebuild.unit.begin.Construction;
import shimwright.rebuild.unit.begin.FirstUnit;
import shimwright.rebuild.unit.file.UnitFiles;
import shimwright.rebuild.unit.model.Unit;

/** The drawing against the steps of the demo file, whose reasons give the radii; and against files made wrong. */
class BlockingTest {
    private static Finding between(Unit unit, String first, String then) {
        return Blocking.of(unit).stream()
                .filter(f -> f.key().equals(first + " " + then))
                .findFirst()
                .orElseThrow();
    }

    private static UnitFiles.Good read(String text) {
        return (UnitFiles.Good) UnitFiles.read("u.yaml", text);
    }

    /** Steps of which the demo file is made to say nothing, or the contrary. */
    private static List<String> odd(String old, String fresh) {
        String text = UnitFiles.example();
        assertThat(text).contains(old);
        UnitFiles.Result result = UnitFiles.read("u.yaml", text.replace(old, fresh));
        assertThat(result.problems()).isEmpty();
        return DrawingComparison.report("u.yaml", (UnitFiles.Good) result).stream()
                .skip(1)
                .toList();
    }

    @Test
    void theDrawingAgreesWithEveryStepOfTheDemoFile() {
        for (Unit unit : List.of(DemoUnit.A, DemoUnit.B)) {
            assertThat(Blocking.of(unit)).hasSizeGreaterThan(90).noneMatch(Finding::differs);
        }
        assertThat(DrawingComparison.report("u.yaml", read(UnitFiles.example())))
                .singleElement()
                .asString()
                .startsWith("u.yaml: the drawing proves ");
    }

    @Test
    void theMeasuresAreThoseOfTheReasonsInTheDemoSource() {
        // B3: gear 4 reaches 40.1 (40.15), the dog ring of the 4th wheel 36.0: together more than 74
        assertThat(between(DemoUnit.A, "G01", "G02").why()).contains("40.15 and 36 are 76.15 together, 74 lie between");
        // B11: the nut's bore does not pass the bearing's inner ring of 15.75
        assertThat(between(DemoUnit.A, "G08", "G11").why()).contains("15.75");
        // B8: the 5th driving gear (44.7) covers the bore of the idler shaft at 44.35
        assertThat(between(DemoUnit.A, "R05", "Q03").why())
                .contains("9 and 44.7")
                .contains("44.35");
        // B10: the speed ring's bore (30.5) does not pass the right cone (33)
        assertThat(between(DemoUnit.A, "Y03A", "Y04").why()).contains("30.5 to 37 and 25 to 33");
        // B6: the idler in its place stops the input; reverse gear 19.4 + 30 and what comes before it over 44.35
        assertThat(between(DemoUnit.A, "G01", "S08").why()).contains("44.35 lie between the axes");
        // B19: the end cap closes the rear
        assertThat(between(DemoUnit.A, "Q05", "Q07").why()).contains("hole");
    }

    @Test
    void whatTheFileLeavesFreeIsNamedWithBothPlaces() {
        List<String> odd = odd(
                "after: {G00: same_part, G01: blocked, P06: same_part}\n    because: {G01: B3}",
                "after: {G00: same_part, P06: same_part}");
        assertThat(odd)
                .isNotEmpty()
                .anySatisfy(line -> assertThat(line)
                        .startsWith("u.yaml:")
                        .contains(" and u.yaml:")
                        .contains("G01 must come before G02")
                        .contains("74 lie between the axes"));
    }

    @Test
    void whatTheFileHasTheOtherWayRoundIsContradicted() {
        // the rings of the drawing exchanged: the washer W0 drawn behind the 4th wheel
        List<String> odd = odd(
                "along: 156.35 161.35 mm, diameters: 34.2 54 mm, material: steel}\n  - {id: sleeve_4",
                "along: 366.35 371.35 mm, diameters: 34.2 54 mm, material: steel}\n  - {id: sleeve_4");
        assertThat(odd)
                .anySatisfy(line -> assertThat(line).contains("the file has").contains("W0"));
    }

    @Test
    void whatCannotPassEitherWayNeedsARoute() {
        List<String> without = odd("diameters: 18 60 mm, sideways: true,", "diameters: 18 60 mm,");
        // the step has a route from the side, which is taken for an answer where neither passes
        assertThat(without).noneMatch(line -> line.contains("the other way round. Say under route"));
        assertThat(Blocking.of(DemoUnit.A))
                .filteredOn(f -> f.kind() == Kind.NEITHER)
                .isEmpty();
    }

    @Test
    void aSmallFileWithoutGeometryOfThatKindSaysNothingOdd() {
        assertThat(DrawingComparison.report("u.yaml", read(UnitFiles.starter())))
                .hasSizeLessThan(2);
    }

    /** What a box that is in no file begins with: every layout and housing. Nothing is concluded from a scheme. */
    @Test
    void aUnitThatIsBegunHasNoContradictionWithItsOwnScheme() {
        for (Construction.Layout layout : Construction.Layout.values()) {
            boolean inLine = layout == Construction.Layout.IN_LINE;
            for (Construction.Housing housing : Construction.Housing.values()) {
                Construction box = new Construction(
                        layout,
                        Set.of(housing),
                        Collections.nCopies(5, 1),
                        inLine ? 4 : 0,
                        Construction.Reverse.SYNCHRONIZED,
                        Construction.Shift.SINGLE_RAIL,
                        inLine ? 1 : 0);
                if (box.faults().isEmpty()) {
                    UnitFiles.Good good =
                            read(FirstUnit.text(box, "Maker", "Model").orElseThrow());
                    assertThat(DrawingComparison.report("u.yaml", good))
                            .as(box.toString())
                            .isEmpty();
                    assertThat(Blocking.items(good.type().resolve("A"), Set.of()))
                            .isEmpty();
                }
            }
        }
    }

    /** Taken for measured, the scheme contradicts no order of what is put onto one shaft: rings, hubs and wheels pass as they go on. */
    @Test
    void whatAUnitBeginsWithGoesOntoItsShaftInTheOrderOfItsSteps() {
        for (Construction.Layout layout : Construction.Layout.values()) {
            boolean inLine = layout == Construction.Layout.IN_LINE;
            for (int straight : inLine ? List.of(0, 2, 3, 4) : List.of(0)) {
                Construction box = new Construction(
                        layout,
                        Set.of(),
                        List.of(2, 3, 1, 2, 1),
                        straight,
                        Construction.Reverse.SYNCHRONIZED,
                        Construction.Shift.RAILS,
                        inLine ? 1 : 0);
                String text =
                        FirstUnit.text(box, "Maker", "Model").orElseThrow().replace("scheme: true", "scheme: false");
                assertThat(Blocking.of(read(text).type().resolve("A")))
                        .filteredOn(f -> f.kind() == Kind.CONTRADICTED)
                        .extracting(Finding::sentence)
                        .as(box.toString())
                        .isEmpty();
            }
        }
    }

    /** A wall in which a shaft turns and nothing else is drawn yet: its bearing may be larger than whatever must pass. */
    @Test
    void aWallThroughWhichOnlyAShaftRunsContradictsNothing() {
        String text = DemoUnit.inLineText();
        String bare = text.replaceAll(
                ", shape: (roller_outer|taper_cup|taper_cone), shaft: [a-z_]+, along: [^m]+ mm, diameters: [^m]+ mm",
                "");
        assertThat(bare).isNotEqualTo(text);
        UnitFiles.Result result = UnitFiles.read("hb5.yaml", bare);
        assertThat(result.problems()).isEmpty();
        assertThat(DrawingComparison.report("hb5.yaml", (UnitFiles.Good) result))
                .noneMatch(line -> line.contains("the hole has"));
    }

    /** A wall across the countershaft in which nothing is drawn: there may be a hole, so the file is not called wrong. */
    @Test
    void aWallWithoutADrawnHoleContradictsNothing() {
        String text = DemoUnit.inLineText();
        assertThat(text).contains("  castings:\n");
        String blind = text.replace(
                "  castings:\n",
                "  castings:\n    - {name: wall, item: retainer, points: [380 -110 mm, 380 -40 mm, 382 -40 mm, 382 -110 mm], closed: true}\n");
        UnitFiles.Result result = UnitFiles.read("hb5.yaml", blind);
        assertThat(result.problems()).isEmpty();
        assertThat(DrawingComparison.report("hb5.yaml", (UnitFiles.Good) result))
                .hasSize(1)
                .noneMatch(line -> line.contains("hole has 0"));
    }

    /** The needles lie in the pocket of the input shaft, which opens to the rear. */
    @Test
    void whatLiesInABoreOfAShaftGoesInByItsOpenEnd() {
        for (String variant : List.of("S", "L")) {
            Unit unit = DemoUnit.inLine().resolve(variant);
            assertThat(Blocking.of(unit)).noneMatch(Finding::differs);
        }
    }

    /** Needles that were left for a step of their own find the nose of the output shaft in their way. */
    @Test
    void aBoreWhoseEndIsShutLetsNothingInAnyMore() {
        String text = DemoUnit.inLineText();
        String in = "installs: [input_shaft, input_gear, input_bearing, pocket, ring_4]";
        assertThat(text).contains(in);
        String late = text.replace(in, "installs: [input_shaft, input_gear, input_bearing, ring_4]")
                .replace("  - id: S01\n", """
                          - id: A03
                            todo: Pocket needles in.
                            at: FRONT
                            after: {A02: same_part}
                            duration: 3 min
                            installs: [pocket]
                          - id: S01
                        """);
        UnitFiles.Result result = UnitFiles.read("hb5.yaml", late);
        assertThat(result.problems()).isEmpty();
        assertThat(DrawingComparison.report("hb5.yaml", (UnitFiles.Good) result))
                .anySatisfy(line -> assertThat(line)
                        .contains("the output shaft cannot pass the pocket needles")
                        .contains("Say under route of the later step (A01 or A03)"));
    }
}
