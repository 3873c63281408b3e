package shimwright.bench.picture.plot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import shimwright.bench.picture.plot.Plots.Conformity;
import shimwright.bench.picture.plot.Plots.Pack;
import shimwright.bench.picture.plot.Plots.Packs;
import shimwright.bench.picture.plot.Plots.Page;
import shimwright.bench.picture.plot.Plots.Places;
import shimwright.bench.picture.plot.Plots.Series;
import shimwright.bench.picture.plot.Plots.Share;
import shimwright.bench.picture.svg.DrawingStyle;
import shimwright.bench.picture.svg.DrawnSvg;
import shimwright.bench.picture.svg.SvgRules;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.UnitSystem;

class PlotsTest {
    private static final OptionalDouble NONE = OptionalDouble.empty();
    private static final double FOOT = 232;
    private static final List<Double> WIDTHS = List.of(600.0, 360.0, 280.0, 1000.0);

    private static OptionalDouble mm(double value) {
        return OptionalDouble.of(value / 1000);
    }

    private static List<Double> all(double... values) {
        return Arrays.stream(values).map(v -> v / 1000).boxed().collect(Collectors.toList());
    }

    private static Page page(double width) {
        return new Page("p", width, UnitSystem.METRIC);
    }

    @Test
    void readings_show_both_indicators_their_settled_tail_limits_mean_and_the_odd_one() {
        Series series = new Series(
                "Input shaft end play, trial",
                Kind.LENGTH,
                all(.24, .25, .24),
                all(.32, .31, .31),
                1,
                mm(.02),
                mm(.08),
                mm(.2783),
                .0082e-3,
                Map.of(0, "read again"));
        for (double width : WIDTHS) {
            DrawnSvg drawn = SvgRules.check(Plots.series(series, page(width)), "p");
            assertThat(drawn.texts())
                    .contains("1", "2", "3", "settled", "indicator 1", "indicator 2", "reading 1: read again")
                    .contains("least 0.020 mm", "most 0.080 mm", "0.278 ± 0.008 mm");
        }
        DrawnSvg inches = SvgRules.check(Plots.series(series, new Page("p", 600, UnitSystem.INCH)), "p");
        assertThat(inches.texts()).contains("most 0.0031 in");
    }

    @Test
    void a_series_that_has_not_settled_has_no_tail_and_no_mean() {
        Series series =
                new Series("Gap", Kind.LENGTH, all(32.07, 32.11, 32.15), List.of(), 3, NONE, NONE, NONE, 0, Map.of());
        DrawnSvg drawn = SvgRules.check(Plots.series(series, page(600)), "p");
        assertThat(drawn.texts()).doesNotContain("settled", "indicator 2");
        assertThat(drawn.all("desc").get(0).getTextContent()).isEqualTo("3 readings, not settled.");
        Series empty = new Series("Gap", Kind.TORQUE, List.of(), List.of(), 0, NONE, NONE, NONE, 0, Map.of());
        SvgRules.check(Plots.series(empty, page(600)), "p");
    }

    @Test
    void a_value_stands_over_its_limits_cold_and_hot_with_its_chance() {
        Conformity conformity = new Conformity(
                "Side bearing preload",
                Kind.LENGTH,
                -.16e-3,
                .01e-3,
                Double.POSITIVE_INFINITY,
                mm(-.25),
                mm(-.15),
                .8413,
                mm(-.117));
        for (double width : WIDTHS) {
            DrawnSvg drawn = SvgRules.check(Plots.conformity(conformity, page(width)), "p");
            assertThat(drawn.texts())
                    .contains("p = 84.1 % within the limits", "least −0.250 mm", "most −0.150 mm")
                    .contains("cold −0.160 mm", "hot −0.117 mm");
        }
    }

