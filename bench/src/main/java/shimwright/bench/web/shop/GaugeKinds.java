package shimwright.bench.web.shop;

import java.util.List;
import java.util.Optional;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.MeasureUnit;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.Units;

/**
 * Kinds of gauges that lie on most benches, to fill the form with: what a certificate or the maker's sheet says counts more.
 * Indicators: JIS B 7503:2011, bezel of 50 mm and more, whole range and retrace. The rest: common practice, no source.
 */
public final class GaugeKinds {
    /**
     * What the form is filled with.
     *
     * @param id in the address
     * @param name as printed
     * @param mark a short mark to begin with
     * @param origin where the figures come from
     */
    public record Preset(
            String id,
            String name,
            String mark,
            String step,
            String errorLimit,
            String retrace,
            String range,
            String origin) {}

    private static final String PRACTICE = "common practice";

    static final List<Preset> ALL = List.of(
            new Preset(
                    "dial-0.01",
                    "dial indicator 0.01 mm",
                    "DI",
                    "0.01 mm",
                    "0.015 mm",
                    "0.003 mm",
                    "10 mm",
                    "JIS B 7503:2011"),
            new Preset(
                    "dial-0.001",
                    "dial indicator 0.001 mm",
                    "DF",
                    "0.001 mm",
                    "0.005 mm",
                    "0.002 mm",
                    "1 mm",
                    "JIS B 7503:2011"),
            new Preset(
                    "dial-0.001in",
                    "dial indicator 0.001 in",
                    "DI",
                    "0.001 in",
                    "0.001 in",
                    "0.0003 in",
                    "0.5 in",
                    PRACTICE),
            new Preset(
                    "lever-0.01",
                    "lever indicator 0.01 mm",
                    "LV",
                    "0.01 mm",
                    "0.010 mm",
                    "0.003 mm",
                    "0.8 mm",
                    PRACTICE),
            new Preset("micrometer", "micrometer 0-25 mm", "MIC", "0.001 mm", "0.004 mm", "0 mm", "25 mm", PRACTICE),
            new Preset("micrometer-in", "micrometer 0-1 in", "MIC", "0.0001 in", "0.0002 in", "0 in", "1 in", PRACTICE),
            new Preset("depth", "depth micrometer", "DM", "0.01 mm", "0.005 mm", "0 mm", "100 mm", PRACTICE),
            new Preset("caliper", "caliper", "CAL", "0.01 mm", "0.03 mm", "0 mm", "150 mm", PRACTICE),
            new Preset("bore", "bore gauge", "BG", "0.001 mm", "0.005 mm", "0.001 mm", "160 mm", PRACTICE),
            new Preset("feeler", "feeler gauges", "FEEL", "0.01 mm", "0.005 mm", "0 mm", "1 mm", PRACTICE));

    private GaugeKinds() {}

    static Optional<Preset> find(String id) {
        return ALL.stream().filter(preset -> preset.id().equals(id)).findFirst();
    }

    /** A length in the unit that shows it without a long tail, so that a form can be filled with it. */
    static String typed(double length) {
        MeasureUnit unit = Units.of(Kind.LENGTH).get(0);
        return Quantities.brief(length, unit);
    }
}
