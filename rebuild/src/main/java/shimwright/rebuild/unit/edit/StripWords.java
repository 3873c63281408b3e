package shimwright.rebuild.unit.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import shimwright.rebuild.unit.model.Component;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Step.Danger;
import shimwright.rebuild.unit.model.Step.Undo;

/** What was said of a part as it came off, in the step that fits it: words, dangers, what undoing costs. */
final class StripWords {
    private static final String LEAD = " As it came off: ";
    private static final Set<String> ITSELF = Set.of("it", "itself", "yes");

    private StripWords() {}

    /** The words of a step without what a strip-down wrote behind them. */
    static String bare(String todo) {
        int at = todo.indexOf(LEAD);
        return at < 0 ? todo : todo.substring(0, at);
    }

    /** A step with what was found in its words; with its own words alone where nothing was. */
    static Step said(Step step, Removal one) {
        Removal.Found found = one.found();
        List<String> words = new ArrayList<>();
        add(words, "side up ", found.sideUp());
        add(words, "held by ", found.fasteners());
        add(words, "it took ", found.byForce());
        add(words, "destroyed: ", destroys(one));
        add(words, "sealed or locked with ", found.sealedWith());
        add(words, "", found.note());
        String tail = words.isEmpty() ? "" : LEAD + String.join("; ", words) + ".";
        Step now = Component.with(step, "todo", bare(step.todo()) + tail);
        String force = found.byForce().toLowerCase(Locale.ROOT);
        boolean heat = force.matches(".*(heat|hot|torch|oven|induction|warm).*");
        boolean press = force.matches(".*(press|puller|drift|hammer|blow).*");
        if (heat) {
            now = dangerous(now, Danger.HEAT, Undo.HEAT);
        }
        if (press) {
            now = dangerous(now, Danger.PRESS, Undo.SLOW);
        }
        if (!found.destroyed().isBlank()) {
            Set<String> all = new TreeSet<>(now.destroys());
            all.add(destroys(one));
            now = Component.with(Component.with(now, "undo", Undo.DESTROYS), "destroys", List.copyOf(all));
        }
        return now;
    }

    private static void add(List<String> words, String label, String text) {
        if (!text.isBlank()) {
            words.add(label + text.strip());
        }
    }

    /** True where the part itself was destroyed, so that it is renewed whenever it has been out. */
    static boolean itself(Removal one) {
        String destroyed = one.found().destroyed().strip().toLowerCase(Locale.ROOT);
        return ITSELF.contains(destroyed) || destroyed.equals(one.name().strip().toLowerCase(Locale.ROOT));
    }

    private static String destroys(Removal one) {
        return itself(one) ? one.name().strip() : one.found().destroyed().strip();
    }

    private static Step dangerous(Step step, Danger danger, Undo undo) {
        List<Danger> dangers = new ArrayList<>(step.dangers());
        if (!dangers.contains(danger)) {
            dangers.add(danger);
        }
        Step now = Component.with(step, "dangers", List.copyOf(dangers));
        return now.undo() == Undo.FREE ? Component.with(now, "undo", undo) : now;
    }
}
