package shimwright.rebuild.inspect;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Unit;
import shimwright.rebuild.unit.model.WearLimit;

/**
 * One piece that is read and judged by itself: one ring of five, the second of three springs, a sleeve on its hub.
 *
 * @param id within its limit; empty where the limit judges this piece alone
 * @param name in words
 * @param parts single parts that it is made of: the item, or the item and a number where the unit has several of it
 */
public record JudgedPiece(String id, String name, List<String> parts) {
    private static final String TOGETHER = "+";
    private static final String NUMBER = "#";

    public JudgedPiece {
        parts = List.copyOf(parts);
    }

    /** The single parts of an item: itself, or each with its number where there are several. */
    public static List<String> parts(Item item) {
        return item.quantity() <= 1
                ? List.of(item.id())
                : IntStream.rangeClosed(1, item.quantity())
                        .mapToObj(n -> item.id() + NUMBER + n)
                        .toList();
    }

    /** The item that a single part is one of. */
    public static String item(String part) {
        int number = part.indexOf(NUMBER);
        return number < 0 ? part : part.substring(0, number);
    }

    /** A single part in words; empty where the unit has none of that name. */
    public static Optional<JudgedPiece> part(Unit unit, String part) {
        return unit.type().items().stream()
                .filter(item -> parts(item).contains(part))
                .findFirst()
                .map(item -> new JudgedPiece(part, name(item, part), List.of(part)));
    }

    /** What an entry calls a piece by its id, in words: the id itself where the unit has none of that name. */
    public static String named(Unit unit, String id) {
        return Stream.of(id.split("\\+"))
                .map(part -> part(unit, part).map(JudgedPiece::name).orElse(part))
                .collect(Collectors.joining(" with "));
    }

    private static String name(Item item, String part) {
        int number = part.indexOf(NUMBER);
        return number < 0 ? item.name() : item.name() + ", " + part.substring(number + 1) + " of " + item.quantity();
    }

    /** Items of the piece. */
    public List<String> items() {
        return parts.stream().map(JudgedPiece::item).distinct().toList();
    }

    /**
     * The pieces that a limit judges, in the order in which the file names their items. What the unit has not in its variant
     * is passed over.
     */
    public static List<JudgedPiece> of(Unit unit, WearLimit wear) {
        Map<String, Item> known = new LinkedHashMap<>();
        Set<String> named = new HashSet<>(wear.items());
        wear.together().forEach(named::addAll);
        unit.type().items().stream()
                .filter(item -> named.contains(item.id()))
                .forEach(item -> known.putIfAbsent(item.id(), item));
        List<JudgedPiece> pieces = new ArrayList<>();
        Set<String> seen = new LinkedHashSet<>();
        for (String id : wear.items()) {
            List<List<String>> groups = wear.together().stream()
                    .filter(group -> group.contains(id) && known.keySet().containsAll(group))
                    .toList();
            if (groups.isEmpty() && known.containsKey(id)) {
                Item item = known.get(id);
                parts(item).forEach(part -> pieces.add(new JudgedPiece(part, name(item, part), List.of(part))));
            }
            groups.stream()
                    .filter(group -> seen.add(String.join(TOGETHER, group)))
                    .forEach(group -> pieces.add(together(group, known)));
        }
        return pieces.size() == 1
                ? List.of(
                        new JudgedPiece("", pieces.get(0).name(), pieces.get(0).parts()))
                : pieces.isEmpty() ? List.of(new JudgedPiece("", wear.what(), List.of())) : List.copyOf(pieces);
    }

    private static JudgedPiece together(List<String> group, Map<String, Item> known) {
        List<Item> items =
                group.stream().flatMap(id -> Stream.ofNullable(known.get(id))).toList();
        return new JudgedPiece(
                String.join(TOGETHER, group),
                items.stream().map(Item::name).collect(Collectors.joining(" with ")),
                items.stream().flatMap(item -> parts(item).stream()).toList());
    }
}
