package shimwright.bench.web.job;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shimwright.bench.desk.JobOnBench;
import shimwright.bench.web.kit.Pages;
import shimwright.bench.web.pair.QrCode;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.unit.model.Item;

/**
 * A label for a bag or tray: what lies in it, and a code that opens its page.
 *
 * @param key names it in addresses: {@code off-} and the entry that took it off, or {@code item-} and an item of the unit
 * @param title in large letters
 * @param part number; empty where there is none
 * @param below job, and when it came off
 * @param items of the unit that lie in it
 */
public record TagLabel(String key, String title, String part, String below, List<String> items) {
    private static final String OFF = "off-";
    private static final String ITEM = "item-";
    private static final int LONGEST = 64;

    public TagLabel {
        items = List.copyOf(items);
    }

    /** A label with its code. */
    public record Coded(TagLabel label, QrCode code) {}

    /** Everything of a job that can have a label: what came off, in order, then the items of the unit. */
    static Map<String, TagLabel> all(JobOnBench bench) {
        Map<String, TagLabel> all = new LinkedHashMap<>();
        Job job = bench.job();
        int at = 0;
        for (Job.Said<Entry.TakenOff> off : job.takenOff()) {
            at++;
            TagLabel label = new TagLabel(
                    OFF + off.id(),
                    off.what().gone(),
                    part(bench, off.what().items()),
                    job.opened().number() + " · came off as no. " + at,
                    off.what().items());
            all.put(label.key(), label);
        }
        for (Item item : bench.unit().type().items()) {
            TagLabel label = new TagLabel(
                    ITEM + item.id(),
                    item.name() + (item.quantity() > 1 ? ", " + item.quantity() + " pieces" : ""),
                    item.part(),
                    job.opened().number(),
                    List.of(item.id()));
            all.put(label.key(), label);
        }
        return all;
    }

    private static String part(JobOnBench bench, List<String> items) {
        return items.size() == 1
                ? bench.unit().type().items().stream()
                        .filter(item -> item.id().equals(items.get(0)))
                        .map(Item::part)
                        .findFirst()
                        .orElse("")
                : "";
    }

    /** True for what came off: those are offered first. */
    public boolean cameOff() {
        return key.startsWith(OFF);
    }

    /** What fits on a label; the page has all of it. */
    public String shortTitle() {
        return title.length() <= LONGEST ? title : title.substring(0, LONGEST - 1) + "…";
    }

    /** The address that the code opens. */
    String address(String shop, String job) {
        return shop + "tag/" + job + "/" + Pages.encoded(key);
    }

    /** What is known of one of them in its job; empty where the job has none of that name. */
    static Optional<TagLabel> of(JobOnBench bench, String key) {
        return Optional.ofNullable(all(bench).get(key));
    }

    /** The labels of a sheet, so many left free that were used before, in rows of three; a free place is null. */
    static List<List<List<Coded>>> sheets(List<Coded> labels, int used, int columns, int rows) {
        List<List<List<Coded>>> sheets = new ArrayList<>();
        int places = columns * rows;
        for (int at = 0; at < used + labels.size(); at += places) {
            List<List<Coded>> sheet = new ArrayList<>();
            for (int row = 0; row < rows; row++) {
                List<Coded> line = new ArrayList<>();
                for (int column = 0; column < columns; column++) {
                    int place = at + row * columns + column - used;
                    if (place >= 0 && place < labels.size()) {
                        line.add(labels.get(place));
                    } else if (place < 0) {
                        line.add(new Coded(FREE, NO_CODE));
                    }
                }
                sheet.add(line);
            }
            sheets.add(sheet);
        }
        return sheets;
    }

    private static final TagLabel FREE = new TagLabel("", "", "", "", List.of());
    private static final QrCode NO_CODE = new QrCode("-");
}
