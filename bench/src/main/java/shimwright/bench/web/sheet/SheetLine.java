package shimwright.bench.web.sheet;

import java.util.List;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.Job.Said;
import shimwright.rebuild.sheet.JobSheet;

/**
 * A worksheet of a job as a page lists it.
 *
 * @param title of the worksheet
 * @param about what it is about
 * @param name of that in words
 * @param address where it is opened
 * @param says what it says in a line; empty without an answer
 * @param asks what it still asks
 * @param kept what of it is kept; null for nothing
 */
public record SheetLine(
        String title,
        String about,
        String name,
        String address,
        String says,
        List<String> asks,
        @Nullable Said<Entry.SheetWorked> kept) {
    /** How many things it asks beside the first. */
    public int asksBeside() {
        return Math.max(0, asks.size() - 1);
    }

    /** A sheet that is opened from a step; from none where that is empty. */
    public static SheetLine of(Job job, JobSheet sheet, String step, UnitSystem units) {
        String says = sheet.says(units).orElse("");
        return new SheetLine(
                sheet.sheet().title(),
                sheet.about(),
                sheet.name(),
                SheetInJob.opened("/job/" + job.id(), sheet, step),
                says,
                says.isEmpty() ? sheet.asks(units) : List.of(),
                job.worked().get(sheet.about() + "/" + sheet.sheet().name()));
    }
}
