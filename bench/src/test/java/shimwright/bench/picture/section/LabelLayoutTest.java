package shimwright.bench.picture.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.awt.geom.Area;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import shimwright.bench.picture.section.SectionLabels.Label;
import shimwright.bench.picture.section.SectionLabels.Look;
import shimwright.bench.picture.section.SectionLabels.PlacedLabel;
import shimwright.bench.picture.svg.Hatching;
import shimwright.bench.picture.svg.Svg;
import shimwright.bench.picture.svg.TextMetrics;
import shimwright.rebuild.unit.model.Clearance.Length;

/** Letters, section lines, flags and loops: the parts that decide where things stand. */
class LabelLayoutTest {

    @Test
    void letters_are_as_wide_as_the_font_says() {
        Font font = new Font("DejaVu Sans", Font.PLAIN, 100);
        Assumptions.assumeTrue("DejaVu Sans".equals(font.getFamily()), "DejaVu Sans is installed");
        FontRenderContext plain = new FontRenderContext(null, true, true);
        for (String text :
                List.of("Depth shim under the head cup", "+ 234.40 mm", "5th driven wheel (B)", "WMgjij 0.05")) {
            double asked = font.getStringBounds(text, plain).getWidth();
            assertThat(TextMetrics.width(text, 100, false)).as(text).isCloseTo(asked, within(0.02 * asked));
            Font bold = font.deriveFont(Font.BOLD);
            double heavy = bold.getStringBounds(text, plain).getWidth();
            assertThat(TextMetrics.width(text, 100, true)).as(text).isCloseTo(heavy, within(0.07 * heavy));
        }
    }

    @Test
    void a_text_that_is_too_long_is_cut_with_an_ellipsis_and_wrapped_at_words() {
        assertThat(TextMetrics.fit("short", 13, false, 200)).isEqualTo("short");
        String cut = TextMetrics.fit("a name that goes on and on", 13, false, 80);
        assertThat(cut).endsWith("…").startsWith("a name");
        assertThat(TextMetrics.width(cut, 13, false)).isLessThanOrEqualTo(80);
        assertThat(TextMetrics.wrap("one two three", 13, false, TextMetrics.width("one two", 13, false) + 1))
                .containsExactly("one two", "three");
    }

    @Test
    void section_lines_stay_within_the_shape_and_lie_at_their_angle() {
        Area ring = new Area(new Ellipse2D.Double(10, 10, 100, 80));
        ring.subtract(new Area(new Ellipse2D.Double(40, 30, 30, 30)));
        Area near = new Area(ring);
        List<double[]> lines = lines(Hatching.lines(ring, 45, 4));
        assertThat(lines).hasSizeGreaterThan(25);
        for (double[] l : lines) {
            assertThat(l[1] - l[3]).as("rises to the right").isCloseTo(l[2] - l[0], within(0.03));
            assertThat(near.contains((l[0] + l[2]) / 2, (l[1] + l[3]) / 2)).isTrue();
        }
    }

    @Test
    void section_lines_measure_the_area_they_fill() {
        Rectangle2D box = new Rectangle2D.Double(3, 5, 120, 70);
        double sum = lines(Hatching.lines(box, 30, 1)).stream()
                .mapToDouble(l -> Math.hypot(l[2] - l[0], l[3] - l[1]))
                .sum();
        assertThat(sum).isCloseTo(120 * 70, within(0.01 * 120 * 70));
    }

    private static List<double[]> lines(String d) {
        List<double[]> lines = new ArrayList<>();
        for (String line : d.split("M")) {
            if (!line.isBlank()) {
                lines.add(Arrays.stream(line.split("[ L]"))
                        .mapToDouble(Double::parseDouble)
                        .toArray());
            }
        }
        return lines;
    }

    @Property(tries = 300)
    void flags_stand_clear_of_each_other_and_of_each_others_poles(@ForAll("tags") List<Label> tags) {
        Optional<List<PlacedLabel>> planned = LabelPlacement.of(tags, 14, 806);
        if (planned.isEmpty()) {
            return;
        }
        List<PlacedLabel> flags = planned.get();
        assertThat(flags).hasSameSizeAs(tags);
        for (PlacedLabel one : flags) {
            assertThat(one.textLeft()).isGreaterThanOrEqualTo(14 - LabelPlacement.BALLOON);
            assertThat(one.textRight()).isLessThanOrEqualTo(806 + LabelPlacement.BALLOON);
            for (PlacedLabel other : flags) {
                if (!one.equals(other)) {
                    boolean touch = one.textLeft() < other.textRight() && other.textLeft() < one.textRight();
                    assertThat(one.row() == other.row() && touch)
                            .as("texts touch")
                            .isFalse();
                    boolean crossed = other.leader() > one.textLeft() && other.leader() < one.textRight();
                    assertThat(crossed && other.row() >= one.row())
                            .as("pole through a text")
                            .isFalse();
                }
            }
        }
    }

