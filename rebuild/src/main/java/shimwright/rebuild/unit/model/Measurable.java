package shimwright.rebuild.unit.model;

import java.util.List;
import shimwright.mechanics.quantity.Unit;
import shimwright.mechanics.quantity.Units;

/** What is read off a gauge and judged by stated quantities: a check of a hold point or a wear limit. */
public interface Measurable {
    String id();

    /** What is read. */
    String what();

    UnitType.CheckKind kind();

    /** The quantities by which it is judged, the one that decides first; empty for what is attested. */
    List<Quantity> stated();

    /**
     * The unit in which a bare number typed for it is taken: the one in which the file writes its limit, so that 0.5
     * beside a limit in bar is half a bar; the usual one of its kind where nothing is stated.
     */
    default Unit bareUnit() {
        return stated().isEmpty()
                ? Units.of(kind().quantity()).get(0)
                : stated().get(0).unit();
    }
}
