package shimwright.bench.web.sheet;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import shimwright.bench.web.kit.Pages;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job.Said;
import shimwright.rebuild.sheet.Fact;
import shimwright.rebuild.sheet.JobSheet;

/**
 * For what of a job a worksheet is worked out.
 *
 * @param root the address of the job
 * @param of the sheet with what is known
 * @param step from which it was opened; empty for none
 * @param asked true where somebody typed, false where it was just opened
 * @param kept what of it is kept; null for nothing
 * @param carried what stands in its fields, each with its unit
 */
public record SheetInJob(
        String root,
        JobSheet of,
        String step,
        boolean asked,
        @Nullable Said<Entry.SheetWorked> kept,
        Map<String, String> carried) {
    private static final int FEW = 4;

    SheetInJob carrying(Map<String, String> typed) {
        return new SheetInJob(root, of, step, asked, kept, typed);
    }

    /** What it is about. */
    public String about() {
        return of.about();
    }

    /** The same in words. */
    public String name() {
        return of.name();
    }

    /** The address of the sheet in this job. */
    public String address() {
        return root + "/sheet/" + of.sheet().name();
    }

    /** The address that fills it in anew. */
    public String again() {
        return opened(root, of, step);
    }

    /** One tap back: to the step it was opened from, else to the sheets of the job. */
    public String back() {
        return step.isEmpty() ? root + "/sheets" : root + "/build?step=" + Pages.encoded(step);
    }

    /** Where a sheet is opened with what is known of it. */
    public static String opened(String root, JobSheet sheet, String step) {
        return root + "/sheet/" + sheet.sheet().name() + "?about=" + Pages.encoded(sheet.about())
                + (step.isEmpty() ? "" : "&step=" + Pages.encoded(step));
    }

    /** Where what stands in a field comes from; empty where it is not what was known. */
    String from(String key, String typed) {
        Fact fact = of.facts().get(key);
        return fact != null && fact.text().equals(typed) ? fact.from() : "";
    }

    /** The first results of what is kept. */
    public String said() {
        return kept == null
                ? ""
                : String.join(
                        ", ",
                        kept.what().results().entrySet().stream()
                                .limit(FEW)
                                .map(result -> result.getKey() + " " + result.getValue())
                                .toList());
    }
}