    @Test
    void the_bell_is_student_s_and_stands_where_the_value_is() {
        double halfHeight = bellWidth(Double.POSITIVE_INFINITY);
        // half height of a normal density lies at sqrt(2 ln 2) u = 1.17741 u (any table of the normal density)
        assertThat(halfHeight).isCloseTo(1.1774, within(0.01));
        // half height of Student's t with 2 degrees of freedom: (1 + t²/2)^(-3/2) = 1/2, t = 1.0842 (from the density)
        assertThat(bellWidth(2)).isCloseTo(1.0842, within(0.01));
    }

    /** Half the width of the bell at half its height, in units of u; the axis is 11.2 u long and stands at FOOT. */
    private static double bellWidth(double nu) {
        Conformity conformity = new Conformity("x", Kind.LENGTH, 0, 1e-5, nu, mm(-.05), mm(.05), 1, NONE);
        DrawnSvg drawn = DrawnSvg.of(Plots.conformity(conformity, page(1000)));
        Element bell = drawn.all("path").stream()
                .filter(e -> DrawingStyle.BLUE.equals(e.getAttribute("stroke"))
                        && "2".equals(e.getAttribute("stroke-width")))
                .findFirst()
                .orElseThrow();
        double[][] points = Arrays.stream(bell.getAttribute("d").substring(1).split("L"))
                .map(p -> Arrays.stream(p.split(" "))
                        .mapToDouble(Double::parseDouble)
                        .toArray())
                .toArray(double[][]::new);
        double top = Arrays.stream(points).mapToDouble(p -> p[1]).min().orElseThrow();
        double half = (top + FOOT) / 2;
        double[] crossings = IntStream.range(1, points.length)
                .filter(i -> (points[i - 1][1] < half) != (points[i][1] < half))
                .mapToDouble(i -> points[i - 1][0]
                        + (half - points[i - 1][1])
                                / (points[i][1] - points[i - 1][1])
                                * (points[i][0] - points[i - 1][0]))
                .toArray();
        double perU = (points[points.length - 1][0] - points[0][0]) / 11.2;
        return (crossings[1] - crossings[0]) / 2 / perU;
    }

    @Test
    void a_chance_that_rounds_to_certainty_is_not_called_certain() {
        Conformity sure = new Conformity("x", Kind.LENGTH, .05e-3, 5e-6, 9, mm(.02), mm(.08), .99996, NONE);
        assertThat(DrawnSvg.of(Plots.conformity(sure, page(600))).texts()).contains("p over 99.9 % within the limits");
        Conformity without = new Conformity("x", Kind.LENGTH, .05e-3, 0, 9, NONE, NONE, 1, NONE);
        assertThat(SvgRules.check(Plots.conformity(without, page(600)), "p").texts())
                .contains("no limits given");
    }

    @Test
    void packs_show_their_bars_the_chosen_one_and_the_drawer() {
        Packs packs = new Packs(
                "Packs for the input end play",
                mm(.02),
                mm(.08),
                mm(.05),
                List.of(
                        new Pack("d52-03 + d52-09 = 1.033 mm", .0423e-3, .009e-3, "99.9 %", true),
                        new Pack("d52-11 = 1.046 mm", .0293e-3, .009e-3, "96.1 %", false)),
                all(.797, .85, .9, .8, .2, .233),
                all(.8, .233));
        for (double width : WIDTHS) {
            DrawnSvg drawn = SvgRules.check(Plots.packs(packs, page(width)), "p");
            assertThat(drawn.texts()).contains("99.9 %", "96.1 %", "In the drawer, by measured thickness");
            assertThat(drawn.all("path").stream().filter(e -> "3".equals(e.getAttribute("stroke-width"))))
                    .hasSize(2);
            assertThat(drawn.all("desc").get(0).getTextContent()).contains("d52-03 + d52-09", "0.042 mm");
        }
        Packs bare = new Packs("Packs", NONE, NONE, NONE, List.of(), List.of(), List.of());
        SvgRules.check(Plots.packs(bare, page(600)), "p");
    }

