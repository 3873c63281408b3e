package shimwright.bench.web.shop;

import java.util.List;
import java.util.Locale;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import shimwright.bench.desk.JobSummary;

/**
 * The jobs that the shop's page shows: all on the bench and the last that were handed back, or those that were looked for.
 *
 * @param cards the newest first
 * @param hidden how many more there are
 */
public record Found(List<JobCard> cards, int hidden) {
    private static final int OPEN = 200;
    private static final int CLOSED = 12;
    private static final int LOOKED_FOR = 50;

    /**
     * Those of a shop.
     *
     * @param lines of all jobs, the newest first
     * @param find a part of a number, an owner or a unit's name in any case; empty for what a bench wants to see first
     * @param model maker and model of a unit type by its id; empty where they are not at hand
     */
    static Found in(List<JobSummary> lines, String find, UnaryOperator<String> model) {
        String word = find.toLowerCase(Locale.ROOT);
        List<JobSummary> shown = word.isEmpty()
                ? Stream.concat(
                                lines.stream().filter(line -> !line.closed()).limit(OPEN),
                                lines.stream().filter(JobSummary::closed).limit(CLOSED))
                        .toList()
                : lines.stream()
                        .filter(line -> says(line, word))
                        .limit(LOOKED_FOR)
                        .toList();
        List<JobCard> cards = shown.stream()
                .map(line -> JobCard.of(line, model.apply(line.unitType())))
                .toList();
        return new Found(cards, lines.size() - shown.size());
    }

    private static boolean says(JobSummary line, String word) {
        return Stream.of(line.number(), line.owner(), line.unitType())
                .anyMatch(text -> text.toLowerCase(Locale.ROOT).contains(word));
    }
}
