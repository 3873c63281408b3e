package shimwright.rebuild.plan.learn;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import shimwright.rebuild.demo.DemoUnit;
import shimwright.rebuild.plan.Order;
import shimwright.rebuild.plan.blocking.Blocking;
import shimwright.rebuild.unit.file.UnitFiles;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.UnitType;

class LearningTest {
    /** The demo source's strip-down of van 7: the steps whose result went away each time, in the order of coming off. */
    private static final List<List<String>> STRIP = List.of(
            List.of("X06"),
            List.of("D09A"),
            List.of("D10"),
            List.of("B02"),
            List.of("D08"),
            List.of("D03"),
            List.of("Q07"),
            List.of("Q06", "Q05", "Q04"),
            List.of("Q03"),
            List.of("Q02", "Q01"),
            List.of("E04", "E01"),
            List.of("R05"),
            List.of("X01"),
            List.of("S05A"),
            List.of("R04", "R03", "R02"),
            List.of("S08"),
            List.of("S06A"),
            List.of("S04", "S03"),
            List.of("G11"),
            List.of("G10", "G08"),
            List.of("G07"),
            List.of("G06", "G05"),
            List.of("G04"),
            List.of("G03", "G02"),
            List.of("G01"),
            List.of("S02"),
            List.of("F03"),
            List.of("F01"),
            List.of("T01"),
            List.of("K02"),
            List.of("D02", "D01"),
            List.of("Y04"),
            List.of("Y02"),
            List.of("Y01"),
            List.of("R01", "B01", "I01"),
            List.of("P01"));

    private static final Order TRUTH = Order.of(DemoUnit.A, Map.of("O1", "late"));

    private static List<RemovedParts> demo() {
        List<RemovedParts> strip = new ArrayList<>();
        Set<String> off = new HashSet<>();
        for (List<String> steps : STRIP) {
            Set<String> items = new LinkedHashSet<>();
            steps.forEach(id -> items.addAll(DemoUnit.A.step(id).installs()));
            items.removeIf(item -> !off.add(item));
            strip.add(new RemovedParts(steps.get(0), String.join(" ", steps), List.copyOf(items)));
        }
        return strip;
    }

    /**
     * What leads to what by the demo file, for what came off together as one: for each part those that go in after it. Only
     * what the strip-down keeps: rail 5/R came out through the bulkhead, against the order of going in (demo source PL-7).
     */
    private static Map<String, Set<String>> truth(List<RemovedParts> strip) {
        Map<String, Set<String>> truth = new LinkedHashMap<>();
        for (int then = 0; then < strip.size(); then++) {
            Set<String> before = new HashSet<>();
            for (String step : strip.get(then).name().split(" ")) {
                before.addAll(TRUTH.leadingTo(step));
            }
            for (int first = then + 1; first < strip.size(); first++) {
                if (List.of(strip.get(first).name().split(" ")).stream().anyMatch(before::contains)) {
                    truth.computeIfAbsent(strip.get(first).id(), k -> new HashSet<>())
                            .add(strip.get(then).id());
                }
            }
        }
        for (RemovedParts off : strip) {
            Set<String> after = truth.getOrDefault(off.id(), Set.of());
            for (Set<String> others : truth.values()) {
                if (others.contains(off.id())) {
                    others.addAll(after);
                }
            }
        }
        return truth;
    }

    private static final Map<String, Set<String>> DEMO = truth(demo());

    private static boolean leads(RemovedParts first, RemovedParts then) {
        return DEMO.getOrDefault(first.id(), Set.of()).contains(then.id());
    }

    private static Learning ask(Learning start) {
        Learning now = start;
        for (Optional<Question> q = now.next(); q.isPresent(); q = now.next()) {
            // came off later = goes in earlier; it could have come off first unless it leads to the other
            now = now.answered(q.get(), !leads(q.get().later(), q.get().earlier()));
        }
        return now;
    }

    private static void isTheTruth(Learning learnt, List<RemovedParts> strip) {
        for (int then = 0; then < strip.size(); then++) {
            for (int first = then + 1; first < strip.size(); first++) {
                assertThat(learnt.waits(strip.get(first).id(), strip.get(then).id()))
                        .as(strip.get(first).name() + " before "
                                + strip.get(then).name())
                        .isEqualTo(leads(strip.get(first), strip.get(then)));
            }
        }
    }

    @Test
    void theDemoStripDownIsLearntWithFewerQuestionsThanPairs() {
        List<RemovedParts> strip = demo();
        int pairs = strip.size() * (strip.size() - 1) / 2;
        Learning plain = ask(Learning.of(strip));
        isTheTruth(plain, strip);
        Map<String, Set<String>> drawn = Blocking.items(DemoUnit.A, Set.of("main_case", "wall_lip", "dowels"));
        Learning drawing = ask(Learning.of(strip).withDrawing(drawn));
        isTheTruth(drawing, strip);
        int naive = naive(Learning.of(strip));
        assertThat(List.of(pairs, naive, plain.asked(), drawing.asked()))
                .as("pairs, asked in order, asked by us, asked with the drawing")
                .isEqualTo(List.of(630, 582, 300, 162));
    }