    @Provide
    Arbitrary<List<Label>> tags() {
        Arbitrary<String> names =
                Arbitraries.of("sI", "hub 3/4", "needle cage of 5th", "graded spacer between the pinion cones");
        return Combinators.combine(
                        names,
                        Arbitraries.of(true, false),
                        Arbitraries.doubles().between(20, 800))
                .as((name, balloon, x) -> new Label(name, balloon ? "7" : name, Look.NAME, balloon, x))
                .list()
                .ofMaxSize(9);
    }

    @Test
    void a_few_names_side_by_side_always_find_their_place() {
        List<Label> tags = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            tags.add(new Label("i" + i, "Right side cone " + i, Look.HAND, false, 600 + 14.0 * i));
        }
        assertThat(LabelPlacement.of(tags, 14, 806)).isPresent();
    }

    private static Length length(String name, double mm, int sign) {
        return new Length(name, mm / 1000, sign, "", "");
    }

    @Test
    void a_loop_is_laid_on_its_parts_whatever_their_order_in_the_file() {
        Length seat = length("seat", 25, 1);
        Length cover = length("cover", 234.4, 1);
        Length front = length("front bearing", 17.1, -1);
        Length shaft = length("shaft", 224.9, -1);
        Length rear = length("rear bearing", 16.35, -1);
        Length shim = length("shim", 1, -1);
        Map<Length, LoopLayout.Span> spans = new HashMap<>();
        spans.put(cover, new LoopLayout.Span(0.154, 0.3884));
        spans.put(front, new LoopLayout.Span(0.129, 0.1461));
        spans.put(rear, new LoopLayout.Span(0.371, 0.38735));
        spans.put(shim, new LoopLayout.Span(0.38735, 0.38835));
        for (List<Length> order : List.of(
                List.of(seat, cover, front, shaft, rear, shim), List.of(shim, front, cover, rear, seat, shaft))) {
            LoopLayout loop = LoopLayout.of(order, spans, 0);
            assertThat(loop.arrows().stream().map(a -> a.length().name()))
                    .containsExactly("seat", "cover", "shim", "rear bearing", "shaft", "front bearing");
            assertThat(loop.from()).isCloseTo(0.129, within(1e-4));
            assertThat(loop.to() - loop.from()).isCloseTo(0.05e-3, within(1e-9));
        }
    }

    @Test
    void what_is_not_drawn_lies_outside_of_what_is() {
        Length width = length("case", 172, 1);
        Length leftSeat = length("depth of the left cover", 10, -1);
        Length rightSeat = length("depth of the right cover", 10, -1);
        Length leftBearing = length("left bearing", 20.1, -1);
        Length carrier = length("carrier", 109.6, -1);
        Length rightBearing = length("right bearing", 20.1, -1);
        Map<Length, LoopLayout.Span> spans = new HashMap<>();
        spans.put(leftBearing, new LoopLayout.Span(-0.0749, -0.0548));
        spans.put(carrier, new LoopLayout.Span(-0.0548, 0.0548));
        spans.put(rightBearing, new LoopLayout.Span(0.0548, 0.0749));
        LoopLayout loop =
                LoopLayout.of(List.of(width, leftSeat, rightSeat, leftBearing, carrier, rightBearing), spans, 0);
        assertThat(loop.arrows().stream().map(a -> a.length().name()))
                .containsExactly(
                        "case",
                        "depth of the right cover",
                        "right bearing",
                        "carrier",
                        "left bearing",
                        "depth of the left cover");
    }

    @Property(tries = 200)
    void the_walk_of_a_loop_ends_where_the_sum_of_its_lengths_says(
            @ForAll List<@DoubleRange(min = -0.3, max = 0.3) Double> values,
            @ForAll @DoubleRange(min = -1, max = 1) double middle) {
        List<Length> lengths = new ArrayList<>();
        for (double v : values.subList(0, Math.min(values.size(), 9))) {
            lengths.add(new Length("l" + lengths.size(), Math.abs(v), v < 0 ? -1 : 1, "", ""));
        }
        Map<Length, LoopLayout.Span> spans = new HashMap<>();
        lengths.stream().limit(2).forEach(l -> spans.put(l, new LoopLayout.Span(0, l.nominal())));
        LoopLayout loop = LoopLayout.of(lengths, spans, middle);
        double sum = lengths.stream().mapToDouble(l -> l.sign() * l.nominal()).sum();
        assertThat(loop.to() - loop.from()).isCloseTo(sum, within(1e-9));
        assertThat(loop.arrows()).hasSameSizeAs(lengths);
    }

    @Test
    void a_number_that_is_not_finite_is_a_bug() {
        assertThatThrownBy(() -> Svg.n(Double.NaN)).isInstanceOf(IllegalStateException.class);
        assertThat(Svg.n(-0.001)).isEqualTo("0");
        assertThat(Svg.n(12.345)).isEqualTo("12.35");
    }
}
