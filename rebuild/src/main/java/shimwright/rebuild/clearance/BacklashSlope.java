package shimwright.rebuild.clearance;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import shimwright.mechanics.measure.Statistics;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.working.Line;
import shimwright.mechanics.working.Working;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Entry.PieceIn;
import shimwright.rebuild.job.Entry.RoundRead;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.LogEntry;
import shimwright.rebuild.job.Mistakes;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.Clearance.Position;
import shimwright.rebuild.unit.model.Clearance.Sense;
import shimwright.rebuild.unit.model.Step.Phase;

/**
 * How the backlash answered when the trial pack was changed between two readings: measured change over the change that the
 * effects of the unit file ask for. Between 0.95 and 1.05 both readings are believed (common practice, no source).
 *
 * @param before mean with the first pack, m
 * @param after mean with the second pack, m
 * @param expected change by the effects of the unit file, m
 * @param ratio measured change over expected
 * @param believed whether it lies within 5 %
 * @param say one sentence
 * @param working the lines of the calculation
 */
public record BacklashSlope(
        double before, double after, double expected, double ratio, boolean believed, String say, List<Line> working) {
    private static final double BELIEVED = 0.05;
    /** A change that is expected to be smaller tells nothing of the slope, m. */
    private static final double LEAST = 0.02e-3;

    private record Series(Map<String, List<PieceIn>> pack, Map<String, RoundRead> rounds) {}

    /** The slope from the last two trial packs that were read; empty for another clearance, or where one was read alone. */
    static Optional<BacklashSlope> of(Job job, Clearance clearance, Set<String> undone) {
        if (clearance.sense() != Sense.BACKLASH) {
            return Optional.empty();
        }
        List<Series> all = series(job, clearance, undone);
        if (all.size() < 2) {
            return Optional.empty();
        }
        Series first = all.get(all.size() - 2);
        Series second = all.get(all.size() - 1);
        double expected = 0;
        for (Position position : clearance.positions()) {
            expected += position.effect() * (thickness(second, position) - thickness(first, position));
        }
        return Math.abs(expected) < LEAST ? Optional.empty() : Optional.of(of(clearance, first, second, expected));
    }

    private static BacklashSlope of(Clearance clearance, Series first, Series second, double expected) {
        Working w = new Working();
        double before = w.line("mean with the first pack", "mean of the places", mean(first, clearance), Kind.LENGTH);
        double after = w.line("mean with the second pack", "mean of the places", mean(second, clearance), Kind.LENGTH);
        w.line("change by the effects of the unit file", "Σ effect × change of thickness", expected, Kind.LENGTH);
        double ratio =
                w.line("slope against theory", "(after − before) / expected", (after - before) / expected, Kind.NUMBER);
        boolean believed = Math.abs(ratio - 1) <= BELIEVED;
        String percent = String.format(Locale.ENGLISH, "%.1f %%", 100 * Math.abs(ratio - 1));
        String say = believed
                ? "The backlash answered to the change of the pack within " + percent + " of the theory."
                : "The backlash answered " + percent + (ratio > 1 ? " more" : " less")
                        + " than the theory asks: look for the outlier and read both again.";
        return new BacklashSlope(
                before, after, expected, ratio, believed, say, w.worked(say).working());
    }

    private static List<Series> series(Job job, Clearance clearance, Set<String> undone) {
        List<Series> all = new ArrayList<>();
        Set<String> mistakes = Mistakes.of(job);
        List<LogEntry> counting = job.entries().stream()
                .filter(kept -> !mistakes.contains(kept.draft().id()))
                .toList();
        for (LogEntry kept : counting) {
            if (kept.body() instanceof Entry.PackIn in
                    && in.clearance().equals(clearance.id())
                    && in.phase() == Phase.TRIAL
                    && (all.isEmpty() || !all.get(all.size() - 1).pack().equals(in.pieces()))) {
                all.add(new Series(in.pieces(), new LinkedHashMap<>()));
            } else if (kept.body() instanceof RoundRead round
                    && round.clearance().equals(clearance.id())
                    && round.phase() == Phase.TRIAL
                    && !all.isEmpty()) {
                all.get(all.size() - 1).rounds().put(kept.draft().id(), round);
            } else if (kept.body() instanceof Entry.RoundStruck struck) {
                all.forEach(series -> series.rounds().remove(struck.entry()));
            } else if (kept.body() instanceof Entry.StepUndone step && undone.contains(step.step())) {
                Series pack = all.isEmpty() ? null : all.get(all.size() - 1);
                all.clear();
                if (pack != null) {
                    all.add(new Series(pack.pack(), new LinkedHashMap<>()));
                }
            }
        }
        all.removeIf(series -> series.rounds().isEmpty());
        return all;
    }

    private static double thickness(Series series, Position position) {
        return Objects.requireNonNull(series.pack().getOrDefault(position.id(), List.of())).stream()
                .mapToDouble(PieceIn::thickness)
                .sum();
    }

    private static double mean(Series series, Clearance clearance) {
        List<RoundRead> rounds = List.copyOf(series.rounds().values());
        List<RoundRead> last = rounds.subList(Math.max(0, rounds.size() - clearance.rounds()), rounds.size());
        return Statistics.mean(
                last.stream().map(round -> clearance.value(round.values())).toList());
    }
}
