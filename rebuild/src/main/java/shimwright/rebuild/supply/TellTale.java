package shimwright.rebuild.supply;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import shimwright.rebuild.unit.model.Bearing;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Unit;

/** What is measured on a part that comes, so that the likely wrong one is seen. */
final class TellTale {
    private static final Pattern SIZE = Pattern.compile("\\d+(\\.\\d+)?(x\\d+(\\.\\d+)?)+");

    private TellTale() {}

    /** In words; empty where the unit file says nothing of the items. */
    static String of(Unit unit, List<Item> items) {
        return Stream.concat(
                        unit.type().bearings().stream()
                                .filter(bearing -> items.stream()
                                        .anyMatch(item -> bearing.items().contains(item.id())))
                                .map(TellTale::of),
                        unit.type().seals().stream()
                                .filter(seal -> items.stream()
                                        .anyMatch(item -> speaksOf(item.name(), seal.size(), seal.where())))
                                .map(seal ->
                                        seal.size() + (seal.lip().isBlank() ? "" : "; lip " + seal.lip() + ", by eye")))
                .distinct()
                .collect(Collectors.joining(". "));
    }

    private static String of(Bearing bearing) {
        return bearing.size() + (bearing.twin().isBlank() ? "" : "; not its twin: " + bearing.twin());
    }

    private static boolean speaksOf(String item, String size, String where) {
        Matcher sizes = SIZE.matcher(size);
        return (sizes.find() && item.contains(sizes.group())) || item.equalsIgnoreCase(where);
    }
}
