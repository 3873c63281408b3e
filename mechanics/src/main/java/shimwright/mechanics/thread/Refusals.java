package shimwright.mechanics.thread;

import java.util.List;
import java.util.stream.Stream;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;

/** All refusals of several outcomes at once. */
final class Refusals {
    private Refusals() {}

    static List<Refusal> of(Outcome<?>... outcomes) {
        return Stream.of(outcomes)
                .flatMap(outcome -> outcome.refusals().stream())
                .toList();
    }
}
