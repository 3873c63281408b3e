package shimwright.rebuild.inspect;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import shimwright.rebuild.unit.model.Measurable;
import shimwright.rebuild.unit.model.Quantity;
import shimwright.rebuild.unit.model.Statistic;
import shimwright.rebuild.unit.model.UnitType.CheckKind;

/**
 * Limits that stand by themselves, as on the sheet of work that comes back: each reading counts, and nothing is known of the part but them.
 *
 * @param what is read
 * @param lower empty where there is none
 * @param upper empty where there is none
 */
public record LimitsAlone(String id, String what, CheckKind kind, Optional<Quantity> lower, Optional<Quantity> upper)
        implements Measurable {
    @Override
    public List<String> pieces() {
        return List.of();
    }

    @Override
    public int places() {
        return 1;
    }

    @Override
    public Statistic judgedOn() {
        return Statistic.EACH;
    }

    @Override
    public double readingFactor() {
        return 1;
    }

    @Override
    public Optional<Quantity> readingOffset() {
        return Optional.empty();
    }

    @Override
    public String gauge() {
        return "";
    }

    @Override
    public List<Quantity> stated() {
        return Stream.of(lower, upper).flatMap(Optional::stream).toList();
    }
}
