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
import shimwright.mechanics.conformity.Conformity;
import shimwright.mechanics.conformity.Limits;
import shimwright.mechanics.conformity.Rule;
import shimwright.mechanics.measure.Uncertainties;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.Units;
import shimwright.rebuild.job.Entry.GaugeThen;
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

    /**
     * The gauges in hand: those of the last round, else those of the file, else the first that fits; of a difference one for
     * each length. Empty where the shop has none that will do.
     */
    static List<Gauge> inHand(Clearance clearance, Phase phase, List<Said<RoundRead>> rounds, Shop shop) {
        List<String> last = rounds.isEmpty()
                ? List.of()
                : marks(rounds.get(rounds.size() - 1).what());
        List<String> named = clearance.gauges(phase);
        List<Gauge> hand = new ArrayList<>();
        for (int i = 0; i < named.size(); i++) {
            String own = named.get(i);
            Optional<Gauge> used = i < last.size() ? shop.inUse(last.get(i)) : Optional.empty();
            used.or(() -> shop.inUse(own))
                    .or(() -> fit(clearance, phase, shop).stream().findFirst())
                    .ifPresent(hand::add);
        }
        return hand.size() == named.size() ? List.copyOf(hand) : List.of();
    }

    /** The marks of what a round was read with. */
    private static List<String> marks(RoundRead round) {
        return round.readWith().isEmpty()
                ? List.of(round.gauge())
                : round.readWith().stream().map(GaugeThen::gauge).toList();
    }

    /** A gauge as it is now, to be kept with what is read with it. */
    static GaugeThen then(Gauge gauge) {
        return new GaugeThen(
                gauge.id(), gauge.name(), gauge.step(), gauge.errorLimit(), gauge.retrace(), gauge.repeatability());
    }

    /**
     * What the gauges of some rounds may be wrong by, the worst of each kind: as each was when it was read, and where an old
     * entry does not say, as it is now. Of a difference the two lengths' own, joined as the root of the sum of squares: they
     * are read far apart, so the error of one gauge does not cancel (JCGM 100:2008 5.1.2).
     *
     * @return refused with every gauge that the shop has no data of, and where a difference does not say both
     */
    static Outcome<Gauge> of(Clearance clearance, Collection<RoundRead> rounds, Shop shop) {
        int lengths = clearance.method() == Clearance.Method.DIFFERENCE ? 2 : 1;
        List<Refusal> missing = new ArrayList<>();
        List<Gauge> joined = new ArrayList<>();
        for (int i = 0; i < lengths; i++) {
            Set<GaugeThen> all = new LinkedHashSet<>();
            for (RoundRead round : rounds) {
                then(round, i, shop).ifPresentOrElse(all::add, () -> missing.add(unknown(round.gauge())));
            }
            if (missing.isEmpty() && !all.isEmpty()) {
                joined.add(worst(all));
            }
        }
        if (!missing.isEmpty() || joined.isEmpty()) {
            return Outcome.refused(missing.stream().distinct().toList());
        }
        return Outcome.ok(together(joined));
    }

    /** What the gauge of one length of a round could do; empty where neither the round nor the shop says. */
    private static Optional<GaugeThen> then(RoundRead round, int length, Shop shop) {
        if (round.readWith().isEmpty()) {
            return length == 0 ? shop.gauge(round.gauge()).map(GaugeChoice::then) : Optional.empty();
        }
        return length < round.readWith().size() ? Optional.of(round.readWith().get(length)) : Optional.empty();
    }

    private static Gauge worst(Set<GaugeThen> all) {
        return new Gauge(
                all.stream().map(GaugeThen::gauge).distinct().collect(Collectors.joining(" and ")),
                all.stream().map(GaugeThen::name).distinct().collect(Collectors.joining(" and ")),
                Kind.LENGTH,
                all.stream().mapToDouble(GaugeThen::step).max().orElseThrow(),
                all.stream().mapToDouble(GaugeThen::errorLimit).max().orElseThrow(),
                all.stream().mapToDouble(GaugeThen::retrace).max().orElseThrow(),
                all.stream().mapToDouble(GaugeThen::repeatability).max().orElseThrow(),
                0);
    }

    /** One gauge for a difference: its half-widths are those of both as the root of the sum of squares. */
    static Gauge together(List<Gauge> gauges) {
        return gauges.size() == 1
                ? gauges.get(0)
                : gauges.stream()
                        .reduce((a, b) -> new Gauge(
                                a.id() + " and " + b.id(),
                                a.name() + " and " + b.name(),
                                Kind.LENGTH,
                                Math.hypot(a.step(), b.step()),
                                Math.hypot(a.errorLimit(), b.errorLimit()),
                                Math.hypot(a.retrace(), b.retrace()),
                                Math.hypot(a.repeatability(), b.repeatability()),
                                Math.min(a.range(), b.range())))
                        .orElseThrow();
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
