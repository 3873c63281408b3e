package shimwright.bench.web.job;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import shimwright.bench.web.kit.Pages;
import shimwright.bench.web.kit.PartPhotos;
import shimwright.bench.web.sheet.SheetInJob;
import shimwright.rebuild.job.PartPhoto;
import shimwright.rebuild.sheet.JobSheet;
import shimwright.rebuild.sheet.JobSheets;
import shimwright.rebuild.unit.model.Fastener;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Unit;

/**
 * A part of a step that has a picture of its own.
 *
 * @param name as the step's page calls it
 * @param address of its picture, below the job's address
 * @param sectionFirst true where the section draws something of the step, so that it is what one sees first
 * @param sheets its worksheets
 * @param photos of it, to be shown beside its drawing
 */
public record ShownPart(String name, String address, boolean sectionFirst, List<Sheet> sheets, List<PartPhoto> photos) {

    /** A worksheet of the part, by its title, and where it is opened. */
    public record Sheet(String title, String name, String address) {}

    private static final int MOST = 6;

    /**
     * What the step builds, puts in, takes out and tightens, in that order. Where a whole sub-assembly goes in, what the section draws
     * of it and an earlier step has built is left out.
     */
    static List<ShownPart> of(Unit unit, Step step, JobSheets sheets, PartPhotos photos) {
        Set<String> items = new LinkedHashSet<>(step.builds());
        items.addAll(step.installs());
        items.addAll(step.removes());
        boolean drawn = items.isEmpty() || items.stream().anyMatch(id -> inSection(unit, unit.item(id)));
        if (items.size() > MOST) {
            items.removeIf(id -> !step.builds().contains(id) && inSection(unit, unit.item(id)));
        }
        List<ShownPart> shown = new ArrayList<>();
        String at = "?step=" + Pages.encoded(step.id());
        for (String id : items) {
            Item item = unit.item(id);
            shown.add(new ShownPart(
                    upper(item.name()),
                    "/part/item/" + Pages.encoded(id) + at,
                    drawn,
                    opened(sheets, sheets.ofItem(id), step),
                    photos.ofItem(id)));
        }
        for (String id : step.fasteners()) {
            Fastener fastener = unit.fastener(id);
            String name = fastener.thread() + " " + fastener.where().split(",", 2)[0];
            shown.add(new ShownPart(
                    name,
                    "/part/fastener/" + Pages.encoded(id) + at,
                    drawn,
                    opened(sheets, sheets.ofFastener(fastener), step),
                    List.of()));
        }
        return List.copyOf(shown);
    }

    private static List<Sheet> opened(JobSheets of, List<JobSheet> sheets, Step step) {
        String root = "/job/" + of.job().id();
        return sheets.stream()
                .map(sheet -> new Sheet(sheet.sheet().title(), sheet.name(), SheetInJob.opened(root, sheet, step.id())))
                .toList();
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
        return shown.stream().allMatch(ShownPart::sectionFirst) ? 0 : 1;
    }

    private static String upper(String name) {
        return name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1);
    }
}
