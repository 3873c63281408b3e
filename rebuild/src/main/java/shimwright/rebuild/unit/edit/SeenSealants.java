package shimwright.rebuild.unit.edit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.stream.Stream;
import shimwright.rebuild.unit.model.Component;
import shimwright.rebuild.unit.model.Consumable;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Step.Danger;

/** Sealants and lockers that were seen as a unit came apart, each once among what its steps use up. */
final class SeenSealants {
    /** Which one it was nobody can see; how long it stays open and cures stands on the tube. */
    private static final String SEEN = "seen at the strip-down; open time and cure stand on the tube";

    private final List<Consumable> all;

    SeenSealants(List<Consumable> known) {
        all = new ArrayList<>(known);
    }

    /** What steps use, without what was seen at none of them any more. */
    List<Consumable> usedIn(Collection<Step> steps) {
        return all.stream()
                .filter(one -> !seen(one.id())
                        || steps.stream().anyMatch(step -> step.consumables().contains(one.id())))
                .toList();
    }

    private boolean seen(String id) {
        return all.stream().anyMatch(one -> one.id().equals(id) && one.note().equals(SEEN));
    }

    /** The step with what was seen at it, in the place of what was seen there before. */
    Step with(Step step, String sealedWith) {
        String name = sealedWith.strip();
        String id = name.isEmpty() ? "" : named(name);
        List<String> uses = new ArrayList<>(step.consumables());
        uses.removeIf(one -> seen(one) && !one.equals(id));
        if (!id.isEmpty() && !uses.contains(id)) {
            uses.add(id);
        }
        Step with = Component.with(step, "consumables", List.copyOf(uses));
        return id.isEmpty() || step.dangers().contains(Danger.CHEMICAL)
                ? with
                : Component.with(
                        with,
                        "dangers",
                        Stream.concat(step.dangers().stream(), Stream.of(Danger.CHEMICAL))
                                .toList());
    }

    private String named(String name) {
        return all.stream()
                .filter(one -> one.name().equalsIgnoreCase(name))
                .map(Consumable::id)
                .findFirst()
                .orElseGet(() -> added(name));
    }

    private String added(String name) {
        String id = TypeParts.freeId(
                TypeParts.idOf(name), all.stream().map(Consumable::id).toList());
        all.add(new Consumable(id, name, "", 0, 0, SEEN));
        return id;
    }
}
