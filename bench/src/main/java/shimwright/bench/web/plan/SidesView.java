package shimwright.bench.web.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import shimwright.bench.web.kit.Show;
import shimwright.rebuild.plan.SideChoices.Ranked;
import shimwright.rebuild.plan.model.Cost;
import shimwright.rebuild.unit.model.UnitType.Choice;

/**
 * Which sides make the cheapest plan, as the page shows it.
 *
 * @param said in sentences, what to know first
 * @param ways ways that differ from what is taken now, the cheapest first
 */
public record SidesView(List<String> said, List<Way> ways) {
    private static final int SHOWN = 4;
    /** Seconds below which nothing is said of a part. */
    private static final double LITTLE = 30;

    /**
     * A way to take the sides.
     *
     * @param saves what it saves, or costs more
     * @param why where the difference lies
     * @param changes the choices taken otherwise than now
     */
    public record Way(String saves, String why, List<Change> changes) {}

    /** A choice taken otherwise: its id, what it is about, the side and why one would take it. */
    public record Change(String choice, String about, String side, String why) {}

    static SidesView of(List<Choice> open, List<Ranked> ranked, boolean late, Show show) {
        Ranked now = ranked.stream().filter(Ranked::taken).findFirst().orElse(ranked.get(0));
        List<String> said = new ArrayList<>();
        if (open.isEmpty() || now.plan().ahead().isEmpty()) {
            said.add(
                    open.isEmpty()
                            ? "Every choice of this job is settled."
                            : "All steps are done; there is nothing to choose.");
            return new SidesView(said, List.of());
        }
        Ranked first = ranked.get(0);
        said.add(
                first.saves() * 60 < LITTLE
                        ? "The sides as they are now make the cheapest plan that was found."
                        : "Other sides save " + show.span(first.saves() * 60) + " of everything that is priced.");
        boolean proven = ranked.stream().allMatch(one -> one.plan().proven());
        said.add(ranked.size() + " ways to take the " + open.size() + " open choices can be planned"
                + (late
                        ? " so far; time was up before all were looked at."
                        : "; those not counted contradict themselves.")
                + (proven
                        ? ""
                        : " Each plan is the best found in a short look, so a small difference may turn round."));
        return new SidesView(List.copyOf(said), ways(open, ranked, now, show));
    }

    private static List<Way> ways(List<Choice> open, List<Ranked> ranked, Ranked now, Show show) {
        List<Ranked> sorted = new ArrayList<>(ranked);
        sorted.sort(Comparator.comparingLong((Ranked one) -> -halfMinutes(one))
                .thenComparingInt(one -> changes(open, one, now).size()));
        List<Way> ways = new ArrayList<>();
        List<Ranked> shown = new ArrayList<>(List.of(now));
        for (Ranked one : sorted) {
            List<Change> changes = changes(open, one, now);
            // what changes more than one that is shown and saves no more says nothing new
            boolean more = shown.stream()
                    .anyMatch(other ->
                            halfMinutes(other) == halfMinutes(one) && changes.containsAll(changes(open, other, now)));
            if (!more && ways.size() < SHOWN) {
                shown.add(one);
                double saves = one.saves() * 60;
                String much =
                        (saves > 0 ? "Saves " : "Costs ") + show.span(Math.abs(saves)) + (saves > 0 ? "" : " more");
                ways.add(new Way(much, why(now, one, show), changes));
            }
        }
        return List.copyOf(ways);
    }

    private static long halfMinutes(Ranked one) {
        return Math.round(2 * one.saves());
    }

    /** What is taken otherwise than now. */
    private static List<Change> changes(List<Choice> open, Ranked one, Ranked now) {
        List<Change> changes = new ArrayList<>();
        for (Choice choice : open) {
            String side = one.sides().getOrDefault(choice.id(), choice.usual());
            if (!side.equals(now.sides().getOrDefault(choice.id(), choice.usual()))) {
                changes.add(new Change(
                        choice.id(),
                        choice.about(),
                        side,
                        choice.sides().entrySet().stream()
                                .filter(e -> e.getKey().equals(side))
                                .map(e -> e.getValue().why())
                                .findFirst()
                                .orElse("")));
            }
        }
        return changes;
    }

    private static String why(Ranked taken, Ranked one, Show show) {
        Cost now = taken.plan().cost();
        Cost other = one.plan().cost();
        List<String> parts = new ArrayList<>();
        part(parts, "work", other.work() - now.work(), show);
        part(parts, "what the unit file adds for the sides", 60 * (one.extra() - taken.extra()), show);
        part(parts, "turning the case", other.turning() - now.turning(), show);
        part(parts, "walking", other.walking() - now.walking(), show);
        part(parts, "laying out tools", other.tools() - now.tools(), show);
        part(parts, "late finds", other.risk() - now.risk(), show);
        part(parts, "waiting, as it counts", other.delay() - now.delay(), show);
        return parts.isEmpty() ? "" : "In it: " + String.join("; ", parts) + ".";
    }

    private static void part(List<String> parts, String name, double more, Show show) {
        if (Math.abs(more) >= LITTLE) {
            parts.add(name + " " + show.span(Math.abs(more)) + (more > 0 ? " more" : " less"));
        }
    }
}
