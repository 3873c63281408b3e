package shimwright.mechanics.outcome;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import java.util.function.UnaryOperator;

/**
 * What a calculation or a door returns: the value, or every reason why there is none. A refusal is a value; a bug
 * throws.
 *
 * @param <T> the value's type
 */
public sealed interface Outcome<T> {
    /** The value. */
    record Ok<T>(T value) implements Outcome<T> {
        public Ok {
            Objects.requireNonNull(value);
        }
    }

    /** All reasons at once; never empty. */
    record Refused<T>(List<Refusal> refusals) implements Outcome<T> {
        public Refused {
            refusals = List.copyOf(refusals);
            if (refusals.isEmpty()) {
                throw new IllegalArgumentException("refused without a reason");
            }
        }
    }

    static <T> Outcome<T> ok(T value) {
        return new Ok<>(value);
    }

    static <T> Outcome<T> refused(List<Refusal> refusals) {
        return new Refused<>(refusals);
    }

    static <T> Outcome<T> refused(Refusal refusal) {
        return new Refused<>(List.of(refusal));
    }

    /** All values, or all reasons of all that were refused. */
    static <T> Outcome<List<T>> all(List<Outcome<T>> outcomes) {
        List<T> values = new ArrayList<>();
        List<Refusal> refusals = new ArrayList<>();
        for (Outcome<T> outcome : outcomes) {
            if (outcome instanceof Ok<T> ok) {
                values.add(ok.value());
            } else if (outcome instanceof Refused<T> refused) {
                refusals.addAll(refused.refusals());
            }
        }
        return refusals.isEmpty() ? ok(List.copyOf(values)) : refused(refusals);
    }

    default boolean isOk() {
        return this instanceof Ok<T>;
    }

    /** The reasons; empty for a value. */
    default List<Refusal> refusals() {
        return this instanceof Refused<T> refused ? refused.refusals() : List.of();
    }

    /** The same, with each reason said as the caller says it. */
    default Outcome<T> reworded(UnaryOperator<Refusal> words) {
        return this instanceof Refused<T> refused
                ? new Refused<>(refused.refusals().stream().map(words).toList())
                : this;
    }

    /** The same, with every reason placed at one input of the caller. */
    default Outcome<T> placed(String key, String place) {
        return reworded(refusal -> refusal.placed(key, place));
    }

    default <U> Outcome<U> map(Function<? super T, ? extends U> use) {
        if (this instanceof Ok<T> ok) {
            return new Ok<>(use.apply(ok.value()));
        }
        return new Refused<>(refusals());
    }

    default <U> Outcome<U> flatMap(Function<? super T, Outcome<U>> use) {
        if (this instanceof Ok<T> ok) {
            return use.apply(ok.value());
        }
        return new Refused<>(refusals());
    }

    /** The value, where a refusal would be a bug of the caller. */
    default T orElseThrow() {
        if (this instanceof Ok<T> ok) {
            return ok.value();
        }
        throw new IllegalStateException(
                String.join(" ", refusals().stream().map(Refusal::sentence).toList()));
    }
}
