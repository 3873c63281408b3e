package shimwright.mechanics.joints;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import shimwright.mechanics.worksheet.Answer;

/** Laws of the tightening order: symmetry and balance, no source needed. */
class BoltOrderLawsTest {
    private static List<Integer> order(String inputs) {
        String order = String.valueOf(JointSheets.result(JointSheets.answer("bolt-order", inputs), "order"));
        return Arrays.stream(order.split("-", -1)).map(Integer::valueOf).toList();
    }

    private static String holes(List<double[]> places) {
        return "holes="
                + IntStream.range(0, places.size())
                        .mapToObj(i -> String.format(
                                Locale.ROOT, "%d: %.9f mm: %.9f mm", i + 1, places.get(i)[0], places.get(i)[1]))
                        .collect(Collectors.joining("; "));
    }

    private static List<double[]> circle(int n, double radius, double turn, double x, double y) {
        List<double[]> places = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            double a = turn + 2 * Math.PI * i / n;
            places.add(new double[] {x + radius * Math.cos(a), y + radius * Math.sin(a)});
        }
        return places;
    }

    @Property(tries = 60)
    void everyBoltOnceAndOppositePairs(@ForAll @IntRange(min = 2, max = 40) int n) {
        List<Integer> order = order("count=" + n + "; start=1");
        assertThat(order)
                .containsExactlyInAnyOrderElementsOf(
                        IntStream.rangeClosed(1, n).boxed().toList());
        if (n % 2 == 0) {
            for (int i = 0; i < n; i += 2) {
                assertThat(Math.floorMod(order.get(i + 1) - order.get(i), n)).isEqualTo(n / 2);
            }
        }
    }

    /** Coordinates of a circle, turned, moved, grown or typed in inches, give the order of the count. */
    @Property(tries = 60)
    void coordinatesOfACircleGiveTheOrderOfTheCount(
            @ForAll @IntRange(min = 3, max = 24) int n,
            @ForAll @DoubleRange(min = 0, max = 6) double turn,
            @ForAll @DoubleRange(min = 20, max = 120) double radius,
            @ForAll @DoubleRange(min = -50, max = 50) double x) {
        List<Integer> expected = order("count=" + n + "; start=1");
        assertThat(order(holes(circle(n, radius, turn, x, -x)) + "; start=1")).isEqualTo(expected);
        assertThat(order(holes(circle(n, radius, turn, x, -x))
                                .replace("mm", "in")
                                .replace("in: ", " in: ") + "; start=1"))
                .isEqualTo(expected);
    }

    /** Holes measured to a tenth of a millimeter still count as a circle. */
    @Property(tries = 60)
    void holesAreMeasuredNotDrawn(@ForAll @IntRange(min = 3, max = 24) int n, @ForAll long seed) {
        Random random = new Random(seed);
        List<double[]> measured = circle(n, 120, 1, 0, 0).stream()
                .map(place -> new double[] {
                    place[0] + 0.1 * (random.nextDouble() - 0.5), place[1] + 0.1 * (random.nextDouble() - 0.5)
                })
                .toList();
        assertThat(order(holes(measured) + "; start=1")).isEqualTo(order("count=" + n + "; start=1"));
    }

    /** A long cover goes from the middle outward, side to side (common practice, no source). */
    @Test
    void aLongCoverGoesFromTheMiddleOutward() {
        List<double[]> rows = new ArrayList<>();
        for (int i = 0; i < 7; i++) {
            rows.add(new double[] {(i - 3) * 50, 30});
            rows.add(new double[] {(i - 3) * 50, -30});
        }
        List<Integer> order = order(holes(rows));
        assertThat(order.subList(0, 2)).containsExactlyInAnyOrder(7, 8);
        assertThat(order.subList(10, 14)).containsExactlyInAnyOrder(1, 2, 13, 14);
        for (int i = 0; i < order.size(); i += 2) {
            double[] one = rows.get(order.get(i) - 1);
            double[] two = rows.get(order.get(i + 1) - 1);
            assertThat(one[0] + two[0]).isCloseTo(0, within(1e-6));
            assertThat(one[1] + two[1]).isCloseTo(0, within(1e-6));
        }
    }

    /** Rear cover of the demo: 14 bolts, from the dowels outward; the first bolt is the one nearest a dowel. */
    @Test
    void dowelsComeFirst() {
        String ring = holes(circle(14, 120, 0, 0, 0));
        assertThat(order(ring + "; dowels=120 mm: 20 mm; -120 mm: -20 mm").get(0))
                .isEqualTo(1);
        assertThat(order(ring + "; dowels=0 mm: 125 mm; 0 mm: -125 mm").subList(0, 2))
                .isSubsetOf(4, 5, 11, 12);
    }

    @Property(tries = 60)
    void roundsBringThePreloadBack(
            @ForAll @IntRange(min = 3, max = 20) int n, @ForAll @DoubleRange(min = 0, max = 0.3) double c) {
        double before = 0;
        for (int passes = 1; passes <= 4; passes++) {
            Answer answer = JointSheets.answer("bolt-order", "count=%d; interaction=%.9f; passes=%d", n, c, passes);
            double lowest = JointSheets.number(answer, "lowest");
            assertThat(lowest).isGreaterThanOrEqualTo(before - 1e-12);
            assertThat(JointSheets.number(answer, "mean")).isBetween(lowest, 1.0);
            before = lowest;
        }
        assertThat(JointSheets.number(JointSheets.answer("bolt-order", "count=%d; interaction=0", n), "lowest"))
                .isEqualTo(1.0);
    }

    /** In the linear model one round leaves the same mean whatever the order. */
    @Property(tries = 40)
    void theMeanAfterOneRoundDoesNotDependOnTheOrder(@ForAll @IntRange(min = 4, max = 16) int n) {
        String inOrder = IntStream.rangeClosed(1, n).mapToObj(String::valueOf).collect(Collectors.joining(" "));
        Answer star = JointSheets.answer("bolt-order", "count=" + n + "; interaction=0.1");
        Answer round = JointSheets.answer("bolt-order", "count=" + n + "; interaction=0.1; order=" + inOrder);
        assertThat(JointSheets.number(star, "mean")).isCloseTo(JointSheets.number(round, "mean"), within(1e-12));
    }
}
