package shimwright.bench.walk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import shimwright.rebuild.unit.model.Unit;

/** What a shop needs before its first job: gauges under marks of its own, and a drawer with pieces about the nominal of every place. */
final class FurnishedShop {
    private FurnishedShop() {}

    /**
     * Keeps them.
     *
     * @return thickness by tag as measured, m
     */
    static Map<String, Double> furnish(HttpDoor door, Unit unit, TrueSizes truth) {
        Map<String, Double> thickness = new LinkedHashMap<>();
        door.inShop("describe-shop", Map.of("fact", Map.of("name", "A shop that begins", "units", "metric")));
        gauge(door, "clock 1", "clock on a stand", "0.005 mm", "0.003 mm", "10 mm");
        gauge(door, "rod 7", "rod between faces", "0.004 mm", "0", "200 mm");
        gauge(door, "leaves", "leaves", "0.005 mm", "0", "1 mm");
        List<String> lines = new ArrayList<>();
        Map<String, Double> about = new LinkedHashMap<>();
        unit.type().clearances().stream()
                .flatMap(c -> c.positions().stream())
                .forEach(p -> about.putIfAbsent(p.family(), truth.nominal(p) / p.most()));
        about.forEach((family, nominal) -> {
            var shims = unit.shimFamily(family);
            double from = Math.max(shims.thinnest() + 1e-5, nominal - 0.40e-3);
            double to = Math.min(shims.thickest() - 1e-5, nominal + 0.40e-3);
            int number = 0;
            for (double size = from; size <= to; size += 0.02e-3) {
                String tag = family.toLowerCase(Locale.ROOT) + "-" + ++number;
                List<Double> read = truth.piece(tag, size);
                thickness.put(tag, (read.get(0) + read.get(1) + read.get(2)) / 3000);
                lines.add(tag + " " + family + " " + read.get(0) + " " + read.get(1) + " " + read.get(2));
            }
        });
        door.inShop("add-shims", Map.of("family", "", "list", String.join("\n", lines)));
        assertThat(door.shop().get("pieces")).hasSize(lines.size());
        return thickness;
    }

    private static void gauge(
            HttpDoor door, String mark, String name, String errorLimit, String retrace, String range) {
        door.inShop(
                "add-gauge",
                Map.of(
                        "gauge", mark,
                        "name", name,
                        "step", "0.01 mm",
                        "errorLimit", errorLimit,
                        "retrace", retrace,
                        "range", range,
                        "calibrated", "2026-01-09"));
    }
}
