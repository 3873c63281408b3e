package shimwright.mechanics.worksheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import shimwright.mechanics.measure.Distribution;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Uncertainty;

/**
 * What moves one input, or several at once; independent of all other influences.
 *
 * @param name path of the input, or the shared name
 * @param moves standard uncertainty that it brings to each input, SI, by path
 * @param unit its shape, with a standard uncertainty of 1
 */
record Influence(String name, Map<String, Double> moves, Uncertainty unit) {
    /** All influences behind the uncertainties of a case, always in the same order. */
    static Outcome<List<Influence>> of(Map<String, List<Uncertainty>> uncertainties) {
        List<Influence> own = new ArrayList<>();
        Map<String, Influence> shared = new TreeMap<>();
        List<Refusal> refusals = new ArrayList<>();
        new TreeMap<>(uncertainties).forEach((path, list) -> {
            int count = 0;
            for (Uncertainty uncertainty : list) {
                Uncertainty unit = new Uncertainty(1, uncertainty.form(), uncertainty.nu(), uncertainty.shared());
                if (uncertainty.shared().isEmpty()) {
                    count++;
                    own.add(new Influence(
                            count == 1 ? path : path + " (" + count + ")", Map.of(path, uncertainty.u()), unit));
                    continue;
                }
                Influence before = shared.get(uncertainty.shared());
                if (before != null && !before.unit().equals(unit)) {
                    refusals.add(Refusal.of(
                            path,
                            "the uncertainty shared as \"" + uncertainty.shared() + "\" has another shape than before",
                            "One influence has one shape; give different names to different ones"));
                    continue;
                }
                Map<String, Double> moves = new LinkedHashMap<>(before == null ? Map.of() : before.moves());
                moves.merge(path, uncertainty.u(), Double::sum);
                shared.put(uncertainty.shared(), new Influence("shared " + uncertainty.shared(), moves, unit));
            }
        });
        own.addAll(shared.values());
        return refusals.isEmpty() ? Outcome.ok(List.copyOf(own)) : Outcome.refused(refusals);
    }

    /** A refusal of the input it moves; of the first where it moves several. */
    Refusal refusal(String fact, String hint) {
        String first = moves.keySet().iterator().next();
        return moves.size() == 1 ? Refusal.of(first, fact, hint) : new Refusal(first, name, fact, hint);
    }

    Distribution distribution() {
        return Distribution.of(unit);
    }

    /** Largest part it brings to one input. */
    double size() {
        return moves.values().stream().mapToDouble(u -> u).max().orElse(0);
    }
}
