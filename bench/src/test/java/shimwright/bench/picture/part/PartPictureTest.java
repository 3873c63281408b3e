package shimwright.bench.picture.part;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import shimwright.bench.picture.section.SampleUnits;
import shimwright.bench.picture.svg.DrawnSvg;
import shimwright.bench.picture.svg.SvgRules;
import shimwright.mechanics.quantity.UnitSystem;
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
    void no_step_is_without_a_picture_of_its_part(String id, String variant) {
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
}
