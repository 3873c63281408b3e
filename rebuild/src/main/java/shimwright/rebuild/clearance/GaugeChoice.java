package shimwright.rebuild.clearance;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.conformity.Conformity;
import shimwright.mechanics.conformity.Limits;
import shimwright.mechanics.conformity.Rule;
import shimwright.mechanics.measure.Uncertainties;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.Units;
import shimwright.rebuild.job.Entry.RoundRead;
import shimwright.rebuild.job.Job.Said;
import shimwright.rebuild.job.Shop;
import shimwright.rebuild.job.Shop.Gauge;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.Step.Phase;

/** Which gauge a reading is taken with: the unit file names one, the shop has its own. */
final class GaugeChoice {
    private GaugeChoice() {}

    /**
     * The gauges of the shop that can prove the clearance, the one that the file names first, then those of the kind that the reading asks for
     * (feelers into a gap, a dial or a depth gauge for the rest, by the name of the gauge), then the finest.
     *
     * @param phase which reading
     */
    static List<Gauge> fit(Clearance clearance, Phase phase, Shop shop) {
        String named = clearance.gauge(phase);
        return shop.gauges().values().stream()
                .filter(gauge -> gauge.kind() == Kind.LENGTH)
                .filter(gauge -> tooCoarse(clearance, gauge).isEmpty())
                .sorted(Comparator.comparing((Gauge gauge) -> !gauge.id().equals(named))
                        .thenComparing(gauge -> feeler(gauge) != (clearance.method() == Clearance.Method.FEELER))
                        .thenComparingDouble(gauge -> leastUncertainty(clearance, gauge)))
                .toList();
    }

    private static boolean feeler(Gauge gauge) {
        String name = gauge.name().toLowerCase(Locale.ROOT);
        return name.contains("feeler") || name.contains("blade");
    }

    /** The gauge in hand: that of the last round, else that of the file, else the first that fits; null where none will do. */
    static @Nullable Gauge inHand(Clearance clearance, Phase phase, List<Said<RoundRead>> rounds, Shop shop) {
        Optional<Gauge> used = rounds.isEmpty()
                ? Optional.empty()
                : shop.inUse(rounds.get(rounds.size() - 1).what().gauge());
        return used.or(() -> shop.inUse(clearance.gauge(phase)))
                .or(() -> fit(clearance, phase, shop).stream().findFirst())
                .orElse(null);
    }

    /**
     * What the gauges of some rounds may be wrong by, the worst of each kind: that of the entry counts, not that of the file.
     *
     * @return refused with every gauge that the shop has no data of
     */
    static Outcome<Gauge> of(Collection<RoundRead> rounds, Shop shop) {
        Set<String> ids = new LinkedHashSet<>();
        rounds.forEach(round -> ids.add(round.gauge()));
        List<Refusal> missing = new ArrayList<>();
        List<Gauge> used = new ArrayList<>();
        for (String id : ids) {
            shop.gauge(id).ifPresentOrElse(used::add, () -> missing.add(unknown(id)));
        }
        if (!missing.isEmpty() || used.isEmpty()) {
            return Outcome.refused(missing);
        }
        return Outcome.ok(new Gauge(
                String.join(" and ", ids),
                used.stream().map(Gauge::name).collect(Collectors.joining(" and ")),
                Kind.LENGTH,
                used.stream().mapToDouble(Gauge::step).max().orElse(0),
                used.stream().mapToDouble(Gauge::errorLimit).max().orElse(0),
                used.stream().mapToDouble(Gauge::retrace).max().orElse(0),
                used.stream().mapToDouble(Gauge::repeatability).max().orElse(0),
                used.stream().mapToDouble(Gauge::range).min().orElse(0)));
    }

    static Refusal unknown(String gauge) {
        return new Refusal(
                "gauge",
                "gauge " + gauge,
                "the shop has no data of this gauge, so its uncertainty is not known",
                "Enter its step and error limit in the shop, or say which gauge was used");
    }

    /** Why no reading with this gauge can prove the clearance; empty where one can. */
    static Optional<String> tooCoarse(Clearance clearance, Gauge gauge) {
        Limits limits = new Limits(clearance.lower(), clearance.upper());
        double best = Conformity.best(leastUncertainty(clearance, gauge), Double.POSITIVE_INFINITY, limits);
        return best >= Rule.DEFAULT.probability()
                ? Optional.empty()
                : Optional.of("A step of " + mm(gauge.step()) + " with an error limit of " + mm(gauge.errorLimit())
                        + " is too coarse: limits " + mm(clearance.upper() - clearance.lower())
                        + " apart cannot be proven with it. Take a finer gauge.");
    }

    /** The uncertainty that is left however often one reads: step twice, error limit, retrace. */
    private static double leastUncertainty(Clearance clearance, Gauge gauge) {
        double step = Uncertainties.stepTwice(gauge.step());
        double error = Uncertainties.rectangular(gauge.errorLimit());
        double retrace = Uncertainties.rectangular(gauge.retrace());
        return Math.abs(clearance.readingFactor()) * Math.sqrt(step * step + error * error + retrace * retrace);
    }

    private static String mm(double length) {
        return Quantities.print(length, Units.MM, 3);
    }
}
