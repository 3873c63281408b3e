package shimwright.rebuild.unit.model;

import java.util.List;
import java.util.Optional;
import shimwright.mechanics.quantity.MeasureUnit;
import shimwright.mechanics.quantity.Units;

/** What is read off a gauge and judged by stated quantities: a check of a hold point or a wear limit. */
public interface Measurable {
    String id();

    /** What is read. */
    String what();

    UnitType.CheckKind kind();

    /** The pieces that are read one by one, such as left and right; empty where there is one. */
    List<String> pieces();

    /** Readings of each piece at least. */
    int places();

    /** What of the readings is judged. */
    Statistic judgedOn();

    /** Value = reading × this + {@link #readingOffset()}. */
    double readingFactor();

    /** What is added to it; nothing where the reading itself is the value. */
    Optional<Quantity> readingOffset();

    /** The tool of the unit file that it is read with; empty where none is named. */
    String gauge();

    /** The quantities by which it is judged, the one that decides first; empty for what is attested. */
    List<Quantity> stated();

    /**
     * The unit in which a bare number typed for it is taken: the one in which the file writes its limit, so that 0.5
     * beside a limit in bar is half a bar; the usual one of its kind where nothing is stated.
     */
    default MeasureUnit bareUnit() {
        return stated().isEmpty()
                ? Units.of(kind().quantity()).get(0)
                : stated().get(0).unit();
    }

    /** The value that a reading stands for, both in SI. */
    default double value(double reading) {
        return reading * readingFactor() + readingOffset().map(Quantity::si).orElse(0.0);
    }

    /** The reading that stands for a value, both in SI. */
    default double reading(double value) {
        return (value - readingOffset().map(Quantity::si).orElse(0.0)) / readingFactor();
    }

    /** Names of the fields that a page asks for: a piece each, or one without a name. */
    default List<String> fields() {
        return pieces().isEmpty() ? List.of("") : pieces();
    }

    /** Readings of each field at least: two of one field where its gap is the difference of the two. */
    default int readingsEach() {
        return pieces().isEmpty() && judgedOn() == Statistic.DIFFERENCE ? 2 : places();
    }
}
