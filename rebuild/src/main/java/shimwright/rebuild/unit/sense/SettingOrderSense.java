package shimwright.rebuild.unit.sense;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import shimwright.rebuild.unit.model.Clearance;

/** Clearances among each other: each stands once in the setting order, after those on which it depends, and in no circle. */
final class SettingOrderSense {
    private final SenseContext context;

    SettingOrderSense(SenseContext context) {
        this.context = context;
    }

    void check() {
        List<String> order = context.type().settingOrder();
        Set<String> once = new HashSet<>();
        for (String id : order) {
            if (!once.add(id)) {
                context.fault(context.type(), "setting_order", "clearance " + id + " stands twice", "Name each once");
            }
        }
        for (Clearance c : context.type().clearances()) {
            int place = order.indexOf(c.id());
            if (place < 0 && context.at().written(context.type()).contains("setting_order")) {
                context.fault(context.type(), "setting_order", "clearance " + c.id() + " is missing", "Name each once");
            }
            for (String earlier : c.dependsOn()) {
                boolean late = order.indexOf(earlier) >= place && place >= 0;
                if (late && once.contains(earlier) && !earlier.equals(c.id())) {
                    context.fault(
                            context.type(),
                            "setting_order",
                            "clearance " + c.id() + " comes before " + earlier + ", on which it depends",
                            "Set " + earlier + " first");
                }
            }
        }
        circle().ifPresent(names -> context.fault(
                context.type(),
                "clearances",
                names + " depend on each other in a circle",
                "One of them must come first"));
    }

    private Optional<String> circle() {
        Set<String> settled = new HashSet<>();
        List<Clearance> left = new ArrayList<>(context.type().clearances());
        Set<String> all = new HashSet<>();
        left.forEach(c -> all.add(c.id()));
        int before;
        do {
            before = left.size();
            List<Clearance> free = left.stream()
                    .filter(c -> c.dependsOn().stream().allMatch(d -> settled.contains(d) || !all.contains(d)))
                    .toList();
            free.forEach(c -> settled.add(c.id()));
            left.removeIf(c -> settled.contains(c.id()));
        } while (left.size() < before);
        return left.isEmpty()
                ? Optional.empty()
                : Optional.of("clearances "
                        + String.join(
                                ", ",
                                left.stream().map(Clearance::id).distinct().toList()));
    }
}
