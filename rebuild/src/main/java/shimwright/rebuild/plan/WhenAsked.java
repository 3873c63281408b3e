package shimwright.rebuild.plan;

import java.util.AbstractList;
import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * A list that is made when somebody looks at it first, and once, as most who hold it never do. What makes it reads only
 * what never changes, so it is the same whenever that is.
 */
final class WhenAsked<T> extends AbstractList<T> {
    private @Nullable Supplier<List<T>> make;
    private List<T> made = List.of();

    WhenAsked(Supplier<List<T>> make) {
        this.make = make;
    }

    private synchronized List<T> made() {
        if (make != null) {
            made = List.copyOf(make.get());
            make = null;
        }
        return made;
    }

    @Override
    public T get(int index) {
        return made().get(index);
    }

    @Override
    public int size() {
        return made().size();
    }
}
