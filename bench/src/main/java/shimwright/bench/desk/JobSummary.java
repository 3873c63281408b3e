package shimwright.bench.desk;

import java.net.URLDecoder;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import shimwright.rebuild.job.Head;
import shimwright.rebuild.job.Job;

/**
 * A job's line in a list: what its own entries say, without unit file or plan.
 *
 * @param job its id
 * @param head of its stream when it said so
 * @param unitType id of the unit type it was opened with
 * @param unitFile hash of the unit file it stands on; empty for a job older than that
 * @param closed whether the unit was handed back
 * @param done steps that stand done
 * @param toAsk the day on which the owner is to be asked how it goes; empty for none
 * @param pieces those of the drawer that are in the unit
 */
public record JobSummary(
        String job,
        Head head,
        String number,
        String owner,
        String unitType,
        String variant,
        String unitFile,
        boolean closed,
        int done,
        String toAsk,
        List<String> pieces) {
    private static final int FIELDS = 7;
    /** Leads the day in a text: no word of a text of before has this letter in it as it stands. */
    private static final String DAY = "=";

    /** The line of a job. */
    public static JobSummary of(Job job) {
        return new JobSummary(
                job.id(),
                job.head(),
                job.opened().number(),
                job.opened().owner(),
                job.opened().unitType(),
                job.variant(),
                job.unitFile(),
                job.closed(),
                job.stepsDone().size(),
                job.closed()
                        ? job.end()
                                .toAsk()
                                .map(said -> said.what().day().toString())
                                .orElse("")
                        : "",
                List.copyOf(job.piecesIn()));
    }

    /** As text for {@link #read}; id and head are not in it. */
    String text() {
        return Stream.of(
                        encoded(Stream.of(number, owner, unitType, variant, unitFile, "" + closed, "" + done)),
                        Stream.of(DAY + toAsk).filter(day -> !toAsk.isEmpty()),
                        encoded(pieces.stream()))
                .flatMap(words -> words)
                .collect(Collectors.joining(" "));
    }

    private static Stream<String> encoded(Stream<String> words) {
        return words.map(word -> URLEncoder.encode(word, StandardCharsets.UTF_8));
    }

    /** The line of a text; empty where it is none. */
    static Optional<JobSummary> read(String job, Head head, String text) {
        try {
            List<String> words = Arrays.stream(text.split(" ", -1))
                    .map(word -> URLDecoder.decode(word, StandardCharsets.UTF_8))
                    // ten thousand lines name the same few types, files and pieces
                    .map(String::intern)
                    .toList();
            boolean day = words.size() > FIELDS && text.split(" ", -1)[FIELDS].startsWith(DAY);
            return words.size() < FIELDS
                    ? Optional.empty()
                    : Optional.of(new JobSummary(
                            job,
                            head,
                            words.get(0),
                            words.get(1),
                            words.get(2),
                            words.get(3),
                            words.get(4),
                            words.get(5).equals("true"),
                            Integer.parseInt(words.get(6)),
                            day ? words.get(FIELDS).substring(DAY.length()) : "",
                            List.copyOf(words.subList(day ? FIELDS + 1 : FIELDS, words.size()))));
        } catch (IllegalArgumentException torn) {
            return Optional.empty();
        }
    }
}
