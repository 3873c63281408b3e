package shimwright.rebuild.act;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.worksheet.Answer;
import shimwright.mechanics.worksheet.ShownValue;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.sheet.Fact;
import shimwright.rebuild.sheet.JobSheet;
import shimwright.rebuild.sheet.JobSheets;
import shimwright.rebuild.workbench.Workbench;

/** Worksheets that were worked out for a job. */
public final class SheetActs {
    private SheetActs() {}

    /** What a worksheet gave is kept with the job, worked out anew from what stands in its fields. */
    @MakesEntries(Entry.SheetWorked.class)
    public record KeepSheet(
            @ActInput(value = "what it is for", missing = "Go back to the step")
            String about,

            @ActInput("step") String step,

            @ActInput(value = "worksheet", missing = "Go back to the step")
            String sheet,

            @ActInput("inputs of the worksheet, by name") Map<String, String> given)
            implements Act.OfJob {
        @Override
        public Outcome<ActResult> on(Workbench bench, ActContext around) {
            Optional<JobSheet> found = JobSheets.of(bench, around.units()).find(about, sheet);
            if (found.isEmpty()) {
                return Outcome.refused(new Refusal(
                        "about", about, "this unit has no such thing, or no such sheet of it", "Go back to the step"));
            }
            Map<String, String> typed = new LinkedHashMap<>(given);
            typed.values().removeIf(String::isBlank);
            return found.get()
                    .sheet()
                    .answer(typed, around.units())
                    .reworded(refusal -> refusal.placed("given." + refusal.key(), refusal.place()))
                    .map(answer -> entry(found.get(), typed, answer))
                    .flatMap(worked -> IntakeActs.kept(bench, worked, "Kept with its working"));
        }

        private Entry.SheetWorked entry(JobSheet of, Map<String, String> typed, Answer answer) {
            Map<String, String> from = new LinkedHashMap<>();
            typed.forEach((input, text) -> {
                Fact fact = of.facts().get(input);
                from.put(
                        input,
                        fact != null && fact.text().equals(text) && !fact.typed()
                                ? fact.from()
                                : Entry.SheetWorked.TYPED);
            });
            Map<String, String> results = new LinkedHashMap<>();
            said(answer.shown(), results);
            return new Entry.SheetWorked(
                    about, of.name(), step, sheet, typed, from, results, answer.working(), answer.cautions());
        }

        /** Single results; tables of many values are in the working or a drawing and are left to them. */
        private static void said(List<ShownValue> shown, Map<String, String> results) {
            for (ShownValue one : shown) {
                if (!one.text().isEmpty()) {
                    results.put(one.field().meaning(), one.text());
                } else if (one.entries().size() == 1) {
                    one.entries().get(0).stream()
                            .filter(part -> !part.text().isEmpty())
                            .forEach(part -> results.put(
                                    one.field().label() + ", " + part.field().label(), part.text()));
                }
            }
        }
    }
}
