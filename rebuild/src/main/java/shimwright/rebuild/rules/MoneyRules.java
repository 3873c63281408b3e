package shimwright.rebuild.rules;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job.Said;
import shimwright.rebuild.workbench.Workbench;

/** What forbids an entry about money. */
final class MoneyRules {
    private static final double MOST_HOURS = 10_000;

    private MoneyRules() {}

    static List<Refusal> quoted(Workbench bench, Entry.Quoted e) {
        boolean ordered = 0 <= e.low() && e.low() <= e.likely() && e.likely() <= e.high();
        return ordered && !e.lines().isEmpty()
                ? List.of()
                : Rules.one("", "quote", "it is no range of amounts", "Work it out anew");
    }

    static List<Refusal> answered(Workbench bench, Entry.OwnerAnswered e) {
        List<Refusal> refusals = new ArrayList<>();
        Said<Entry.Quoted> quoted = bench.job().money().quoted();
        if (quoted == null || !quoted.id().equals(e.quote())) {
            refusals.add(new Refusal(
                    "quote", "quote", "the owner was told something else since", "Load the page again and look"));
        }
        LocalDate opened = bench.job().openedAt().atZone(bench.zone()).toLocalDate();
        LocalDate today = bench.now().atZone(bench.zone()).toLocalDate();
        if (e.day().isBefore(opened.minusDays(1)) || e.day().isAfter(today.plusDays(1))) {
            refusals.add(
                    Refusal.of("day", e.day() + " is before the unit came in or still to come", "Look at the date"));
        }
        if (e.says() == Entry.OwnerSays.LESS) {
            refusals.addAll(Rules.needed(e.words(), "words", "words", "Say what is left out"));
        }
        if (e.upTo() < 0) {
            refusals.add(Refusal.of("upTo", "it is less than nothing", "Type an amount"));
        }
        return refusals;
    }

    static List<Refusal> cost(Workbench bench, Entry.CostSaid e) {
        List<Refusal> refusals = new ArrayList<>(Rules.needed(e.what(), "what", "what it is", "Say what it is"));
        if (e.cents() < 0) {
            refusals.add(Refusal.of("amount", "it is less than nothing", "Type 0 where nothing is to be paid"));
        }
        return refusals;
    }

    static List<Refusal> hours(Workbench bench, Entry.HoursSaid e) {
        return e.hours() >= 0 && e.hours() <= MOST_HOURS
                ? List.of()
                : Rules.one("hours", "hours", e.hours() + " is no number of hours", "Type them as 14.5");
    }
}
