package shimwright.rebuild.act;

import java.time.LocalDate;
import java.util.List;
import shimwright.mechanics.outcome.Outcome;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.workbench.Workbench;

/** Orders and send-outs. */
public final class OrderActs {
    private OrderActs() {}

    /** Something is ordered or sent out. */
    @MakesEntries(Entry.Sent.class)
    public record SendOut(
            @ActInput(value = "what", missing = "Say what was ordered or sent out")
            String what,

            @ActInput("items of the unit that wait for it") List<String> items,
            @ActInput("to whom") String to,

            @ActInput(value = "due", missing = "Choose the day, or type it as 2026-12-24")
            LocalDate due,

            @ActInput(value = "days late", least = 0, most = 365)
            int late,

            @ActInput("note") String note)
            implements Act.OfJob {
        @Override
        public Outcome<ActResult> on(Workbench bench, ActContext around) {
            List<String> ids =
                    items.stream().map(typed -> item(bench, typed)).distinct().toList();
            return IntakeActs.kept(
                    bench, new Entry.Sent(what, ids, to, due, late, note), "Kept: the plan waits for it");
        }
    }

    /** Items by id or name; what the unit does not have stays as typed and is refused by name. */
    private static String item(Workbench bench, String typed) {
        return bench.unit().type().items().stream()
                .filter(item -> typed.equalsIgnoreCase(item.id()) || typed.equalsIgnoreCase(item.name()))
                .map(Item::id)
                .findFirst()
                .orElse(typed);
    }

    /** What was ordered or sent out is here; what is not right stays awaited. */
    @MakesEntries(Entry.CameBack.class)
    public record TakeDelivery(
            @ActInput(value = "order", missing = "Load the page again")
            String sent,

            @ActInput(value = "verdict", missing = "Say whether it may go in")
            YesNo good,

            @ActInput(
                    value = "measured",
                    missing = "Say what you measured or looked at on it; what comes back is checked")
            String measured)
            implements Act.OfJob {
        @Override
        public Outcome<ActResult> on(Workbench bench, ActContext around) {
            boolean right = good == YesNo.YES;
            return IntakeActs.kept(
                    bench,
                    new Entry.CameBack(sent, right, measured),
                    right ? "Kept: it may go in" : "Kept: not right, its steps go on waiting");
        }
    }
}
