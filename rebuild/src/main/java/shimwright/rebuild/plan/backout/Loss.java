package shimwright.rebuild.plan.backout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Kit;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Unit;

/**
 * Something that undoing destroys.
 *
 * @param what in the words of the file
 * @param step whose undoing destroys it
 * @param item id of the item it is; empty where it is none (sealant, a lock)
 * @param part its part number; empty where the file gives none
 * @param price of one in the shop's own money, from the kit; 0 where the file gives none
 */
public record Loss(String what, Step step, String item, String part, double price) {
    private static final Set<String> SMALL = Set.of("the", "a", "of", "on", "in", "and", "both", "all");

    /** What undoing these steps destroys, each thing once. */
    static List<Loss> of(Unit unit, List<Step> undone) {
        return new Finder(unit).of(undone);
    }

    /** Finds losses of one unit; the words of its items are taken apart once. */
    static final class Finder {
        private final Unit unit;
        private final Map<Item, Set<String>> names = new LinkedHashMap<>();
        private final Map<String, Optional<Item>> found = new HashMap<>();

        Finder(Unit unit) {
            this.unit = unit;
            unit.type().items().stream()
                    .filter(item -> !item.trial())
                    .forEach(item -> names.put(item, words(item.name())));
        }

        /** What undoing these steps destroys, each thing once. */
        List<Loss> of(List<Step> undone) {
            List<Loss> losses = new ArrayList<>();
            Set<String> named = new LinkedHashSet<>();
            for (Step step : undone) {
                for (String what : step.destroys()) {
                    if (named.add(what)) {
                        losses.add(loss(step, what));
                    }
                }
            }
            return List.copyOf(losses);
        }

        private Loss loss(Step step, String what) {
            Optional<Item> item = found.computeIfAbsent(what, this::item);
            return new Loss(
                    what,
                    step,
                    item.map(Item::id).orElse(""),
                    item.map(Item::part).orElse(""),
                    item.map(one -> price(unit, one)).orElse(0.0));
        }

        private Optional<Item> item(String what) {
            Set<String> words = words(what.split("\\(", 2)[0]);
            Optional<Item> nearest = Optional.empty();
            int fewest = Integer.MAX_VALUE;
            for (Map.Entry<Item, Set<String>> one : names.entrySet()) {
                Set<String> name = one.getValue();
                if (!words.isEmpty() && name.containsAll(words) && name.size() < fewest) {
                    fewest = name.size();
                    nearest = Optional.of(one.getKey());
                }
            }
            return nearest;
        }
    }

    private static double price(Unit unit, Item item) {
        return unit.kit()
                .map(Kit::contents)
                .flatMap(lines -> lines.stream()
                        .filter(line -> line.item().equals(item.id())
                                || (!item.part().isEmpty() && line.part().equals(item.part())))
                        .findFirst())
                .map(Kit.Line::price)
                .orElse(0.0);
    }

    /** The words that tell, in small letters and the singular. */
    private static Set<String> words(String text) {
        Set<String> words = new LinkedHashSet<>();
        for (String word : text.toLowerCase(Locale.ROOT).split("[^a-z0-9/]+", -1)) {
            if (!word.isEmpty() && !SMALL.contains(word)) {
                words.add(word.length() > 3 && word.endsWith("s") ? word.substring(0, word.length() - 1) : word);
            }
        }
        return words;
    }
}
