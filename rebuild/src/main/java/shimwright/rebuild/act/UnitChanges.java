package shimwright.rebuild.act;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.Component;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Unit;
import shimwright.rebuild.workbench.PinnedUnit;
import shimwright.rebuild.workbench.Workbench;

/** What another unit file, or another variant of it, changes for a job that is under way. */
public final class UnitChanges {
    private static final int SHOWN = 60;

    private UnitChanges() {}

    /**
     * Every change in words: limits, steps, torques, reopened clearances.
     *
     * @param to the other file
     * @param variant of that file
     */
    public static List<String> of(Workbench bench, PinnedUnit to, String variant) {
        Unit was = bench.file().unit(bench.job().variant()).orElseThrow();
        Unit now = to.unit(variant).orElseThrow();
        List<String> changes = new ArrayList<>();
        if (!was.variant().equals(now.variant())) {
            changes.add("The variant becomes " + now.variantName() + ".");
        }
        clearances(bench, was, now, changes);
        records("Hold point", was.type().holdPoints(), now.type().holdPoints(), h -> h.id() + ", " + h.what(), changes);
        records("Wear limit", was.type().wearLimits(), now.type().wearLimits(), w -> w.id() + ", " + w.what(), changes);
        records("Fastener", was.type().fasteners(), now.type().fasteners(), f -> f.id() + ", " + f.where(), changes);
        records(
                "Consumable",
                was.type().consumables(),
                now.type().consumables(),
                c -> c.id() + ", " + c.name(),
                changes);
        steps(bench, was, now, changes);
        if (changes.isEmpty()) {
            changes.add("Nothing that this job has met or will meet changes.");
        }
        return changes.size() <= SHOWN
                ? List.copyOf(changes)
                : List.copyOf(concat(changes.subList(0, SHOWN), (changes.size() - SHOWN) + " further changes."));
    }

    private static List<String> concat(List<String> some, String last) {
        List<String> all = new ArrayList<>(some);
        all.add(last);
        return all;
    }

    private static void clearances(Workbench bench, Unit was, Unit now, List<String> changes) {
        Map<String, Clearance> before = byId(was.type().clearances(), Clearance::id);
        Map<String, Clearance> after = byId(now.type().clearances(), Clearance::id);
        both(before, after).forEach(id -> {
            Clearance old = before.get(id);
            Clearance next = after.get(id);
            if (old == null || next == null) {
                changes.add("Clearance " + id + (next == null ? " is gone." : " is new."));
            } else if (!old.equals(next)) {
                boolean limits = old.lower() != next.lower() || old.upper() != next.upper();
                boolean accepted = bench.job().accepted().containsKey(id);
                changes.add("Clearance " + id + ": "
                        + (limits ? "limits " + limits(old) + " become " + limits(next) : differing(old, next))
                        + (accepted ? "; it was accepted before and keeps the limits it was accepted with." : "."));
            }
        });
    }

    private static String limits(Clearance c) {
        return text(c.lower()) + " to " + text(c.upper());
    }

    private static String text(double length) {
        return Quantities.print(length, Kind.LENGTH, UnitSystem.METRIC);
    }

    private static void steps(Workbench bench, Unit was, Unit now, List<String> changes) {
        Map<String, Step> before = byId(was.type().steps(), Step::id);
        Map<String, Step> after = byId(now.type().steps(), Step::id);
        both(before, after).forEach(id -> {
            Step old = before.get(id);
            Step next = after.get(id);
            boolean done = bench.job().stepsDone().contains(id);
            if (next == null && old != null) {
                changes.add("Step " + id + " (" + old.todo() + ") is gone."
                        + (done ? " It was done, and stays on the record as it was." : ""));
            } else if (old == null && next != null) {
                changes.add("Step " + id + " (" + next.todo() + ") is new and is to be done.");
            } else if (old != null && next != null && !old.equals(next)) {
                changes.add("Step " + id + ": " + differing(old, next)
                        + (done ? "; it was done, and stays on the record as it was." : "."));
            }
        });
    }

    private static <R extends Record> void records(
            String what, List<R> was, List<R> now, Function<R, String> name, List<String> changes) {
        Map<String, R> before = byId(was, UnitChanges::id);
        Map<String, R> after = byId(now, UnitChanges::id);
        both(before, after).forEach(id -> {
            R old = before.get(id);
            R next = after.get(id);
            if (next == null && old != null) {
                changes.add(what + " " + name.apply(old) + " is gone.");
            } else if (old == null && next != null) {
                changes.add(what + " " + name.apply(next) + " is new.");
            } else if (old != null && next != null && !old.equals(next)) {
                changes.add(what + " " + name.apply(next) + ": " + differing(old, next) + ".");
            }
        });
    }

    private static String id(Record record) {
        return String.valueOf(Component.of(record.getClass()).get(0).in(record));
    }

    /** The keys in which two records differ, with short values as they were and are. */
    private static String differing(Record old, Record next) {
        return Component.of(old.getClass()).stream()
                .filter(key -> !key.in(old).equals(key.in(next)))
                .map(key -> {
                    String name = key.key().replace('_', ' ').toLowerCase(Locale.ROOT);
                    String was = String.valueOf(key.in(old));
                    String now = String.valueOf(key.in(next));
                    boolean brief = was.length() + now.length() < 90;
                    return brief ? name + " \"" + was + "\" becomes \"" + now + "\"" : name + " changes";
                })
                .collect(Collectors.joining("; "));
    }

    private static <T> Map<String, T> byId(List<T> list, Function<T, String> id) {
        return list.stream().collect(Collectors.toMap(id, one -> one, (a, b) -> a, java.util.LinkedHashMap::new));
    }

    private static Set<String> both(Map<String, ?> one, Map<String, ?> two) {
        Set<String> ids = new LinkedHashSet<>(one.keySet());
        ids.addAll(two.keySet());
        return ids;
    }
}
