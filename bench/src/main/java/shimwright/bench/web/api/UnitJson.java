package shimwright.bench.web.api;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.ShimFamily;
import shimwright.rebuild.unit.model.UnitType.TellTale;
import shimwright.rebuild.workbench.PinnedUnit;

/** A unit of the shelf as programs see it: what must be known before a job of it can be opened. Lengths are in metres. */
final class UnitJson {
    private UnitJson() {}

    static Map<String, Object> unit(PinnedUnit unit) {
        Map<String, Object> one = new LinkedHashMap<>();
        one.put("type", unit.type().id());
        one.put("file", unit.hash());
        one.put("variants", unit.type().variants().keySet());
        one.put(
                "tellTales",
                unit.type().tellTales().stream().map(UnitJson::tellTale).toList());
        one.put(
                "families",
                unit.type().shimFamilies().entrySet().stream()
                        .map(family -> family(family.getKey(), family.getValue()))
                        .toList());
        one.put("items", unit.type().items().stream().map(UnitJson::item).toList());
        return one;
    }

    private static Map<String, Object> tellTale(TellTale tale) {
        Map<String, Object> one = new LinkedHashMap<>();
        one.put("tale", tale.id());
        one.put("look", tale.look());
        one.put("weight", tale.weight().name().toLowerCase(Locale.ROOT));
        one.put("shows", tale.shows());
        return one;
    }

    private static Map<String, Object> family(String id, ShimFamily family) {
        Map<String, Object> one = new LinkedHashMap<>();
        one.put("family", id);
        one.put("name", family.name());
        one.put("thinnest", family.thinnest());
        one.put("thickest", family.thickest());
        return one;
    }

    private static Map<String, Object> item(Item item) {
        Map<String, Object> one = new LinkedHashMap<>();
        one.put("item", item.id());
        one.put("name", item.name());
        one.put("variants", List.copyOf(item.only()));
        return one;
    }
}
