package shimwright.bench.picture.part;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import shimwright.bench.picture.section.SampleUnits;
import shimwright.bench.picture.svg.DrawnSvg;
import shimwright.bench.picture.svg.SvgRules;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.rebuild.part.Family;
import shimwright.rebuild.part.StandardPart;
import shimwright.rebuild.part.StandardParts;
import shimwright.rebuild.unit.begin.Construction;
import shimwright.rebuild.unit.begin.FirstUnit;
import shimwright.rebuild.unit.file.UnitFiles;
import shimwright.rebuild.unit.model.Fastener;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Unit;

class PartPictureTest {
    private static DrawnSvg check(String svg, String what) {
        DrawnSvg drawn;
        try {
            drawn = SvgRules.check(svg, "p");
        } catch (AssertionError e) {
            throw new AssertionError(what + ": " + e.getMessage(), e);
        }
        assertThat(drawn.width()).as(what).isLessThanOrEqualTo(390);
        assertThat(drawn.all("path")).as(what).isNotEmpty();
        return drawn;
    }

    @ParameterizedTest
    @CsvSource({"ambleholt-l5-74, A", "ambleholt-l5-74, B", "hollinbridge-hb5, S", "hollinbridge-hb5, L"})
    void noStepIsWithoutAPictureOfItsPart(String id, String variant) {
        Unit unit = SampleUnits.type(id).resolve(variant);
        List<String> unknown = new ArrayList<>();
        for (Step step : unit.type().steps()) {
            Set<String> items = new TreeSet<>(step.installs());
            items.addAll(step.builds());
            items.addAll(step.removes());
            for (String item : items) {
                String svg = PartPicture.of(unit, unit.item(item), Optional.of(step), "p", UnitSystem.METRIC);
                DrawnSvg drawn = check(svg, step.id() + " " + item);
                if (drawn.texts().stream().anyMatch(t -> t.contains("is not known"))) {
                    unknown.add(item);
                }
            }
            for (String fastener : step.fasteners()) {
                check(
                        PartPicture.of(unit, unit.fastener(fastener), "p", UnitSystem.METRIC),
                        step.id() + " " + fastener);
            }
        }
        assertThat(unknown).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(Family.class)
    void everyRowOfTheStandardTablesDraws(Family family) {
        List<StandardPart> rows = StandardParts.shipped().all().stream()
                .filter(part -> part.family() == family)
                .toList();
        assertThat(rows).isNotEmpty();
        for (StandardPart row : rows) {
            DrawnSvg drawn = check(PartPicture.of(row, "p", UnitSystem.METRIC), row.designation());
            assertThat(String.join(" ", drawn.texts())).as(row.designation()).contains("from the standard");
        }
        check(PartPicture.of(rows.get(0), "p", UnitSystem.INCH), "inches");
    }

    /** 6206 is 30 x 62 x 16 (ISO 15:2017), 32208 is 40 x 80 x 24.75 (ISO 355:2019), M8 is 13 across flats (ISO 4017:2022); from memory. */
    @ParameterizedTest
    @CsvSource({"6206, ⌀30 ⌀62 16", "32208, ⌀40 ⌀80 24.75", "40x55x8, ⌀40 ⌀55 8", "M8, M8 13 5.3", "HK2516, ⌀25 ⌀32 16"
    })
    void theSizesOfTheStandardStandAtTheirLines(String stamp, String numbers) {
        StandardPart part = StandardParts.shipped()
                .byStamp(stamp)
                .orElseThrow()
                .matches()
                .get(0)
                .part();
        assertThat(DrawnSvg.of(PartPicture.of(part, "p", UnitSystem.METRIC)).texts())
                .contains(numbers.split(" "));
    }

    @Test
    void aNumberSaysWhereItComesFromAndNoneIsInvented() {
        Unit unit = SampleUnits.A;
        String seal = told(unit, "flange_seal");
        assertThat(seal)
                .contains("from its name in the unit file", "inside\u00a040", "outside\u00a055", "width\u00a08");
        assertThat(told(unit, "hub_34")).contains("from the unit file", "inside\u00a033", "outside\u00a062");
        assertThat(told(unit, "sP")).contains("Its thickness is chosen for").doesNotContain("1.15");
        for (String outline : List.of("fork_12", "rail_12", "breather", "keys_34", "spider_pin", "side_gears")) {
            assertThat(told(unit, outline)).contains("not to scale").doesNotContainPattern("In mm");
        }
        Fastener bolt = unit.fastener("V2");
        String words = String.join(
                " ",
                DrawnSvg.of(PartPicture.of(unit, bolt, "p", UnitSystem.METRIC)).texts());
        assertThat(words)
                .contains(
                        "from the unit file: length\u00a030, thread\u00a08",
                        "from the standard:",
                        "across flats\u00a013");
    }

    private static String told(Unit unit, String item) {
        return String.join(
                " ",
                DrawnSvg.of(PartPicture.of(unit, unit.item(item), Optional.empty(), "p", UnitSystem.METRIC))
                        .texts());
    }

    @Test
    void aCoverHasAsManyHolesAsItsStepTightensBolts() {
        Unit unit = SampleUnits.A;
        Step step = unit.type().steps().stream()
                .filter(s ->
                        s.installs().contains("left_cover") && s.fasteners().contains("V2"))
                .findFirst()
                .orElseThrow();
        String svg = PartPicture.of(unit, unit.item("left_cover"), Optional.of(step), "p", UnitSystem.METRIC);
        assertThat(DrawnSvg.of(svg).texts()).contains("Held by 9 bolts.");
    }

    @Test
    void whereNothingFitsItsNameStandsThereAndAPhotographIsAskedFor() {
        Item odd = Item.plain("odd", "grommet & <thing>", "", 1);
        DrawnSvg drawn = check(PartPicture.of(SampleUnits.A, odd, Optional.empty(), "p", UnitSystem.METRIC), "odd");
        assertThat(String.join(" ", drawn.texts())).contains("Grommet & <thing>", "a photograph of it helps");
    }

    @ParameterizedTest
    @EnumSource(Construction.Layout.class)
    void aSchemeGivesNoNumber(Construction.Layout layout) {
        boolean inLine = layout == Construction.Layout.IN_LINE;
        for (Construction.Shift shift : Construction.Shift.values()) {
            Construction box = new Construction(
                    layout,
                    inLine
                            ? Set.of(Construction.Housing.BELL, Construction.Housing.PLATE, Construction.Housing.TAIL)
                            : Set.of(Construction.Housing.BELL, Construction.Housing.END_COVER),
                    List.of(3, 2, 1, 1, 1),
                    inLine ? 4 : 0,
                    Construction.Reverse.SLIDING,
                    shift,
                    inLine ? 1 : 0);
            String text = FirstUnit.text(box, "Maker", "Model").orElseThrow();
            Unit unit =
                    UnitFiles.read("begun.yaml", text).outcome().orElseThrow().resolve("A");
            for (Item item : unit.type().items()) {
                DrawnSvg drawn =
                        check(PartPicture.of(unit, item, Optional.empty(), "p", UnitSystem.METRIC), item.name());
                assertThat(String.join(" ", drawn.texts()))
                        .as(item.name())
                        .contains("not to scale")
                        .doesNotContain("from the unit file", "is not known");
            }
        }
    }
}
