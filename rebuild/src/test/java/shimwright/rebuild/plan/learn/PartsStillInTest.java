package shimwright.rebuild.plan.learn;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import shimwright.rebuild.unit.begin.Construction;
import shimwright.rebuild.unit.begin.Construction.Housing;
import shimwright.rebuild.unit.begin.Construction.Layout;
import shimwright.rebuild.unit.begin.Construction.Reverse;
import shimwright.rebuild.unit.begin.Construction.Shift;
import shimwright.rebuild.unit.begin.FirstUnit;
import shimwright.rebuild.unit.file.UnitFiles;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Unit;

/** What is offered as the next part off is never under a part that is still on. */
class PartsStillInTest {
    private static final Unit UNIT = unit();

    private static Unit unit() {
        Construction box = new Construction(
                Layout.ACROSS,
                Set.of(Housing.BELL, Housing.END_COVER),
                List.of(2, 1, 1, 1, 1),
                0,
                Reverse.SLIDING,
                Shift.RAILS,
                0);
        String text = FirstUnit.text(box, "Maker", "Model").orElseThrow();
        return UnitFiles.read("u.yaml", text).outcome().orElseThrow().resolve("A");
    }

    private static List<String> ids(List<Item> items) {
        return items.stream().map(Item::id).toList();
    }

    @Test
    void coversComeFirstAndWhatIsUnderThemIsNotOffered() {
        PartsStillIn all = PartsStillIn.of(UNIT, Set.of());
        assertThat(ids(all.next())).contains("bell", "end_cover", "drain_plug").doesNotContain("wheel_1", "diff_case");
        assertThat(ids(all.later())).contains("wheel_1", "diff_case", "main_case");
    }

    @Test
    void takingWhatIsOfferedStripsTheWholeBox() {
        Set<String> off = new HashSet<>();
        int count = UNIT.type().items().size();
        for (int i = 0; i < count; i++) {
            PartsStillIn in = PartsStillIn.of(UNIT, off);
            assertThat(in.next()).as("after " + off).isNotEmpty();
            assertThat(Stream.concat(in.next().stream(), in.later().stream())).hasSize(count - i);
            off.add(in.next().get(0).id());
        }
        assertThat(PartsStillIn.of(UNIT, off)).isEqualTo(new PartsStillIn(List.of(), List.of()));
    }

    @Test
    void whatIsTakenOutOfOrderIsGoneAllTheSame() {
        PartsStillIn in = PartsStillIn.of(UNIT, Set.of("wheel_3"));
        assertThat(ids(in.next())).doesNotContain("wheel_3");
        assertThat(ids(in.later())).doesNotContain("wheel_3");
    }
}
