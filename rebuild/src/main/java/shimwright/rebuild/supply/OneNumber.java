package shimwright.rebuild.supply;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Shop;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Kit;
import shimwright.rebuild.unit.model.Unit;

/**
 * Part numbers of which one has taken the place of another are one number: whoever asks for the old one, or has it in a list, gets
 * the one that holds now. The number that stands for them all is the first of them in the unit, or the one that holds.
 */
public final class OneNumber {
    /** Each number stands for itself. */
    static final OneNumber EACH = new OneNumber(new Shop(Map.of(), Map.of()), Map.of());

    private final Shop shop;
    private final Map<String, String> byHolding;

    private OneNumber(Shop shop, Map<String, String> byHolding) {
        this.shop = shop;
        this.byHolding = byHolding;
    }

    /** The numbers of a unit and of its kits as the shop knows them. */
    public static OneNumber of(Unit unit, Shop shop) {
        Map<String, String> first = new LinkedHashMap<>();
        unit.type().items().stream()
                .map(Item::part)
                .filter(part -> !part.isBlank())
                .forEach(part -> first.putIfAbsent(shop.holdsNow(part), part));
        return new OneNumber(shop, Map.copyOf(first));
    }

    /** The number that stands for this one. */
    String of(String part) {
        String holds = shop.holdsNow(part);
        return byHolding.getOrDefault(holds, holds);
    }

    /** The kits with their lines under the numbers that stand for theirs; a price of an old number gives way to one of the number that holds. */
    List<Kit> kits(List<Kit> kits) {
        List<String> priced = kits.stream()
                .flatMap(kit -> kit.contents().stream())
                .filter(line -> line.price() > 0)
                .map(Kit.Line::part)
                .toList();
        return kits.stream()
                .map(kit -> new Kit(
                        kit.id(),
                        kit.contents().stream().map(line -> line(line, priced)).toList(),
                        kit.price(),
                        kit.only()))
                .toList();
    }

    private Kit.Line line(Kit.Line line, List<String> priced) {
        String holds = shop.holdsNow(line.part());
        boolean old = !holds.equals(line.part()) && priced.contains(holds);
        return new Kit.Line(
                of(line.part()), line.name(), line.quantity(), old ? 0 : line.price(), line.from(), line.item());
    }

    /** Whether a line of a kit is what is needed, under whichever of its numbers. */
    public boolean has(Kit.Line line, Need need) {
        return KitCover.has(line(line, List.of()), need);
    }

    /** What has taken the place of a unit's numbers of a need, one after another; empty where they stand. */
    List<Entry.NumberReplaced> replaced(List<String> numbers) {
        return numbers.stream()
                .flatMap(number -> shop.inPlaceOf(number).stream())
                .distinct()
                .toList();
    }

    /** That a kit's list has the need under a number that holds no more and that the unit has not either; empty where it has not. */
    String listed(Kit kit, Need need, List<String> numbers) {
        Optional<String> old = kit.contents().stream()
                .filter(line -> !line.part().isBlank() && has(line, need) && !numbers.contains(line.part()))
                .map(Kit.Line::part)
                .filter(part -> !shop.holdsNow(part).equals(part))
                .findFirst();
        return old.map(part -> "the list of the kit still says " + part + ", in whose place " + shop.holdsNow(part)
                        + " is, says "
                        + shop.inPlaceOf(part).stream()
                                .map(Entry.NumberReplaced::who)
                                .distinct()
                                .collect(Collectors.joining(", ")))
                .orElse("");
    }
}
