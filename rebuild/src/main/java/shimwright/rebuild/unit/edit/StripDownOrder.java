package shimwright.rebuild.unit.edit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import shimwright.mechanics.outcome.Outcome;
import shimwright.rebuild.unit.model.Component;
import shimwright.rebuild.unit.model.Fastener;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.UnitType;

/**
 * A strip-down turned round: the order in which parts go in, from what was in the way when they came off; with the parts that the
 * file does not have, what held them, what was destroyed and how they sat. Said again, it changes nothing more.
 *
 * @param strip what came off, in order
 */
public record StripDownOrder(List<Removal> strip) implements UnitEdit {
    private static final String FROM_STRIP = "computed: from the mark";

    public StripDownOrder {
        strip = List.copyOf(strip);
    }

    @Override
    public Outcome<UnitType> on(UnitType type) {
        StripNodes turned = StripNodes.of(type, strip);
        return LearnedOrder.of(turned.steps(), type.section().scheme(), strip, turned.nodes())
                .map(steps -> filled(type, turned, steps));
    }

    @Override
    public String words() {
        return "the order of the strip-down";
    }

    /** The steps of a file that each thing turns round, in the order of the strip-down. */
    public List<Set<String>> turned(UnitType type) {
        return StripNodes.of(type, strip).nodes();
    }

    /** Bolts that were counted and have no torque: their mark on the head was not read, or no table has the thread. */
    public List<String> withoutTorque() {
        return strip.stream()
                .flatMap(one -> BoltText.of(one.found().fasteners()).stream()
                        .filter(bolt -> bolt.torque().isEmpty())
                        .map(bolt -> one.name() + ": " + bolt.words()))
                .toList();
    }

    private UnitType filled(UnitType type, StripNodes turned, List<Step> ordered) {
        Map<String, Step> steps = new LinkedHashMap<>();
        ordered.forEach(step -> steps.put(step.id(), step));
        List<Fastener> fasteners = new ArrayList<>(type.fasteners());
        List<Item> items = new ArrayList<>(turned.items());
        SeenSealants used = new SeenSealants(type.consumables());
        for (int k = 0; k < strip.size(); k++) {
            Removal one = strip.get(k);
            Set<String> nodes = turned.nodes().get(k);
            String main = ordered.stream()
                    .map(Step::id)
                    .filter(nodes::contains)
                    .reduce((a, b) -> b)
                    .orElse("");
            if (main.isEmpty()) {
                continue;
            }
            Step said = StripWords.said(find(steps, main), one);
            steps.put(main, used.with(bolted(said, one, fasteners), one.found().sealedWith()));
            if (StripWords.itself(one)) {
                Step now = find(steps, main);
                Set<String> own = Stream.of(now.builds(), now.installs())
                        .flatMap(List::stream)
                        .collect(Collectors.toSet());
                items.replaceAll(item -> item.name().equalsIgnoreCase(one.name().strip()) && own.contains(item.id())
                        ? Component.with(item, "renew", true)
                        : item);
            }
        }
        Map<String, String> reasons = new LinkedHashMap<>(type.reasons());
        Set<String> given = steps.values().stream()
                .flatMap(step -> step.because().values().stream())
                .collect(Collectors.toSet());
        LearnedOrder.REASONS.forEach((id, text) -> {
            if (given.contains(id)) {
                reasons.put(id, text);
            }
        });
        UnitType with = Component.with(type, "items", List.copyOf(items));
        with = Component.with(with, "fasteners", List.copyOf(fasteners));
        with = Component.with(with, "reasons", reasons);
        with = Component.with(with, "consumables", used.usedIn(steps.values()));
        return Component.with(with, "steps", List.copyOf(steps.values()));
    }

    private static Step find(Map<String, Step> steps, String id) {
        Step step = steps.get(id);
        if (step == null) {
            throw new IllegalArgumentException("no step " + id);
        }
        return step;
    }

    /** The step with the bolts that were counted at it; what an earlier strip-down computed for it and is not there goes. */
    private static Step bolted(Step step, Removal one, List<Fastener> all) {
        List<BoltText> bolts = BoltText.of(one.found().fasteners());
        List<String> at = new ArrayList<>(step.fasteners());
        for (Fastener known : List.copyOf(all)) {
            boolean ours = at.contains(known.id()) && known.origin().startsWith(FROM_STRIP);
            if (ours && bolts.stream().noneMatch(bolt -> bolt.like(known.thread(), known.quantity()))) {
                all.remove(known);
                at.remove(known.id());
            }
        }
        for (BoltText bolt : bolts) {
            OptionalDouble torque = bolt.torque();
            boolean there = all.stream()
                    .anyMatch(known -> at.contains(known.id()) && bolt.like(known.thread(), known.quantity()));
            if (torque.isPresent() && !there) {
                String id = TypeParts.freeId("B", all.stream().map(Fastener::id).toList());
                all.add(new Fastener(
                        id,
                        one.name().strip(),
                        bolt.thread(),
                        bolt.strength(),
                        bolt.quantity(),
                        torque.getAsDouble(),
                        0,
                        0,
                        "",
                        "",
                        false,
                        "",
                        bolt.origin(),
                        "",
                        0,
                        Set.of()));
                at.add(id);
            }
        }
        return Component.with(step, "fasteners", List.copyOf(at));
    }
}
