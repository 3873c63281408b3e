package shimwright.rebuild.complaint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import shimwright.rebuild.demo.DemoUnit;

/** The general list holds together: common practice, no source. */
class CauseTablesTest {
    private static final CauseTables TABLES = CauseTables.shipped();

    @Test
    void openingsAreATreeInOrderAndEachCauseHasItsOpening() {
        Set<String> before = new HashSet<>(Set.of(""));
        for (StripDepth opening : TABLES.openings()) {
            assertThat(before).as(opening.id()).contains(opening.after());
            assertThat(before.add(opening.id())).as(opening.id()).isTrue();
            assertThat(opening.minutes()).isBetween(0.0, 240.0);
            // what an opening ends can be had before it
            assertThat(opening.ends())
                    .allSatisfy(cause -> assertThat(before)
                            .contains(TABLES.cause(cause).orElseThrow().after()));
        }
        assertThat(TABLES.causes()).allSatisfy(cause -> assertThat(before).contains(cause.after()));
    }

    @Test
    void causesSpeakOfQuestionsAndAnswersThatThereAre() {
        Set<String> ids = new HashSet<>();
        for (Cause cause : TABLES.causes()) {
            assertThat(ids.add(cause.id())).as(cause.id()).isTrue();
            assertThat(cause.share()).isBetween(0.5, 20.0);
            assertThat(cause.sees()).isBetween(0.5, 0.99);
            assertThat(cause.minutes()).isBetween(1.0, 60.0);
            assertThat(cause.tells()).as(cause.id()).containsKey("kind");
            cause.tells().forEach((question, weights) -> {
                CheckQuestion asked = TABLES.question(question).orElseThrow();
                weights.forEach((answer, weight) -> {
                    assertThat(weight).as(cause.id() + " " + answer).isBetween(0.01, 10.0);
                    assertThat(answer.equals(Cause.REST) || asked.answers().containsKey(answer))
                            .as(cause.id() + " " + question + " " + answer)
                            .isTrue();
                });
            });
        }
    }

    @Test
    void chancesOfTheAnswersToAQuestionAddUpToOne() {
        for (Cause cause : TABLES.causes()) {
            for (CheckQuestion question : TABLES.questions()) {
                assertThat(question.answers().keySet().stream()
                                .mapToDouble(answer -> cause.chance(question, answer))
                                .sum())
                        .isCloseTo(1, within(1e-12));
            }
        }
    }

    @Test
    void everyAnswerIsLikelyForSomeCause() {
        for (CheckQuestion question : TABLES.questions()) {
            double even = 1.0 / question.answers().size();
            question.answers()
                    .keySet()
                    .forEach(answer -> assertThat(TABLES.causes())
                            .as(question.id() + " " + answer)
                            .anyMatch(cause -> cause.chance(question, answer) > even));
        }
    }

    /** What the shipped units suspect is found again in the general list, but for a few things of their own. */
    @Test
    void causesOfTheShippedUnitsAreSpokenOf() {
        List<String> own = Stream.of(DemoUnit.type(), DemoUnit.inLine())
                .flatMap(type -> type.symptoms().stream())
                .flatMap(symptom -> symptom.causes().keySet().stream())
                .filter(name -> TABLES.spokenOf(name).isEmpty())
                .toList();
        assertThat(own)
                .containsExactlyInAnyOrder(
                        "dirt in a taper", "cup askew after a second heating", "side shims changed left for right");
    }

    @Test
    void whatLiesOnTheMagnetAndHowTheOilLooksIsExplained() {
        assertThat(TABLES.questions().stream()
                        .filter(question -> !question.means().isEmpty())
                        .map(CheckQuestion::id))
                .containsExactly("magnet", "oil");
        TABLES.questions().stream()
                .filter(question -> !question.means().isEmpty())
                .forEach(question -> assertThat(question.means().keySet())
                        .isEqualTo(question.answers().keySet()));
    }
}
