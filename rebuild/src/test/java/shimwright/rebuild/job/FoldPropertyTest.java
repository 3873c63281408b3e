package shimwright.rebuild.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import shimwright.rebuild.demo.DemoWorkbench;
import shimwright.rebuild.demo.EntryStream;
import shimwright.rebuild.unit.model.Step.Phase;

/** Laws of the fold over any stream of entries, possible or not. */
class FoldPropertyTest {
    private static final List<Class<?>> TYPES = Arrays.asList(Entry.OfJob.class.getPermittedSubclasses());

    private static EntryStream random(long seed, int length) {
        Random random = new Random(seed);
        EntryStream stream = EntryStream.of(DemoWorkbench.opening());
        for (int i = 0; i < length; i++) {
            stream.add(entry(random, i + 1));
        }
        return stream;
    }

    /** Few ids, so that entries meet each other. */
    private static Entry entry(Random random, int before) {
        String step = "S" + random.nextInt(3);
        Phase phase = List.of(Phase.TRIAL, Phase.FINAL, Phase.AGAIN).get(random.nextInt(3));
        return switch (random.nextInt(8)) {
            case 0 -> new Entry.StepDone(step, "");
            case 1 -> new Entry.StepUndone(step, "again");
            case 2 -> new Entry.RoundRead("c", phase, "DI", List.of(random.nextDouble()), "");
            case 3 -> new Entry.RoundStruck("entry-" + (1 + random.nextInt(before)), "odd");
            case 4 ->
                new Entry.PackIn(
                        "c", phase, Map.of("sI", List.of(new Entry.PieceIn("p" + random.nextInt(3), 0.001, 0))));
            default ->
                (Entry) RecordSamples.of(TYPES.get(random.nextInt(TYPES.size())).asSubclass(Entry.class), random);
        };
    }

    @Property(tries = 200)
    void sameEntriesSameJob(@ForAll long seed, @ForAll @IntRange(max = 40) int length) {
        EntryStream one = random(seed, length);
        EntryStream two = random(seed, length);
        assertThat(one.job()).isEqualTo(two.job());
        assertThat(one.job()).isEqualTo(one.job());
    }

    @Property(tries = 200)
    void theFoldOfAPrefixDoesNotHangOnWhatCameLater(
            @ForAll long seed, @ForAll @IntRange(min = 1, max = 40) int length) {
        List<LogEntry> entries = random(seed, length).entries();
        List<Job> jobs = new ArrayList<>();
        for (int i = 1; i <= entries.size(); i++) {
            jobs.add(Fold.job(entries.subList(0, i)).orElseThrow());
        }
        for (int i = 1; i <= entries.size(); i++) {
            Job again = Fold.job(List.copyOf(entries.subList(0, i))).orElseThrow();
            assertThat(jobs.get(i - 1)).isEqualTo(again);
            assertThat(again.entries()).isEqualTo(entries.subList(0, i));
            assertThat(again.head().count()).isEqualTo(i);
        }
    }

    @Property(tries = 200)
    void everyRoundCountsOrIsStruckWithAReasonAndNoneIsLost(@ForAll long seed, @ForAll @IntRange(max = 40) int length) {
        Job job = random(seed, length).job();
        List<String> counting = job.rounds().values().stream()
                .flatMap(List::stream)
                .map(Job.Said::id)
                .toList();
        for (LogEntry kept : job.entries()) {
            if (kept.body() instanceof Entry.RoundRead) {
                boolean counts = counting.contains(kept.draft().id());
                assertThat(counts)
                        .isNotEqualTo(job.struck().containsKey(kept.draft().id()));
            }
        }
    }

    @Property(tries = 100)
    void aStepStandsDoneWhenItsLastWordIsDone(@ForAll long seed, @ForAll @IntRange(max = 40) int length) {
        Job job = random(seed, length).job();
        for (String step : List.of("S0", "S1", "S2")) {
            boolean done = false;
            for (LogEntry kept : job.entries()) {
                if (kept.body() instanceof Entry.StepDone said && said.step().equals(step)) {
                    done = true;
                } else if (kept.body() instanceof Entry.StepUndone said
                        && said.step().equals(step)) {
                    done = false;
                }
            }
            assertThat(job.stepsDone().contains(step)).isEqualTo(done);
        }
    }
}
