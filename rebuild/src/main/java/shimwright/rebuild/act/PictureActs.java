package shimwright.rebuild.act;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Entry.Mark;
import shimwright.rebuild.job.Entry.MarkShape;
import shimwright.rebuild.workbench.Workbench;

/** What is drawn on pictures. */
public final class PictureActs {
    /** A hundred lines of sixty points each. */
    private static final int LONGEST = 80_000;

    private static final int MOST = 100;

    private PictureActs() {}

    /** Marks are drawn on a picture, which stays as it was taken. */
    @MakesEntries(Entry.PictureMarked.class)
    public record MarkPicture(
            @ActInput(value = "picture", missing = "Load the page again")
            String on,

            @ActInput(value = "height over width", least = 0.02, most = 50)
            double tall,

            @ActInput(value = "marks", missing = "Draw an arrow, a ring, a line or a text", longest = LONGEST)
            List<String> marks,

            @ActInput("what they show") String words)
            implements Act.OfJob {
        @Override
        public Outcome<ActResult> on(Workbench bench, ActContext around) {
            List<Refusal> refusals = new ArrayList<>();
            List<Mark> drawn = new ArrayList<>();
            for (int i = 0; i < marks.size(); i++) {
                Optional<Mark> mark = mark(marks.get(i));
                mark.ifPresent(drawn::add);
                if (mark.isEmpty()) {
                    refusals.add(new Refusal(
                            "marks[" + i + "]",
                            "mark " + (i + 1),
                            "\"" + marks.get(i) + "\" is none",
                            "Write it as arrow 0.2 0.3 0.5 0.6, ring, line, or text 0.2 0.3 and the words; "
                                    + "shares of width and height from the upper left corner"));
                }
            }
            if (marks.size() > MOST) {
                refusals.add(new Refusal("marks", "marks", "there are " + marks.size(), "Keep them under " + MOST));
            }
            return refusals.isEmpty()
                    ? IntakeActs.kept(bench, new Entry.PictureMarked(on, tall, List.copyOf(drawn), words), "Marks kept")
                    : Outcome.refused(refusals);
        }

        /** A mark as its line says it: what it is, numbers, and words behind them. */
        private static Optional<Mark> mark(String line) {
            String[] parts = line.strip().split("\\s+");
            Optional<MarkShape> shape = Stream.of(MarkShape.values())
                    .filter(one -> one.name().equals(parts[0].toUpperCase(Locale.ROOT)))
                    .findFirst();
            int numbers = 1;
            List<Double> at = new ArrayList<>();
            while (numbers < parts.length
                    && parts[numbers].matches("\\d+(\\.\\d+)?")
                    && !(shape.equals(Optional.of(MarkShape.TEXT)) && at.size() == 2)) {
                at.add(Double.parseDouble(parts[numbers]));
                numbers++;
            }
            String text = String.join(" ", List.of(parts).subList(numbers, parts.length));
            return shape.filter(known -> !at.isEmpty()).map(known -> new Mark(known, List.copyOf(at), text));
        }
    }
}
