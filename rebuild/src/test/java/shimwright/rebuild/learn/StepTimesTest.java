package shimwright.rebuild.learn;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import shimwright.mechanics.quantity.Kind;
import shimwright.rebuild.unit.begin.Construction;
import shimwright.rebuild.unit.begin.FirstUnit;
import shimwright.rebuild.unit.edit.OwnTimes;
import shimwright.rebuild.unit.edit.UnitEdit;
import shimwright.rebuild.unit.file.UnitFiles;
import shimwright.rebuild.unit.model.Component;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.UnitType;

/** Usual times are marked as such, and the shop's own take their place; printed ones stay. */
class StepTimesTest {
    private static final UnitType BEGUN = read(FirstUnit.text(
                    new Construction(
                            Construction.Layout.ACROSS,
                            Set.of(Construction.Housing.BELL),
                            List.of(1, 1, 1),
                            0,
                            Construction.Reverse.SLIDING,
                            Construction.Shift.RAILS,
                            0),
                    "Old Works",
                    "three")
            .orElseThrow());

    private static UnitType read(String text) {
        return UnitFiles.read("times.yaml", text).outcome().orElseThrow();
    }

    private static Remembered took(String job, double minutes) {
        return new Remembered(job, List.of(minutes * 60), Kind.TIME, "counted from what was kept before it");
    }

    private static Memories of(String step, Remembered... took) {
        return new Memories(Map.of(step, List.of(took)), Map.of(), Map.of(), Map.of(), Map.of(), List.of());
    }

    @Test
    void everyStepOfAFirstUnitSaysThatItsTimeIsCommonPractice() {
        assertThat(BEGUN.steps()).extracting(Step::origin).containsOnly("common practice");
    }

    @Test
    void theMiddleOfWhatItTookTakesThePlaceOfTheUsualTime() {
        Step step = BEGUN.steps().get(3);
        Memories earlier = of(
                step.id(),
                took("7", 11),
                took("8", 40),
                took("9", 13),
                new Remembered("9", List.of(), Kind.NUMBER, "a word of it"));
        OwnTimes own = StepTimes.of(BEGUN, earlier).orElseThrow();
        assertThat(own.seconds()).containsExactly(Map.entry(step.id(), 13 * 60.0));
        assertThat(own.origin()).isEqualTo("measured: the middle of jobs 7, 8, 9");
        UnitType timed = read(UnitEdit.text(BEGUN, own).orElseThrow());
        assertThat(timed.steps().get(3).duration()).isEqualTo(13 * 60.0);
        assertThat(timed.steps().get(3).origin()).isEqualTo(own.origin());
        assertThat(timed.steps().get(4)).isEqualTo(BEGUN.steps().get(4));
        // the same again changes nothing; a further job does
        assertThat(StepTimes.of(timed, earlier)).isEmpty();
        assertThat(StepTimes.of(timed, of(step.id(), took("10", 20)))).isPresent();
    }

    @Test
    void whatIsPrintedStays() {
        Step step = BEGUN.steps().get(3);
        List<Step> printed = BEGUN.steps().stream()
                .map(one -> one.equals(step) ? Component.with(one, "origin", "printed: book, page 4") : one)
                .toList();
        assertThat(StepTimes.of(Component.with(BEGUN, "steps", printed), of(step.id(), took("7", 11))))
                .isEmpty();
        assertThat(StepTimes.of(BEGUN, Memories.NONE)).isEmpty();
    }
}
