package shimwright.rebuild.learn;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import shimwright.mechanics.measure.Statistics;
import shimwright.mechanics.quantity.Kind;
import shimwright.rebuild.job.Basis;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.Job.Place;
import shimwright.rebuild.job.Job.Said;
import shimwright.rebuild.unit.model.Step.Phase;

/**
 * One number that a job ended with and that the next one has as well, so that they can stand in a row.
 *
 * @param which what it is of
 * @param id of the clearance, or hold point and check with a slash
 * @param what in words, where the entry has it; else empty
 * @param job its number
 * @param at when it was kept
 * @param value SI
 */
public record Figure(Of which, String id, String what, Kind kind, String job, Instant at, double value) {
    /** What numbers a job has. */
    public enum Of {
        /** Accepted value less the value aimed at. */
        FROM_AIM("from its aim"),
        /** Accepted value less what was predicted of the pack. */
        FROM_PREDICTION("from the prediction"),
        /** Standard deviation of the last three readings with the pack in, as the same gauge reads it again and again. */
        REPEAT("repeat readings"),
        /** A reading of a hold point, the mean of several: turning torques, drags, backlashes. */
        CHECK("");

        private final String words;

        Of(String words) {
            this.words = words;
        }

        /** After the name of the clearance. */
        public String words() {
            return words;
        }
    }

    private static final int LAST = 3;

    /** All numbers of a job. */
    public static List<Figure> of(Job job) {
        List<Figure> figures = new ArrayList<>();
        job.accepted().values().forEach(said -> accepted(job, said, figures));
        job.checks().values().stream()
                .filter(said -> !said.what().values().isEmpty())
                .forEach(said -> figures.add(new Figure(
                        Of.CHECK,
                        said.what().hold() + "/" + said.what().check(),
                        said.what().basis().getOrDefault("what", ""),
                        said.what().kind(),
                        job.opened().number(),
                        said.at(),
                        Statistics.mean(said.what().values()))));
        return List.copyOf(figures);
    }

    private static void accepted(Job job, Said<Entry.ClearanceAccepted> said, List<Figure> figures) {
        Entry.ClearanceAccepted accepted = said.what();
        Basis.of(accepted.basis())
                .ifPresent(basis -> figures.add(length(job, said, Of.FROM_AIM, accepted.value() - basis.aim())));
        if (!job.packOf(accepted.clearance()).isEmpty()) {
            figures.add(length(job, said, Of.FROM_PREDICTION, accepted.value() - accepted.predicted()));
        }
        repeat(job, accepted).ifPresent(spread -> figures.add(length(job, said, Of.REPEAT, spread)));
    }

    private static Figure length(Job job, Said<Entry.ClearanceAccepted> said, Of of, double value) {
        return new Figure(
                of, said.what().clearance(), "", Kind.LENGTH, job.opened().number(), said.at(), value);
    }

    /** Pooled over the indicators or places of a round; empty where fewer than three rounds count. */
    private static Optional<Double> repeat(Job job, Entry.ClearanceAccepted accepted) {
        List<List<Double>> rounds =
                job.rounds().getOrDefault(new Place(accepted.clearance(), accepted.phase()), List.of()).stream()
                        .map(said -> said.what().values())
                        .toList();
        if (accepted.phase() == Phase.TRIAL || rounds.size() < LAST) {
            return Optional.empty();
        }
        List<List<Double>> last = rounds.subList(rounds.size() - LAST, rounds.size());
        int columns = last.stream().mapToInt(List::size).min().orElse(0);
        double variance = 0;
        for (int column = 0; column < columns; column++) {
            int at = column;
            double deviation = Statistics.deviation(
                    last.stream().map(round -> round.get(at)).toList());
            variance += deviation * deviation / columns;
        }
        return columns == 0 ? Optional.empty() : Optional.of(Math.sqrt(variance));
    }
}
