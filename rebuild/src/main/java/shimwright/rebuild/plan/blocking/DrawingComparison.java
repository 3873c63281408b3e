package shimwright.rebuild.plan.blocking;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import shimwright.rebuild.unit.file.UnitFiles;

/** The comparison of a unit file with its own drawing, in lines to read: remarks, not refusals. */
public final class DrawingComparison {
    private DrawingComparison() {}

    /**
     * One line that says how many orders the drawing proves and how many of them the file has, then one line for each that
     * it has not, with the places of both steps. Nothing where the drawing proves no order.
     *
     * @param file name of the file, for the places
     * @param good the file as read
     */
    public static List<String> report(String file, UnitFiles.Good good) {
        Map<String, Finding> found = new LinkedHashMap<>();
        Map<String, List<String>> variants = new LinkedHashMap<>();
        for (String variant : good.type().variants().keySet()) {
            for (Finding finding : Blocking.of(good.type().resolve(variant))) {
                found.putIfAbsent(finding.key() + finding.kind(), finding);
                variants.computeIfAbsent(finding.key() + finding.kind(), k -> new ArrayList<>())
                        .add(variant);
            }
        }
        if (found.isEmpty()) {
            return List.of();
        }
        List<String> lines = new ArrayList<>();
        long agree = found.values().stream().filter(f -> !f.differs()).count();
        lines.add(file + ": the drawing proves " + found.size() + " orders of two steps; the file has " + agree
                + " of them.");
        found.forEach((key, finding) -> {
            if (finding.differs()) {
                List<String> in = variants.getOrDefault(key, List.of());
                boolean all = in.size() == good.type().variants().size();
                lines.add(place(file, good, finding.first().id()) + " and "
                        + place(file, good, finding.then().id()) + ": "
                        + (all ? "" : "in variant " + String.join(", ", in) + " ") + finding.sentence());
            }
        });
        return List.copyOf(lines);
    }

    private static String place(String file, UnitFiles.Good good, String step) {
        return file + ":" + good.stepLines().getOrDefault(step, 1);
    }
}
