package shimwright.rebuild.complaint;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The question whose answer is worth most next: by how much it lowers, on average over its answers, the entropy of the chances
 * (Shannon, A mathematical theory of communication, 1948).
 *
 * @param question still open
 * @param bits that its answer is worth on average, 0 or more
 */
public record TellingQuestion(CheckQuestion question, double bits) {
    /** Less than this is not worth asking. */
    private static final double LEAST = 0.05;

    /** The most telling one of those not answered; empty where none is worth asking. */
    public static Optional<TellingQuestion> next(CauseTables tables, List<Suspect> suspects, Set<String> answered) {
        return tables.questions().stream()
                .filter(question -> !answered.contains(question.id()))
                .map(question -> new TellingQuestion(question, bits(question, suspects)))
                .filter(telling -> telling.bits() >= LEAST)
                .reduce((one, other) -> other.bits() > one.bits() ? other : one);
    }

    private static double bits(CheckQuestion question, List<Suspect> suspects) {
        double gained = suspects.stream().mapToDouble(s -> plogp(s.chance())).sum();
        gained = -gained;
        for (String answer : question.answers().keySet()) {
            double of = suspects.stream()
                    .mapToDouble(suspect -> suspect.chance() * chance(suspect, question, answer))
                    .sum();
            if (of > 0) {
                gained += of
                        * suspects.stream()
                                .mapToDouble(
                                        suspect -> plogp(suspect.chance() * chance(suspect, question, answer) / of))
                                .sum();
            }
        }
        return Math.max(0, gained);
    }

    private static double chance(Suspect suspect, CheckQuestion question, String answer) {
        Cause cause = suspect.cause();
        return cause == null ? 1.0 / question.answers().size() : cause.chance(question, answer);
    }

    private static double plogp(double p) {
        return p <= 0 ? 0 : p * Math.log(p) / Math.log(2);
    }
}
