package shimwright.bench.web.shop;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import shimwright.bench.bundle.BundleManifest;
import shimwright.bench.bundle.UnitBundle.PastChange;
import shimwright.bench.desk.Desk;
import shimwright.mechanics.outcome.Outcome;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.LogEntry;
import shimwright.rebuild.job.UnitPicture;

/**
 * What was taken in from another shop with a unit.
 *
 * @param entry that says so
 * @param from the other shop, in words
 * @param pictures that came with it
 * @param standing hashes of those that still go with the unit, with semicolons between
 * @param past how the file came to be in the other shop, as that one says
 */
public record CameIn(LogEntry entry, String from, List<UnitPicture> pictures, String standing, List<PastChange> past) {
    /** All of a unit type, the latest first. */
    static List<CameIn> of(Desk desk, String type) {
        List<CameIn> all = new ArrayList<>();
        Set<UnitPicture> before = new HashSet<>();
        Set<UnitPicture> now = new HashSet<>(desk.shop().unitPictures(type));
        for (LogEntry entry : desk.shop().unitFile(type)) {
            if (entry.body() instanceof Entry.UnitPictured came) {
                List<UnitPicture> more = came.pictures().stream()
                        .filter(one -> !before.contains(one))
                        .toList();
                if (!came.manifest().isEmpty()) {
                    all.add(new CameIn(
                            entry,
                            came.from().isEmpty() ? "from another shop" : "from " + came.from(),
                            more,
                            more.stream()
                                    .filter(now::contains)
                                    .map(UnitPicture::picture)
                                    .collect(Collectors.joining(";")),
                            past(desk, came.manifest())));
                }
                before.clear();
                before.addAll(came.pictures());
            }
        }
        Collections.reverse(all);
        return List.copyOf(all);
    }

    private static List<PastChange> past(Desk desk, String manifest) {
        return desk.versions()
                .manifest(manifest)
                .map(text -> BundleManifest.read(text.getBytes(StandardCharsets.UTF_8)))
                .filter(Outcome::isOk)
                .map(read -> read.orElseThrow().history())
                .orElse(List.of());
    }
}
