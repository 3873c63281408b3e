package shimwright.rebuild.unit.fault;

import java.util.Optional;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.nodes.Node;

/** A place in the text; the first line and the first column are 1. */
public record Place(int line, int column) {
    public static final Place START = new Place(1, 1);

    /** Where a node begins in the text. */
    public static Place of(Node node) {
        return of(node.getStartMark());
    }

    /** The place of a mark; {@link #START} where the reader gives none. */
    public static Place of(Optional<Mark> mark) {
        return mark.map(m -> new Place(m.getLine() + 1, m.getColumn() + 1)).orElse(START);
    }
}
