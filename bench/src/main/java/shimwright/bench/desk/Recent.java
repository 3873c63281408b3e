package shimwright.bench.desk;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToLongFunction;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/** Values by name, of which those that were longest not asked for are forgotten once they weigh too much together. */
final class Recent<V> {
    private final long most;
    private final ToLongFunction<V> weight;
    private final LinkedHashMap<String, V> values = new LinkedHashMap<>(16, 0.75f, true);

    /**
     * Keeps none yet.
     *
     * @param most what all may weigh together; the newest is kept whatever it weighs
     * @param weight of one, at the moment
     */
    Recent(long most, ToLongFunction<V> weight) {
        this.most = most;
        this.weight = weight;
    }

    synchronized @Nullable V get(String name) {
        return values.get(name);
    }

    synchronized void put(String name, V value) {
        values.put(name, value);
        shrink();
    }

    /** The value of a name, made where there is none; also the moment at which others are forgotten. */
    synchronized V of(String name, Function<String, V> make) {
        V value = Optional.ofNullable(values.get(name)).orElseGet(() -> make.apply(name));
        values.put(name, value);
        shrink();
        return value;
    }

    /** Puts another value in the place of one that is still there. */
    synchronized void change(String name, UnaryOperator<V> change) {
        V value = values.get(name);
        if (value != null) {
            put(name, change.apply(value));
        }
    }

    private void shrink() {
        long sum = values.values().stream().mapToLong(weight).sum();
        var oldest = values.entrySet().iterator();
        while (sum > most && values.size() > 1 && oldest.hasNext()) {
            Map.Entry<String, V> one = oldest.next();
            sum -= weight.applyAsLong(one.getValue());
            oldest.remove();
        }
    }
}
