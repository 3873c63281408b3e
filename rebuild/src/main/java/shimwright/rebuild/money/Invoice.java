package shimwright.rebuild.money;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.Job.Said;

/**
 * What a job came to, without tax.
 *
 * @param lines each with its amount
 * @param total of the lines
 * @param currency as the shop typed it with its rate; empty where it typed none
 * @param open what is not in it because nobody said, in words
 */
public record Invoice(List<Line> lines, long total, String currency, List<String> open) {
    public Invoice {
        lines = List.copyOf(lines);
        open = List.copyOf(open);
    }

    /**
     * A line.
     *
     * @param words beside it; empty for none
     * @param cents hundredths of the currency
     */
    public record Line(String what, String words, long cents) {}

    /**
     * The invoice of a job.
     *
     * @param rate an hour, as the shop typed it
     */
    public static Invoice of(Job job, String rate) {
        List<Line> lines = new ArrayList<>();
        List<String> open = new ArrayList<>();
        Optional<Rate> each = Rate.of(rate);
        Said<Entry.HoursSaid> hours = job.money().hours();
        if (each.isEmpty()) {
            open.add("what an hour costs");
        }
        if (hours == null) {
            open.add("how many hours are to be paid for");
        }
        if (each.isPresent() && hours != null) {
            lines.add(new Line(
                    "Work",
                    String.format(java.util.Locale.ROOT, "%.1f", hours.what().hours()) + " h at " + rate.strip()
                            + " an hour",
                    Math.round(hours.what().hours() * each.get().cents())));
        }
        for (Said<Entry.CostSaid> said : job.money().costs().values()) {
            if (said.what().cents() > 0) {
                lines.add(new Line(
                        said.what().what(), said.what().words(), said.what().cents()));
            }
        }
        QuoteBasis.unpriced(job)
                .forEach(said -> open.add("what this costs: " + said.what().what()));
        return new Invoice(
                lines,
                lines.stream().mapToLong(Line::cents).sum(),
                each.map(Rate::currency).orElse(""),
                open);
    }
}
