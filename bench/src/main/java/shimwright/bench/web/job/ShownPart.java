package shimwright.bench.web.job;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import shimwright.bench.web.kit.Pages;
import shimwright.rebuild.unit.model.Fastener;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Unit;

/**
 * A part of a step that has a picture of its own.
 *
 * @param name as the step's page calls it
 * @param address of its picture, below the job's address
 * @param inSection true where the section draws it too
 */
public record ShownPart(String name, String address, boolean inSection) {

    /** What the step puts in, builds, takes out and tightens, in that order. */
    static List<ShownPart> of(Unit unit, Step step) {
        Set<String> items = new LinkedHashSet<>(step.installs());
        items.addAll(step.builds());
        items.addAll(step.removes());
        List<ShownPart> shown = new ArrayList<>();
        String at = "?step=" + Pages.encoded(step.id());
        for (String id : items) {
            Item item = unit.item(id);
            shown.add(new ShownPart(item.name(), "/part/item/" + Pages.encoded(id) + at, inSection(unit, item)));
        }
        for (String id : step.fasteners()) {
            Fastener fastener = unit.fastener(id);
            shown.add(new ShownPart(fastener.thread(), "/part/fastener/" + Pages.encoded(id) + at, false));
        }
        return List.copyOf(shown);
    }

    private static boolean inSection(Unit unit, Item item) {
        return item.shape() != Item.Shape.NONE
                || unit.type().section().castings().stream()
                        .anyMatch(casting -> casting.item().equals(item.id()))
                || unit.type().section().shafts().stream()
                        .anyMatch(shaft -> shaft.item().equals(item.id()));
    }

    /** Which view is open first: 0 for the section, 1 for the first part where the section draws none of them. */
    static int first(List<ShownPart> shown) {
        boolean items = shown.stream().anyMatch(part -> part.address().startsWith("/part/item/"));
        return items && shown.stream().noneMatch(ShownPart::inSection) ? 1 : 0;
    }
}
