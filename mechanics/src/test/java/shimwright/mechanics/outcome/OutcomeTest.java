package shimwright.mechanics.outcome;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

class OutcomeTest {
    @Test
    void aRefusalIsOneSentenceWithPlaceFactAndHint() {
        assertThat(Refusal.at("round 2", "\"abc\" is not a length", "Type a number such as 0.24 or 9.5 thou")
                        .sentence())
                .isEqualTo("round 2: \"abc\" is not a length. Type a number such as 0.24 or 9.5 thou.");
        assertThat(Refusal.at("", "Nothing typed.", "").sentence()).isEqualTo("Nothing typed.");
        assertThatThrownBy(() -> Refusal.at("a", " ", "b")).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void allFaultsComeBackAtOnce() {
        Outcome<List<Integer>> both = Outcome.all(List.of(
                Outcome.ok(1),
                Outcome.refused(Refusal.at("a", "first", "")),
                Outcome.ok(2),
                Outcome.refused(Refusal.at("b", "second", ""))));
        assertThat(both.refusals()).extracting(Refusal::place).containsExactly("a", "b");
        assertThat(Outcome.all(List.of(Outcome.ok(1), Outcome.ok(2))).orElseThrow())
                .containsExactly(1, 2);
    }

    @Test
    void mapAndFlatMapKeepTheReasons() {
        Outcome<Integer> no = Outcome.refused(Refusal.at("a", "no", ""));
        assertThat(no.map(x -> x + 1).isOk()).isFalse();
        assertThat(no.<Integer>flatMap(x -> Outcome.ok(x + 1)).refusals()).hasSize(1);
        assertThat(Outcome.ok(1).map(x -> x + 1).orElseThrow()).isEqualTo(2);
        assertThat(Outcome.ok(1).flatMap(x -> Outcome.ok(x + 2)).orElseThrow()).isEqualTo(3);
        assertThatThrownBy(no::orElseThrow).hasMessageContaining("a: no.");
    }
}
