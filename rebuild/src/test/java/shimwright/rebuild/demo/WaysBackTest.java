package shimwright.rebuild.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.act.Act;
import shimwright.rebuild.act.HoldActs;
import shimwright.rebuild.act.StepActs;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.LogEntry;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.Unit;
import shimwright.rebuild.workbench.Workbench;

/**
 * A wrong tap has its way back: a job built with wrong taps, each taken back at once or after some more was done, is handed
 * back as the same job without them, with every clearance right. More walks with {@code -Dlong=200}.
 */
class WaysBackTest {
    private static final int MOST_ACTS = 4000;
    private static final double WRONG = 0.2;

    /** A tap that waits to be noticed. */
    private record Unnoticed(Act.OfJob act, List<LogEntry> entries, int noticedAt) {}

    static Stream<Arguments> walks() {
        long walks = Long.getLong("long", 0);
        return walks == 0
                ? Stream.of(Arguments.of("S", 2, true), Arguments.of("L", 5, false))
                : LongStream.rangeClosed(1, walks)
                        .boxed()
                        .flatMap(seed -> Stream.of(
                                Arguments.of("S", 2 * seed, true),
                                Arguments.of("S", 2 * seed, false),
                                Arguments.of("L", 2 * seed + 1, true),
                                Arguments.of("L", 2 * seed + 1, false)));
    }

    private static ActBench open(Unit unit) {
        boolean isShort = unit.variant().equals("S");
        Map<String, String> tales = new LinkedHashMap<>();
        tales.put("I2", isShort ? "open, splined shaft inside a bush" : "flange with four holes and one nut");
        tales.put("I3", isShort ? "26" : "30");
        tales.put("I4", isShort ? "7.8" : "8.4");
        return new ActBench(
                unit,
                DemoUnit.inLine(),
                new DemoWorkbench(unit, InLineUnitTest.GAUGES, InLineUnitTest.drawer()).shopEntries(),
                new Entry.JobOpened("H-12", "", "", "the quarry", List.of("growls in all but top"), tales, "", "", ""));
    }

    /** A gauge that the shop has not would count as one that is never wrong. */
    @Test
    void aCheckIsNotReadWithAGaugeThatTheShopHasNot() {
        ActBench bench = open(DemoUnit.inLine().resolve("S"));
        assertThat(bench.perform(new HoldActs.ReadCheck("P02", "Q1", "flat", "0.05 mm", "", "my ruler", "", ""))
                        .refusals())
                .extracting(Refusal::fact)
                .containsExactly("this shop has no such gauge in use");
        assertThat(bench.perform(new HoldActs.ReadCheck("P02", "Q1", "flat", "0.05 mm", "", "BLADES", "", ""))
                        .isOk())
                .isTrue();
    }

    /** At its limit a reading proves nothing with the gauge in hand, and by number alone it is said so. */
    @Test
    void aCheckIsJudgedWithTheUncertaintyOfItsGauge() {
        ActBench bench = open(DemoUnit.inLine().resolve("S"));
        assertThat(read(bench, "BLADES"))
                .isEqualTo("NOT_PROVEN 0.100 mm is within the limit of 0.004 in, but feeler blades cannot prove it.");
        assertThat(read(bench, "")).startsWith("IN Within limits. By number alone");
    }

    private static String read(ActBench bench, String gauge) {
        Entry read = must(bench, new HoldActs.ReadCheck("P02", "Q1", "flat", "0.10 mm", "", gauge, "", ""))
                .get(0)
                .body();
        return read instanceof Entry.CheckRead check ? check.verdict() + " " + check.words() : "";
    }

    private static Builder builder(Random random) {
        return new Builder(Map.of(
                "mid", (2.43 + 0.1 * random.nextDouble()) * 1e-3,
                "cs", (0.35 + 0.3 * random.nextDouble()) * 1e-3,
                "ret", (0.35 + 0.3 * random.nextDouble()) * 1e-3,
                "fl5", (2.05 + 0.35 * random.nextDouble()) * 1e-3));
    }

    private static List<LogEntry> must(ActBench bench, Act.OfJob act) {
        Outcome<List<LogEntry>> kept = bench.perform(act);
        assertThat(kept.refusals()).as("%s after %s", act, tail(bench)).isEmpty();
        return kept.orElseThrow();
    }

    private static List<String> tail(ActBench bench) {
        List<LogEntry> all = bench.entries();
        return all.subList(Math.max(0, all.size() - 12), all.size()).stream()
                .map(kept -> "\n    " + kept.body().toString().replaceAll("working=\\[.*?\\]\\]", ""))
                .toList();
    }

