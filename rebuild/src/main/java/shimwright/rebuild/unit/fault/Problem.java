package shimwright.rebuild.unit.fault;

import java.util.Comparator;
import shimwright.mechanics.outcome.Refusal;

/**
 * One thing that is wrong in a unit file.
 *
 * @param file name of the file as handed in
 * @param line line, the first is 1
 * @param column column, the first is 1
 * @param fact what was found
 * @param hint what to do about it; may be empty
 */
public record Problem(String file, int line, int column, String fact, String hint) implements Comparable<Problem> {
    private static final Comparator<Problem> PLACE = Comparator.comparingInt(Problem::line)
            .thenComparingInt(Problem::column)
            .thenComparing(Problem::fact);

    /** Where it stands: {@code file:line:column}. */
    public String place() {
        return file + ":" + line + ":" + column;
    }

    /** The same as a refusal. */
    public Refusal refusal() {
        return new Refusal(place(), fact, hint);
    }

    /** The whole problem as one line: {@code file:line:column: fact. Hint.} */
    public String sentence() {
        return refusal().sentence();
    }

    /** By line, then by column. */
    @Override
    public int compareTo(Problem other) {
        return PLACE.compare(this, other);
    }
}