    @Test
    void budget_bars_are_as_long_as_their_shares() {
        List<Share> shares = List.of(new Share("repeatability", .6), new Share("gauge", .3), new Share("heat", .002));
        for (double width : WIDTHS) {
            DrawnSvg drawn =
                    SvgRules.check(Plots.budgetBars("Where the uncertainty comes from", shares, page(width)), "p");
            assertThat(drawn.texts()).contains("60 %", "30 %", "under 1 %");
        }
    }

    @Test
    void places_round_a_ring_name_the_odd_one() {
        Places places = new Places(
                "Crown wheel backlash",
                Kind.LENGTH,
                all(.270, .275, .280, .275, .270, .360, .255, .260),
                mm(.12),
                mm(.20),
                .2806e-3,
                OptionalInt.of(5),
                "0.090 from the others, read it again");
        for (double width : WIDTHS) {
            DrawnSvg drawn = SvgRules.check(Plots.places(places, page(width)), "p");
            assertThat(drawn.texts()).contains("6: 0.360", "1: 0.270", "0.281");
            assertThat(String.join(" ", drawn.texts())).contains("0.105\u00a0mm", "read it again");
        }
    }

    /** Readings as a bench meets them, to 10 mm either way, on anything from a phone up. */
    @Property(tries = 200, seed = "20261125")
    void any_readings_make_a_sound_picture(
            @ForAll @Size(max = 12) List<@DoubleRange(min = -0.01, max = 0.01) @Scale(5) Double> values,
            @ForAll @DoubleRange(min = 360, max = 1400) double width,
            @ForAll @IntRange(max = 12) int settled) {
        int from = Math.min(settled, values.size());
        Series series = new Series("Any", Kind.LENGTH, values, List.of(), from, NONE, mm(.5), NONE, 0, Map.of());
        SvgRules.check(Plots.series(series, page(width)), "p");
        if (!values.isEmpty()) {
            SvgRules.check(
                    Plots.places(
                            new Places("Any", Kind.LENGTH, values, NONE, NONE, values.get(0), OptionalInt.empty(), ""),
                            page(width)),
                    "p");
            Conformity conformity = new Conformity(
                    "Any",
                    Kind.LENGTH,
                    values.get(0),
                    Math.abs(values.get(values.size() - 1)),
                    3,
                    mm(-3),
                    mm(4),
                    .5,
                    OptionalDouble.of(values.get(values.size() / 2)));
            SvgRules.check(Plots.conformity(conformity, page(width)), "p");
        }
    }

    @Property
    void ticks_are_round_numbers_within_the_axis(
            @ForAll @DoubleRange(min = -1, max = 1) double one, @ForAll @DoubleRange(min = -1, max = 1) double two) {
        Axis axis = Axis.over(new double[] {one, two}, Kind.LENGTH, UnitSystem.METRIC, 0, 500, 6);
        assertThat(axis.ticks()).hasSizeBetween(2, 14);
        for (double tick : axis.ticks()) {
            assertThat(axis.at(tick)).isBetween(-1e-6, 500 + 1e-6);
            double steps = tick * 1e3 / axis.step();
            assertThat(steps).isCloseTo(Math.rint(steps), within(1e-6));
        }
        assertThat(axis.at(axis.low())).isEqualTo(0.0);
        assertThat(axis.at(axis.high())).isEqualTo(500.0);
    }

    @Test
    void what_cannot_be_drawn_is_refused() {
        assertThatThrownBy(() -> page(100)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Conformity("x", Kind.LENGTH, 0, -1, 3, NONE, NONE, 0, NONE))
                .isInstanceOf(IllegalArgumentException.class);
        Conformity lost = new Conformity("x", Kind.LENGTH, Double.NaN, 1e-6, 3, NONE, NONE, 0, NONE);
        assertThatThrownBy(() -> Plots.conformity(lost, page(600))).isInstanceOf(RuntimeException.class);
    }
}
