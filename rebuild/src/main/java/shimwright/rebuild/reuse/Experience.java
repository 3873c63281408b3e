package shimwright.rebuild.reuse;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import shimwright.rebuild.inspect.JudgedPiece;
import shimwright.rebuild.job.Entry.Decision;
import shimwright.rebuild.learn.Outlook;

/**
 * What became of a decision on such a piece in earlier boxes of the type.
 *
 * @param boxes in how many it was taken
 * @param back numbers of the jobs of those that came back for it, as far as anybody has said
 */
public record Experience(Decision decision, int boxes, List<String> back) {
    /** How sure the bound is that is said where none came back. */
    private static final double SURE = 0.95;

    public Experience {
        back = List.copyOf(back);
    }

    /**
     * Of each decision that was taken before; where several verdicts of one box speak of the piece, the one that changed most holds.
     *
     * @param limit by which the piece is judged
     */
    public static List<Experience> of(List<Outlook> earlier, String limit, JudgedPiece piece) {
        Map<String, Outlook> boxes = new LinkedHashMap<>();
        earlier.stream()
                .filter(outlook -> outlook.speaksOf(limit, piece))
                .forEach(outlook -> boxes.merge(
                        outlook.job(),
                        outlook,
                        (one, other) -> one.decision().compareTo(other.decision()) >= 0 ? one : other));
        List<Experience> all = new ArrayList<>();
        for (Decision decision : Decision.values()) {
            List<Outlook> taken = boxes.values().stream()
                    .filter(outlook -> outlook.decision() == decision)
                    .toList();
            if (!taken.isEmpty()) {
                all.add(new Experience(
                        decision,
                        taken.size(),
                        taken.stream()
                                .filter(outlook -> outlook.cameBackFor(piece))
                                .map(Outlook::job)
                                .toList()));
            }
        }
        return List.copyOf(all);
    }

    /**
     * The chance that it comes back, where any did: one more box of either kind is counted in, since few boxes say little (Laplace's rule
     * of succession). Where none did, no number is made of it.
     */
    public OptionalDouble chance() {
        return back.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of((back.size() + 1.0) / (boxes + 2));
    }

    /** The chance that stands in its field: as said, else the one of earlier boxes; null where there is none. */
    public static @Nullable Double offered(@Nullable Double said, List<Experience> before, Decision decision) {
        if (said != null) {
            return said;
        }
        for (Experience one : before) {
            if (one.decision() == decision && one.chance().isPresent()) {
                return one.chance().getAsDouble();
            }
        }
        return null;
    }

    /** Where the chances that are offered come from; empty where there are none. */
    public static String from(List<Experience> before) {
        return before.stream()
                .filter(one -> one.chance().isPresent())
                .map(Experience::say)
                .collect(Collectors.joining("; "));
    }

    /** One sentence with how much it is worth. */
    public String say() {
        String of = boxes == 1 ? "1 box" : boxes + " boxes";
        String word = decision.name().toLowerCase(Locale.ROOT);
        return back.isEmpty()
                ? word + " before in " + of
                        + ": none came back for it, as far as anybody has said. That bounds the chance to "
                        + percent(bound()) + " and no lower"
                : word + " before in " + of + ": " + back.size() + " came back for it (" + String.join(", ", back)
                        + "). With one more of either kind counted in, a chance of "
                        + percent(chance().orElse(0));
    }

    /** None of so many came back: with this chance or more, that would be seen in one of twenty such shops (binomial). */
    private double bound() {
        return 1 - Math.pow(1 - SURE, 1.0 / boxes);
    }

    private static String percent(double share) {
        return String.format(Locale.ENGLISH, "%.0f %%", 100 * share);
    }
}
