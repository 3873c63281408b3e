package shimwright.rebuild.job;

import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * What a pure function said of a job and its unit, held until it is asked of others: one page asks the same of them many times over.
 * They are compared as the very same values, for a log head is folded once.
 *
 * @param <A> the answer, which nobody changes
 */
public final class LastAsked<A> {
    private volatile @Nullable Known<A> known;

    private record Known<A>(Object one, Object other, A answer) {}

    /** Nothing was asked yet. */
    public LastAsked() {}

    /**
     * The answer for two values, worked out where the last question was another one.
     *
     * @param one all that the answer depends on, together with {@code other}
     * @param other the rest of it
     * @param work gives the answer; always the same for the same two
     */
    public A of(Object one, Object other, Supplier<A> work) {
        Known<A> last = known;
        if (last != null && last.one() == one && last.other() == other) {
            return last.answer();
        }
        A answer = work.get();
        known = new Known<>(one, other, answer);
        return answer;
    }
}