    /** Every open pair from the front, what follows from answers left out. */
    private static int naive(Learning start) {
        Learning now = start;
        List<RemovedParts> parts = start.parts();
        for (int i = 0; i < parts.size(); i++) {
            for (int j = i + 1; j < parts.size(); j++) {
                Question question = new Question(parts.get(i), parts.get(j), now.open());
                if (now.unknown(parts.get(i).id(), parts.get(j).id())) {
                    now = now.answered(question, !leads(parts.get(i), parts.get(j)));
                }
            }
        }
        return now.asked();
    }

    private static List<RemovedParts> plainParts(int n) {
        List<RemovedParts> strip = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            strip.add(new RemovedParts("p" + i, "part \"" + i + "\" \\ with: odd # marks", List.of()));
        }
        return strip;
    }

    @Property(tries = 60)
    void anyTrueOrderIsLearntAndTheOrderSeenIsAlwaysPossible(@ForAll long seed) {
        Random random = new Random(seed);
        int n = 2 + random.nextInt(9);
        List<RemovedParts> strip = plainParts(n);
        // a true order that the strip-down keeps: off later = in earlier
        boolean[][] truth = new boolean[n][n];
        for (int a = n - 1; a >= 0; a--) {
            for (int b = a - 1; b >= 0; b--) {
                truth[a][b] = random.nextInt(3) == 0;
            }
        }
        for (int k = 0; k < n; k++) {
            for (int a = 0; a < n; a++) {
                for (int b = 0; b < n; b++) {
                    truth[a][b] |= truth[a][k] && truth[k][b];
                }
            }
        }
        Learning now = Learning.of(strip).withOrder(another(random, truth, strip));
        seenIsPossible(now);
        for (Optional<Question> q = now.next(); q.isPresent(); q = now.next()) {
            int open = now.open();
            now = now.answered(
                    q.get(),
                    !truth[strip.indexOf(q.get().later())][strip.indexOf(q.get().earlier())]);
            assertThat(now.open()).isLessThan(open);
            seenIsPossible(now);
        }
        for (int a = 0; a < n; a++) {
            for (int b = 0; b < n; b++) {
                assertThat(now.waits("p" + a, "p" + b)).isEqualTo(truth[a][b]);
            }
        }
    }

    /** Another strip-down that keeps the true order. */
    private static List<String> another(Random random, boolean[][] truth, List<RemovedParts> strip) {
        List<Integer> left = new ArrayList<>();
        for (int i = 0; i < strip.size(); i++) {
            left.add(i);
        }
        List<String> order = new ArrayList<>();
        while (!left.isEmpty()) {
            Collections.shuffle(left, random);
            int next = left.stream()
                    .filter(a -> left.stream().noneMatch(b -> truth[a][b]))
                    .findFirst()
                    .orElseThrow();
            left.remove(Integer.valueOf(next));
            order.add("p" + next);
        }
        return order;
    }

    private static void seenIsPossible(Learning learning) {
        Map<String, Map<String, Boolean>> order = learning.order();
        Set<String> gone = new HashSet<>();
        for (RemovedParts off : learning.parts()) {
            assertThat(gone).containsAll(order.getOrDefault(off.id(), Map.of()).keySet());
            gone.add(off.id());
        }
    }

    @Property(tries = 20)
    void whatIsWrittenIsReadWithoutAProblemAndSaysTheSame(@ForAll long seed) {
        Random random = new Random(seed);
        List<RemovedParts> strip = plainParts(1 + random.nextInt(8));
        Learning now = Learning.of(strip);
        for (int i = random.nextInt(6); i > 0 && now.next().isPresent(); i--) {
            now = now.answered(now.next().orElseThrow(), random.nextBoolean());
        }
        List<RemovedParts> laid =
                StepText.grouped(now, off -> off.id().length() > 1 && random.nextBoolean() ? "g" : "h");
        String text = UnitFiles.starter().stripTrailing() + "\n" + StepText.yaml(now, laid, "L", "UP");
        UnitFiles.Result read = UnitFiles.read("u.yaml", text);
        assertThat(read.problems()).isEmpty();
        UnitType type = ((UnitFiles.Good) read).type();
        List<Step> steps =
                type.steps().stream().filter(s -> s.id().startsWith("L")).toList();
        assertThat(steps)
                .extracting(Step::todo)
                .containsExactlyElementsOf(
                        laid.stream().map(off -> "Fit: " + off.name()).toList());
        Map<String, String> ids = new LinkedHashMap<>();
        for (int i = 0; i < laid.size(); i++) {
            ids.put(steps.get(i).id(), laid.get(i).id());
        }
        Order order = Order.of(type.resolve("A"), Map.of());
        for (Step a : steps) {
            for (Step b : steps) {
                assertThat(order.leadingTo(b.id()).contains(a.id()))
                        .isEqualTo(now.waits(ids.getOrDefault(a.id(), ""), ids.getOrDefault(b.id(), "")));
            }
        }
    }
}
