package shimwright.bench.web.sheet;

import java.util.List;
import org.jspecify.annotations.Nullable;
import shimwright.bench.sheet.DrawOptions;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.worksheet.Answer;
import shimwright.mechanics.worksheet.Shape;
import shimwright.mechanics.worksheet.ShownValue;
import shimwright.mechanics.worksheet.Worksheet;

/**
 * A worksheet on screen and on paper.
 *
 * @param sheet the worksheet
 * @param topic title of its topic
 * @param slots its inputs as typed
 * @param draws how it is to be drawn, as typed
 * @param asked true where anything was typed
 * @param answer the answer; null where there is none
 * @param waiting true while it is still worked out
 * @param elsewhere refusals that belong to no single input
 * @param faults how many things are to be mended
 * @param pictures SVG of its pictures and budgets
 * @param query the address behind the question mark that brings this case back
 * @param example the same for the worked example
 * @param job what of a job it is worked out for; null for none
 */
public record SheetView(
        Worksheet<?, ?> sheet,
        String topic,
        List<FormField> slots,
        DrawOptions.Typed draws,
        boolean asked,
        @Nullable Answer answer,
        boolean waiting,
        List<Refusal> elsewhere,
        int faults,
        List<String> pictures,
        String query,
        String example,
        @Nullable SheetInJob job) {

    /** The same with pictures as wide as a sheet of paper. */
    SheetView onPaper() {
        return answer == null
                ? this
                : new SheetView(
                        sheet,
                        topic,
                        slots,
                        draws,
                        asked,
                        answer,
                        waiting,
                        elsewhere,
                        faults,
                        SheetPictures.of(answer, SheetPictures.PAPER),
                        query,
                        example,
                        job);
    }

    /** Names of what says how it is drawn. */
    public DrawOptions drawNames() {
        return DrawOptions.ADDRESS;
    }

    /** Where it is opened: the address of the sheet, alone or in a job. */
    public String address() {
        return job == null ? "/sheets/" + sheet.name() : job.address();
    }

    /** Where an input comes from, beside its field; empty where it was typed, or typed over. */
    public String from(FormField slot) {
        return job == null ? "" : job.from(slot.key(), slot.typed());
    }

    /** Inputs that most cases need. */
    public List<FormField> usual() {
        return slots.stream().filter(slot -> !slot.rare()).toList();
    }

    /** Inputs that most cases do without. */
    public List<FormField> rare() {
        return slots.stream().filter(FormField::rare).toList();
    }

    /** True for the first input without anything in it: that is where the typing starts. */
    public boolean first(FormField slot) {
        return answer == null
                && usual().stream()
                        .filter(s -> !s.faults().isEmpty()
                                || (s.typed().isBlank() && s.usual().isEmpty()))
                        .filter(s -> s.control() != FormField.Control.BUTTONS && s.control() != FormField.Control.PICK)
                        .findFirst()
                        .map(slot::equals)
                        .orElse(false);
    }

    /** True for a list of records whose parts are single values: it is shown as a table. */
    public static boolean table(ShownValue shown) {
        return shown.field().shape() == Shape.LIST
                && shown.entries().stream()
                        .allMatch(entry ->
                                entry.stream().allMatch(part -> part.entries().isEmpty()));
    }

    /** A share in percent. */
    public static String percent(double share) {
        if (share > 0.995 && share < 1) {
            return "over 99 %";
        }
        return share > 0 && share < 0.005 ? "under 1 %" : Math.round(100 * share) + " %";
    }
}
