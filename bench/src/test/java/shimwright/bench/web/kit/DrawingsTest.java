package shimwright.bench.web.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.ZoneOffset;
import java.util.Set;
import org.junit.jupiter.api.Test;
import shimwright.bench.picture.section.SampleUnits;
import shimwright.bench.picture.section.SectionState;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Unit;

/** A drawing is made once while nothing of it changes, and anew when anything does. */
class DrawingsTest {
    private static final Show METRIC = new Show(UnitSystem.METRIC, ZoneOffset.UTC);
    private static final Show INCH = new Show(UnitSystem.INCH, ZoneOffset.UTC);

    private final Unit unit = SampleUnits.A;

    @Test
    void aDrawingIsKeptWhileUnitStateAndMeasureAreTheSame() {
        String item = unit.type().items().stream().map(Item::id).findFirst().orElseThrow();
        SectionState one = SectionState.EMPTY.withFitted(Set.of(item));
        Drawings first = Drawings.of("job-of-drawings", unit, SectionState.EMPTY, "build", METRIC);
        assertThat(Drawings.of("job-of-drawings", unit, SectionState.EMPTY, "build", METRIC))
                .isSameAs(first);
        Drawings fitted = Drawings.of("job-of-drawings", unit, one, "build", METRIC);
        assertThat(fitted.wide()).isNotEqualTo(first.wide());
        assertThat(Drawings.of("job-of-drawings", unit, SectionState.EMPTY, "build", METRIC))
                .isEqualTo(first);
        assertThat(Drawings.of("job-of-drawings", unit, one, "build", INCH)).isNotSameAs(fitted);
        // another variant of the same unit has other parts
        Drawings other = Drawings.of("job-of-drawings", SampleUnits.unit("B"), SectionState.EMPTY, "build", METRIC);
        assertThat(other.wide()).isNotEqualTo(first.wide());
    }
}
