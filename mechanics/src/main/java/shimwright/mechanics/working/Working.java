package shimwright.mechanics.working;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import shimwright.mechanics.quantity.Kind;

/** The sheet of paper beside a calculation: each line gives back the very number it shows. Local to one calculation. */
public final class Working {
    private final List<Line> lines = new ArrayList<>();
    private final Set<String> cautions = new LinkedHashSet<>();

    /** Writes a line and returns its value; see {@link Line} for the parameters. */
    public double line(String symbol, String expression, double value, Kind kind, String source) {
        lines.add(new Line(symbol, expression, value, kind, source));
        return value;
    }

    /** A line of plain arithmetic, without a source. */
    public double line(String symbol, String expression, double value, Kind kind) {
        return line(symbol, expression, value, kind, "");
    }

    /** A plain sentence to read with the result; the same sentence is kept once. */
    public void caution(String sentence) {
        cautions.add(sentence);
    }

    /** Takes over the lines and cautions of a calculation used on the way, and returns its result. */
    public <T> T include(Worked<T> other) {
        lines.addAll(other.working());
        cautions.addAll(other.cautions());
        return other.result();
    }

    /** The result with everything written so far. */
    public <R> Worked<R> worked(R result) {
        return new Worked<>(result, lines, List.copyOf(cautions));
    }
}
