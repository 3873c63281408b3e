package shimwright.rebuild.plan.people;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import shimwright.rebuild.plan.Order;
import shimwright.rebuild.unit.model.Consumable;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Unit;
import shimwright.rebuild.unit.model.UnitType.Window;

/** Follows who does what when against the unit file itself; shares no code with the search. */
final class PeopleCheck {
    private static final double DUST = 1e-6;

    private final Unit unit;
    private final CrewPlan share;
    private final List<String> faults = new ArrayList<>();
    private final Map<String, TimetableBar> of = new HashMap<>();

    private PeopleCheck(Unit unit, CrewPlan share) {
        this.unit = unit;
        this.share = share;
    }

    /** What is wrong, where nothing was done before that counts. */
    static List<String> faults(Unit unit, Order order, CrewPlan share, Set<String> done) {
        PeopleCheck check = new PeopleCheck(unit, share);
        check.each(done);
        check.once(order, done);
        check.waits(order);
        check.shared();
        check.turned();
        return check.faults;
    }

    private void each(Set<String> done) {
        for (TimetableBar part : share.parts()) {
            Step step = part.step().orElse(null);
            if (step == null) {
                continue;
            }
            if (of.put(step.id(), part) != null || done.contains(step.id())) {
                faults.add(step.id() + " is done twice");
            }
            if (Math.abs(part.end() - part.begin() - step.duration()) > DUST) {
                faults.add(step.id() + " takes " + (part.end() - part.begin()));
            }
            int hands = Math.min(step.persons(), share.persons());
            if (part.people().size() != hands || new HashSet<>(part.people()).size() != hands) {
                faults.add(step.id() + " is done by " + part.people());
            }
        }
        double last =
                share.parts().stream().mapToDouble(TimetableBar::end).max().orElse(0);
        if (Math.abs(last - share.seconds()) > DUST) {
            faults.add("it ends at " + last + ", not at " + share.seconds());
        }
    }

    private void once(Order order, Set<String> done) {
        order.steps().keySet().stream()
                .filter(id -> !done.contains(id) && !of.containsKey(id))
                .forEach(id -> faults.add(id + " is not done"));
    }

    private void waits(Order order) {
        order.before()
                .forEach((id, needs) -> needs.forEach((need, why) -> {
                    TimetableBar first = of.get(need);
                    TimetableBar then = of.get(id);
                    if (first == null || then == null) {
                        return;
                    }
                    double cure = why == Step.Why.WAITS
                            ? unit.step(need).consumables().stream()
                                    .map(unit::consumable)
                                    .mapToDouble(Consumable::cure)
                                    .max()
                                    .orElse(0)
                            : 0;
                    if (then.begin() < first.end() + cure - DUST) {
                        faults.add(id + " begins before " + need + " allows");
                    }
                }));
        for (Window window : unit.type().windows()) {
            TimetableBar opens = of.get(window.opens());
            TimetableBar closes = of.get(window.closes());
            if (opens != null && closes != null && closes.end() - opens.end() > window.longest() + DUST) {
                faults.add("the window " + window.id() + " is not kept");
            }
        }
    }

    private boolean onCase(TimetableBar part) {
        return part.step().map(step -> unit.station(step.at()).holdsCase()).orElse(true);
    }

    private void shared() {
        List<TimetableBar> parts = share.parts();
        for (int i = 0; i < parts.size(); i++) {
            for (TimetableBar other : parts.subList(i + 1, parts.size())) {
                TimetableBar one = parts.get(i);
                if (one.begin() < other.end() - DUST && other.begin() < one.end() - DUST) {
                    together(one, other);
                }
            }
        }
    }

    private void together(TimetableBar one, TimetableBar other) {
        String both = one.words() + " / " + other.words();
        if (one.people().stream().anyMatch(other.people()::contains)) {
            faults.add("one person does two things: " + both);
        }
        if (onCase(one) && onCase(other)) {
            faults.add("two things on the case: " + both);
        }
        Set<String> tools = new HashSet<>(one.step().map(Step::tools).orElse(List.of()));
        if (tools.removeAll(other.step().map(Step::tools).orElse(List.of()))) {
            faults.add("one tool in two hands: " + both);
        }
        String at = one.step().map(Step::at).orElse("");
        if (at.equals(other.step().map(Step::at).orElse("-"))
                && unit.station(at).room() < 2) {
            faults.add("no room for both: " + both);
        }
    }

    /** Between two steps on the case in unlike orientations it is turned, for as long as the file says or longer. */
    private void turned() {
        String stands = "";
        double turning = 0;
        for (TimetableBar part : share.parts()) {
            if (!onCase(part)) {
                continue;
            }
            String at = part.step().map(Step::at).orElse("");
            if (at.isEmpty()) {
                turning += part.end() - part.begin();
            } else {
                double least = unit.type().turnOver().getOrDefault(stands + "-" + at, 0.0);
                if (turning < least - DUST) {
                    faults.add("the case is turned from " + stands + " to " + at + " in " + turning);
                }
                stands = at;
                turning = 0;
            }
        }
    }
}
