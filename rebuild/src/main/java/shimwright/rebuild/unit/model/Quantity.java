package shimwright.rebuild.unit.model;

import java.util.Objects;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.MeasureUnit;

/** A quantity of a check or a wear limit as the unit file states it: one value, not a record of the file with keys. */
public final class Quantity {
    private final double si;
    private final MeasureUnit unit;
    private final String text;

    /**
     * A stated quantity.
     *
     * @param si value in the SI unit of its kind, finite
     * @param unit in which the file writes it
     * @param text as the file writes it, such as {@code 0.50 mm (0.0197 in)}
     */
    public Quantity(double si, MeasureUnit unit, String text) {
        if (!Double.isFinite(si)) {
            throw new IllegalArgumentException("a stated quantity of " + si);
        }
        this.si = si;
        this.unit = unit;
        this.text = text;
    }

    /** Value in the SI unit of its kind. */
    public double si() {
        return si;
    }

    /** The unit in which the file writes it; the first where it writes it in two. */
    public MeasureUnit unit() {
        return unit;
    }

    /** As the file writes it. */
    public String text() {
        return text;
    }

    /** What is measured, as its unit says. */
    public Kind kind() {
        return unit.kind();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Quantity q && si == q.si && unit.equals(q.unit) && text.equals(q.text);
    }

    @Override
    public int hashCode() {
        return Objects.hash(si, unit, text);
    }

    /** As the file writes it. */
    @Override
    public String toString() {
        return text;
    }
}
