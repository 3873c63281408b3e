package shimwright.mechanics.registry;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import shimwright.mechanics.axial.AxialSheets;
import shimwright.mechanics.bearing.BearingSheets;
import shimwright.mechanics.chart.ChartSheets;
import shimwright.mechanics.decision.DecisionSheets;
import shimwright.mechanics.fit.FitSheets;
import shimwright.mechanics.gauging.GaugingSheets;
import shimwright.mechanics.history.HistorySheets;
import shimwright.mechanics.lifting.LiftingSheets;
import shimwright.mechanics.oil.OilSheets;
import shimwright.mechanics.seal.SealSheets;
import shimwright.mechanics.shaft.ShaftSheets;
import shimwright.mechanics.spring.SpringSheets;
import shimwright.mechanics.study.StudySheets;
import shimwright.mechanics.synchro.SynchroSheets;
import shimwright.mechanics.thread.ThreadSheets;
import shimwright.mechanics.tooth.ToothSheets;
import shimwright.mechanics.worksheet.Worksheet;

/** Every worksheet by name. A topic adds itself with one line. */
public final class Registry {
    private static final List<Worksheet<?, ?>> ALL = Stream.<List<Worksheet<?, ?>>>of(
                    AxialSheets.ALL,
                    BearingSheets.ALL,
                    ChartSheets.ALL,
                    DecisionSheets.ALL,
                    FitSheets.ALL,
                    GaugingSheets.ALL,
                    HistorySheets.ALL,
                    LiftingSheets.ALL,
                    OilSheets.ALL,
                    SealSheets.ALL,
                    ShaftSheets.ALL,
                    SpringSheets.ALL,
                    StudySheets.ALL,
                    SynchroSheets.ALL,
                    ThreadSheets.ALL,
                    ToothSheets.ALL)
            .flatMap(List::stream)
            .sorted(Comparator.comparing(Worksheet::name))
            .toList();

    private Registry() {}

    /** All worksheets, by name. */
    public static List<Worksheet<?, ?>> all() {
        return ALL;
    }

    /** The worksheet of a name. */
    public static Optional<Worksheet<?, ?>> find(String name) {
        for (Worksheet<?, ?> sheet : ALL) {
            if (sheet.name().equals(name)) {
                return Optional.of(sheet);
            }
        }
        return Optional.empty();
    }
}
