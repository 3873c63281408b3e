package shimwright.rebuild.act;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job.Said;
import shimwright.rebuild.supply.OrderList;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Kit;
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
            List<String> ids = itemIds(bench, items);
            return IntakeActs.kept(
                    bench, new Entry.Sent(what, ids, to, due, late, note), "Kept: the plan waits for it");
        }
    }

    /** Each by {@link #item}, once. */
    static List<String> itemIds(Workbench bench, List<String> typed) {
        return typed.stream().map(one -> item(bench, one)).distinct().toList();
    }

    /** Items by id or name; what the unit does not have stays as typed and is refused by name. */
    private static String item(Workbench bench, String typed) {
        return bench.unit().type().items().stream()
                .filter(item -> typed.equalsIgnoreCase(item.id()) || typed.equalsIgnoreCase(item.name()))
                .map(Item::id)
                .findFirst()
                .orElse(typed);
    }

    /**
     * What is needed is ordered from one supplier, each line for itself, so that each is checked and waited for by itself; what the unit
     * file says of its price is kept with it.
     */
    @MakesEntries({Entry.Sent.class, Entry.CostSaid.class})
    public record OrderNeeded(
            @ActInput(value = "lines", missing = "Choose what to order")
            List<String> lines,

            @ActInput("to whom") String to,

            @ActInput(value = "due", missing = "Choose the day, or type it as 2026-12-24")
            LocalDate due,

            @ActInput(value = "days late", least = 0, most = 365)
            int late)
            implements Act.OfJob {
        @Override
        public Outcome<ActResult> on(Workbench bench, ActContext around) {
            return chosen(bench, lines).map(chosen -> {
                List<Entry> entries = new ArrayList<>();
                chosen.forEach(line -> entries.add(
                        new Entry.Sent(line.what(), line.items(), to, due, late, line.look(), line.parts())));
                entries.addAll(costs(bench, chosen));
                return new ActResult(bench.job().id(), entries, "Kept: the plan waits for it");
            });
        }

        private static List<Entry> costs(Workbench bench, List<OrderList.Line> chosen) {
            OrderList list = OrderList.of(bench.unit(), bench.job(), bench.shop());
            List<Entry> costs = new ArrayList<>();
            chosen.stream()
                    .filter(line -> line.price() > 0)
                    .forEach(line -> costs.add(new Entry.CostSaid(
                            line.what(), line.what(), Math.round(line.price() * 100), "price of the unit file")));
            for (Kit kit : list.kits()) {
                String name = "kit " + kit.id();
                String has = chosen.stream()
                        .filter(line -> line.from().equals(name))
                        .map(OrderList.Line::what)
                        .collect(Collectors.joining("; "));
                Said<Entry.CostSaid> before = bench.job().money().costs().get(name);
                if (!has.isEmpty()) {
                    costs.add(
                            before == null
                                    ? new Entry.CostSaid(name, name, list.price(kit), "with: " + has)
                                    : new Entry.CostSaid(
                                            name,
                                            name,
                                            before.what().cents(),
                                            before.what().words() + "; " + has));
                }
            }
            return costs;
        }
    }

    /**
     * What is needed lies here already: from the shelf, from a donor, brought by the owner. What was measured or looked at on it is
     * typed, or counted and looked at with one tap, and then the entry says just that.
     */
    @MakesEntries(Entry.LiesHere.class)
    public record HaveHere(
            @ActInput(value = "lines", missing = "Choose what lies here")
            List<String> lines,

            @ActInput("measured") String measured,

            @ActInput("counted and looked at, yes or nothing")
            String counted)
            implements Act.OfJob {
        @Override
        public Outcome<ActResult> on(Workbench bench, ActContext around) {
            return chosen(bench, lines)
                    .flatMap(chosen -> Outcome.ok(new ActResult(
                            bench.job().id(),
                            chosen.stream()
                                    .<Entry>map(line ->
                                            new Entry.LiesHere(line.items(), line.what(), said(line), line.parts()))
                                    .toList(),
                            "Kept: it lies here")));
        }

        private String said(OrderList.Line line) {
            if (!counted.equals("yes")) {
                return measured;
            }
            String count = "counted: " + line.pieces();
            String look = line.check().isEmpty() ? "" : ", looked at for: " + line.check();
            return measured.isBlank() ? count + look + ", nothing measured" : measured + "; " + count;
        }
    }

    /** Lines of what is to be ordered, by their keys. */
    private static Outcome<List<OrderList.Line>> chosen(Workbench bench, List<String> keys) {
        OrderList list = OrderList.of(bench.unit(), bench.job(), bench.shop());
        if (keys.isEmpty()) {
            return Outcome.refused(Refusal.of("lines", "nothing chosen", "Choose at least one line"));
        }
        List<Refusal> refusals = keys.stream()
                .filter(key -> list.line(key).isEmpty())
                .map(key ->
                        new Refusal("lines", "lines", key + " is not needed any more", "Load the page again and look"))
                .toList();
        return refusals.isEmpty()
                ? Outcome.ok(
                        keys.stream().map(list::line).flatMap(Optional::stream).toList())
                : Outcome.refused(refusals);
    }

    /** What came and was not right goes back, and is ordered anew where a day is said. */
    @MakesEntries({Entry.SentBack.class, Entry.Sent.class})
    public record SendBack(
            @ActInput(value = "order", missing = "Load the page again")
            String sent,

            @ActInput(value = "reason", missing = "Say what is wrong with it")
            String reason,

            @ActInput("from whom the right one comes") String to,
            @ActInput("day on which the right one is due") String due,

            @ActInput(value = "days late", least = 0, most = 365)
            int late)
            implements Act.OfJob {
        @Override
        public Outcome<ActResult> on(Workbench bench, ActContext around) {
            List<Entry> entries = new ArrayList<>(List.of(new Entry.SentBack(sent, reason)));
            Said<Entry.Sent> was = bench.job().sent().get(sent);
            if (was != null && !due.isBlank()) {
                try {
                    entries.add(was.what().again(to.isBlank() ? was.what().to() : to, LocalDate.parse(due), late));
                } catch (DateTimeParseException none) {
                    return Outcome.refused(
                            Refusal.of("due", "\"" + due + "\" is no day", "Choose it, or type it as 2026-12-24"));
                }
            }
            return Outcome.ok(new ActResult(
                    bench.job().id(),
                    entries,
                    entries.size() > 1 ? "Kept: it goes back, the right one is awaited" : "Kept: it goes back"));
        }
    }

    /** What is awaited comes on another day; the plan moves. */
    @MakesEntries(Entry.DueMoved.class)
    public record MoveDue(
            @ActInput(value = "order", missing = "Load the page again")
            String sent,

            @ActInput(value = "due", missing = "Choose the day, or type it as 2026-12-24")
            LocalDate due,

            @ActInput(value = "days late", least = 0, most = 365)
            int late,

            @ActInput("reason") String reason)
            implements Act.OfJob {
        @Override
        public Outcome<ActResult> on(Workbench bench, ActContext around) {
            return IntakeActs.kept(
                    bench, new Entry.DueMoved(sent, due, late, reason), "Kept: the plan waits until " + due);
        }
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