    @ParameterizedTest(name = "{0}, seed {1}, at once {2}")
    @MethodSource("walks")
    void aWrongTapIsTakenBackAndTheJobEndsAsWithoutIt(String variant, long seed, boolean atOnce) {
        Unit unit = DemoUnit.inLine().resolve(variant);
        Builder builder = builder(new Random(seed));
        ActBench right = open(unit);
        walk(right, builder, new Taps(new Random(0), true, 0));
        ActBench bench = open(unit);
        Taps taps = new Taps(new Random(seed), atOnce, WRONG);
        walk(bench, builder, taps);
        assertThat(taps.tapped).isNotEmpty();
        assertThat(Meaning.end(bench.bench())).isEqualTo(Meaning.end(right.bench()));
        for (Clearance c : unit.type().clearances()) {
            assertThat(builder.play(bench.bench(), c.id())).as(c.id()).isBetween(c.lower(), c.upper());
        }
    }

    private static int walk(ActBench bench, Builder builder, Taps taps) {
        for (int acts = 0; acts < MOST_ACTS; acts++) {
            taps.tap(bench, acts);
            taps.notice(bench, acts);
            Optional<Act.OfJob> next = builder.next(bench.bench());
            if (next.isEmpty() && taps.unnoticed.isEmpty()) {
                return acts;
            }
            if (next.isEmpty()) {
                taps.notice(bench, Integer.MAX_VALUE);
                continue;
            }
            bench.later(builder.waits(bench.bench(), next.get()) + 1);
            boolean kept = bench.perform(next.get()).isOk();
            if (!kept && !taps.unnoticed.isEmpty()) {
                // whoever is refused looks for what was tapped wrong
                taps.notice(bench, Integer.MAX_VALUE);
            } else if (!kept) {
                must(bench, next.get());
            }
        }
        throw new AssertionError("no end: " + tail(bench));
    }

    /** The shipped unit, where packs share places and a group is chosen together. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void aWrongTapOnTheShippedUnitIsTakenBackAtOnce(long seed) {
        Entry.JobOpened opened = DemoWorkbench.opening();
        ActBench bench = new ActBench(DemoUnit.A, DemoUnit.type(), new DemoWorkbench(DemoUnit.A).shopEntries(), opened);
        Taps taps = new Taps(new Random(seed), true, WRONG / 3);
        Scripted script = new Scripted();
        for (int acts = 0; ; acts++) {
            taps.tap(bench, acts);
            Optional<Act.OfJob> next = script.next(bench.bench());
            if (next.isEmpty()) {
                break;
            }
            // the script has no clock: cures are waited for
            bench.later(next.get() instanceof StepActs.Done ? 4 * 3600 : 60);
            must(bench, next.get());
        }
        assertThat(bench.job().closed()).isTrue();
        assertThat(taps.tapped).isNotEmpty();
    }

    static LongStream seeds() {
        return LongStream.rangeClosed(1, Long.getLong("long", 1));
    }

    /** Wrong taps on the way, and what becomes of them. */
    private static final class Taps {
        private final Random random;
        private final boolean atOnce;
        private final double share;
        private final WrongTaps wrong;
        private final List<Unnoticed> unnoticed = new ArrayList<>();
        private final Map<String, Integer> tapped = new TreeMap<>();

        Taps(Random random, boolean atOnce, double share) {
            this.random = random;
            this.atOnce = atOnce;
            this.share = share;
            this.wrong = new WrongTaps(random);
        }

        private void tap(ActBench bench, int acts) {
            if (random.nextDouble() >= share) {
                return;
            }
            Optional<Act.OfJob> act = wrong.any(bench.bench());
            if (act.isEmpty()) {
                return;
            }
            Map<String, String> before = atOnce ? Meaning.of(bench.bench()) : Map.of();
            Outcome<List<LogEntry>> kept = bench.perform(act.get());
            if (!kept.isOk()) {
                assertThat(kept.refusals()).allSatisfy(r -> assertThat(r.fact()).isNotBlank());
                return;
            }
            tapped.merge(act.get().getClass().getSimpleName(), 1, Integer::sum);
            if (!atOnce) {
                unnoticed.add(new Unnoticed(act.get(), kept.orElseThrow(), acts + random.nextInt(12)));
                return;
            }
            must(bench, WrongTaps.atOnce(kept.orElseThrow()));
            assertThat(Meaning.of(bench.bench()))
                    .as("after %s was taken back, %s", act.get(), tail(bench))
                    .isEqualTo(before);
        }

        private void notice(ActBench bench, int acts) {
            for (int i = unnoticed.size() - 1; i >= 0; i--) {
                Unnoticed one = unnoticed.get(i);
                if (one.noticedAt() <= acts) {
                    unnoticed.remove(i);
                    for (int tries = 0; tries < 100; tries++) {
                        Workbench now = bench.bench();
                        Optional<Act.OfJob> back = WrongTaps.later(now, one.act(), one.entries());
                        if (back.isEmpty()) {
                            break;
                        }
                        must(bench, back.get());
                    }
                }
            }
        }
    }
}
