package shimwright.rebuild.complaint;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import shimwright.mechanics.reference.Table;
import shimwright.rebuild.demo.DemoUnit;
import shimwright.rebuild.demo.DemoWorkbench;

/** What owners say, in their own words. The lines are ours. */
class OwnersWordsTest {
    private static Map<String, String> answers(String... said) {
        return OwnersWords.of(DemoUnit.type(), List.of(said)).answers();
    }

    private static List<String> symptoms(String... said) {
        return OwnersWords.of(DemoUnit.type(), List.of(said)).symptoms();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    jumps out of third on the overrun                    | kind=jumps gear=one load=overrun
                    It pops out of 5th when I lift off                   | kind=jumps gear=one load=overrun
                    whines when pulling, cold and hot                    | kind=whine load=drive heat=both
                    grinds going into reverse                            | kind=crunch gear=reverse
                    crunches into 2nd only when changed fast             | kind=crunch gear=one haste=fast
                    does not jump out, but whines in all gears           | kind=whine gear=all
                    never leaked a drop                                  |
                    rumbles in neutral, stops with the clutch down       | kind=growl gear=neutral clutch=stops
                    oil drips from the bell housing                      | kind=leak drips=clutch
                    clunk when drive is taken up                         | kind=clunk load=reversal
                    hard to get into first in the morning                | kind=stiff gear=one heat=cold
                    growls in left bends, follows the road speed         | kind=growl bends=yes follows=road
                    stuck in fourth                                      | kind=locked gear=one
                    no drive in third                                    | kind=nodrive gear=one
                    jumps out of third or fourth                         | kind=jumps gear=pair
                    quiet on the pull                                    |
                    it rattles and whines                                |
                    rebuilt two years ago by another shop                |
                    """)
    void aLineSaysOfTheCheckWhatItSays(String said, String answers) {
        assertThat(String.join(
                        " ",
                        answers(said).entrySet().stream()
                                .map(one -> one.getKey() + "=" + one.getValue())
                                .sorted()
                                .toList()))
                .isEqualTo(
                        answers == null
                                ? ""
                                : String.join(
                                        " ",
                                        List.of(answers.split(" ")).stream()
                                                .sorted()
                                                .toList()));
    }

    @Test
    void theFirstLineThatSpeaksOfAQuestionHolds() {
        assertThat(answers("jumps out of third", "only when cold", "in all gears"))
                .isEqualTo(Map.of("kind", "jumps", "gear", "one", "heat", "cold"));
    }

    @Test
    void anotherKindOfTroubleIsAnotherComplaint() {
        OwnersWords words = OwnersWords.of(
                DemoUnit.type(),
                List.of("whines on the overrun", "spits fifth out going down hill", "whines when cold"));
        assertThat(words.answers()).isEqualTo(Map.of("kind", "whine", "load", "overrun", "heat", "cold"));
        assertThat(words.others()).containsExactly("jumps");
    }

    @Test
    void knownSymptomsAreFoundInOtherWords() {
        assertThat(symptoms("jumping out of fifth on the overrun")).containsExactly("Y6");
        assertThat(symptoms("crunches going into third")).containsExactly("Y8");
        assertThat(symptoms("oil at the left drive flange")).containsExactly("Y5");
        assertThat(symptoms("it drinks petrol")).isEmpty();
    }

    /** Each symptom of the shipped unit, said as it stands, is found again. */
    @Test
    void eachSymptomIsFoundInItsOwnWords() {
        assertThat(DemoUnit.type().symptoms())
                .allSatisfy(symptom -> assertThat(symptoms(symptom.says())).contains(symptom.id()));
    }

    @Test
    void theOwnerOfTheDemoIsUnderstood() {
        OwnersWords words =
                OwnersWords.of(DemoUnit.type(), DemoWorkbench.opening().said());
        assertThat(words.answers()).isEqualTo(Map.of("kind", "whine", "load", "overrun"));
    }

    @Test
    void waysOfSayingItSpeakOfAnswersThatThereAre() {
        for (Table.Row row : Table.resource("/complaint/owner.csv").rows()) {
            assertThat(CauseTables.shipped()
                            .question(row.text("question"))
                            .orElseThrow()
                            .answers())
                    .containsKey(row.text("answer"));
        }
    }
}
