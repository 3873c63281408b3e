package shimwright.rebuild.act;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.record.Fitted;
import shimwright.rebuild.workbench.Workbench;

/** Hand-back and what comes after. */
public final class HandBackActs {
    private HandBackActs() {}

    /** The unit goes back to its owner; with it the day to ask how it goes and what the next one of the type should know, where they are said. */
    @MakesEntries({Entry.HandedBack.class, Entry.FollowUpPlanned.class, Entry.NoteMade.class})
    public record HandBack(
            @ActInput(value = "warranty", missing = "Say what you stand behind and for how long")
            String warranty,

            @ActInput("advice to the owner") String advice,
            @ActInput("remark") String remark,
            @ActInput("day to ask the owner how it goes") String followUp,

            @ActInput("what the next one of this type should know")
            String lesson)
            implements Act.OfJob {
        /** A hand-back alone. */
        public HandBack(String warranty, String advice, String remark) {
            this(warranty, advice, remark, "", "");
        }

        @Override
        public Outcome<ActResult> on(Workbench bench, ActContext around) {
            List<Entry> entries = new ArrayList<>(List.of(new Entry.HandedBack(warranty, advice, remark)));
            if (!followUp.isBlank()) {
                Optional<LocalDate> day = day(followUp);
                if (day.isEmpty()) {
                    return noDay("followUp", followUp);
                }
                entries.add(new Entry.FollowUpPlanned(day.get(), ""));
            }
            if (!lesson.isBlank()) {
                entries.add(new Entry.NoteMade(Entry.NoteMade.LESSON, lesson));
            }
            return Outcome.ok(new ActResult(bench.job().id(), entries, "Handed back. The record is closed"));
        }
    }

    private static Optional<LocalDate> day(String typed) {
        try {
            return Optional.of(LocalDate.parse(typed.strip()));
        } catch (DateTimeParseException none) {
            return Optional.empty();
        }
    }

    private static Outcome<ActResult> noDay(String key, String typed) {
        return Outcome.refused(Refusal.of(key, "\"" + typed + "\" is no day", "Choose it, or type it as 2026-12-24"));
    }

    /** What became of the unit after; another day to ask again, where one is said. */
    @MakesEntries({Entry.FollowedUp.class, Entry.FollowUpPlanned.class})
    public record FollowUp(
            @ActInput(value = "what was said", missing = "Say what the owner said, or what you saw")
            String said,

            @ActInput("remark") String remark,
            @ActInput("day to ask again") String followUp)
            implements Act.OfJob {
        @Override
        public Outcome<ActResult> on(Workbench bench, ActContext around) {
            List<Entry> entries = new ArrayList<>(List.of(new Entry.FollowedUp(said, remark)));
            if (!followUp.isBlank()) {
                Optional<LocalDate> day = day(followUp);
                if (day.isEmpty()) {
                    return noDay("followUp", followUp);
                }
                entries.add(new Entry.FollowUpPlanned(day.get(), ""));
            }
            return Outcome.ok(new ActResult(bench.job().id(), entries, "Kept with the job"));
        }
    }

    /** The day on which the owner is to be asked how it goes. */
    @MakesEntries(Entry.FollowUpPlanned.class)
    public record PlanFollowUp(
            @ActInput(value = "day", missing = "Choose the day, or type it as 2026-12-24")
            LocalDate followUp,

            @ActInput("what is to be asked") String about)
            implements Act.OfJob {
        @Override
        public Outcome<ActResult> on(Workbench bench, ActContext around) {
            return IntakeActs.kept(
                    bench, new Entry.FollowUpPlanned(followUp, about), "Kept: the shop's page says it on that day");
        }
    }

    /** The unit came back. */
    @MakesEntries(Entry.Returned.class)
    public record TakeReturn(
            @ActInput(value = "day", missing = "Choose the day, or type it as 2026-12-24")
            LocalDate day,

            @ActInput(value = "what it does", missing = "Say what the owner says it does")
            String said,

            @ActInput("parts that it is about") List<String> items,

            @ActInput("number of the job under which it is worked on")
            String number)
            implements Act.OfJob {
        @Override
        public Outcome<ActResult> on(Workbench bench, ActContext around) {
            return IntakeActs.kept(
                    bench,
                    new Entry.Returned(day, said, OrderActs.itemIds(bench, items), number.strip()),
                    "Kept: it came back. Say the cause when you have found it");
        }
    }

    /** What a unit that came back was found to have; with it goes what was fitted of the parts. */
    @MakesEntries(Entry.ReturnExplained.class)
    public record ExplainReturn(
            @ActInput(value = "return", missing = "Load the page again")
            String returned,

            @ActInput(value = "cause", missing = "Say what was found, or that nothing was")
            String name,

            @ActInput(value = "what it lies in", missing = "Say the part, our work, its use, or not known")
            Entry.LiesIn lies,

            @ActInput("parts that failed") List<String> items,
            @ActInput("what you saw") String words)
            implements Act.OfJob {
        @Override
        public Outcome<ActResult> on(Workbench bench, ActContext around) {
            List<String> ids = OrderActs.itemIds(bench, items);
            return IntakeActs.kept(
                    bench,
                    new Entry.ReturnExplained(
                            returned, ids, name, lies, words, Fitted.lines(bench.unit(), bench.job(), ids)),
                    "Kept: the next box of this type is told");
        }
    }
}
