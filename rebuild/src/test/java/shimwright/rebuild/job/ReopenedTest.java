package shimwright.rebuild.job;

import static org.assertj.core.api.Assertions.assertThat;
import static shimwright.rebuild.demo.DemoWorkbench.MM;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import shimwright.mechanics.conformity.Verdict;
import shimwright.rebuild.demo.DemoWorkbench;
import shimwright.rebuild.unit.model.Step.Phase;

class ReopenedTest {
    private final DemoWorkbench bench = DemoWorkbench.open();

    private void choose(String clearance, String position, String... tags) {
        bench.lay(new Entry.PackChosen(
                clearance, position, bench.pieces(tags), 0, 5e-6, 0.97, Verdict.IN, "", List.of(), Map.of()));
    }

    private void accept(String clearance, Phase phase) {
        bench.lay(new Entry.ClearanceAccepted(
                clearance, phase, 0, 5e-6, 0.97, Verdict.IN, 0, "", "", List.of(), Map.of()));
    }

    private Optional<String> since(String clearance) {
        return Reopened.since(
                bench.job(),
                bench.unit(),
                clearance,
                Objects.requireNonNull(bench.job().accepted().get(clearance)));
    }

    @Test
    void anAcceptanceStandsWhileNothingItHangsOnChanges() {
        choose("a", "sP", "d80-11");
        choose("e", "sL", "d80-16");
        accept("e", Phase.FINAL);
        choose("c", "sI", "d52-03");
        assertThat(since("e")).isEmpty();
    }

    @Test
    void itsOwnPackChangedReopensIt() {
        choose("c", "sI", "d52-03");
        accept("c", Phase.FINAL);
        choose("c", "sI", "d52-09");
        assertThat(since("c")).contains("the pack of clearance c was changed after it was accepted");
    }

    @Test
    void aPackUpstreamChangedReopensItAndNotTheOtherWayRound() {
        choose("a", "sP", "d80-11");
        choose("e", "sL", "d80-16");
        accept("a", Phase.FINAL);
        accept("e", Phase.FINAL);
        choose("e", "sL", "d80-17");
        assertThat(since("a")).isEmpty();
        choose("a", "sP", "d80-12");
        assertThat(since("e")).isPresent();
        accept("e", Phase.FINAL);
        assertThat(since("e")).isEmpty();
        choose("b", "SP", "d38-04");
        assertThat(since("e")).contains("the pack of clearance b was changed after it was accepted");
    }

    @Test
    void theSamePiecesChosenAgainAreNoChange() {
        choose("c", "sI", "d52-03", "d52-09");
        accept("c", Phase.FINAL);
        choose("c", "sI", "d52-09", "d52-03");
        assertThat(since("c")).isEmpty();
    }

    @Test
    void aPackAtASharedPlaceReopensWhicheverClearanceItWasChosenFor() {
        choose("d", "sR", "d80-13");
        choose("e", "sL", "d80-16");
        accept("d", Phase.FINAL);
        choose("e", "sL", "d80-17");
        assertThat(since("d")).contains("the pack of clearance e was changed after it was accepted");
    }

    @Test
    void anotherPieceFittedWithoutATrialReopensIt() {
        bench.packIn("f", Phase.FINAL, "ring=r22-03");
        accept("f", Phase.FINAL);
        bench.packIn("f", Phase.FINAL, "ring=r22-03");
        assertThat(since("f")).isEmpty();
        bench.packIn("f", Phase.FINAL, "ring=r22-04");
        assertThat(since("f")).contains("the pack of clearance f was changed after it was accepted");
    }

    @Test
    void aStepUndoneThatLedToTheReadingReopensIt() {
        choose("a", "sP", "d80-11");
        accept("a", Phase.FINAL);
        bench.layDone("F04");
        bench.lay(new Entry.StepUndone("G08", "not on the way to it"));
        assertThat(since("a")).isEmpty();
        bench.lay(new Entry.StepUndone("F03", "another spacer"));
        assertThat(since("a")).contains("step F03 was undone after it was accepted");
    }

    @Test
    void aRoundStruckReopensWhatWasAcceptedOnIt() {
        choose("a", "sP", "d80-11");
        LogEntry trial = bench.round("a", Phase.TRIAL, 32.18);
        LogEntry struckBefore = bench.round("a", Phase.FINAL, 32.80);
        bench.lay(new Entry.RoundStruck(struckBefore.draft().id(), "the point slipped"));
        LogEntry stands = bench.round("a", Phase.FINAL, 32.08);
        accept("a", Phase.FINAL);
        LogEntry after = bench.round("a", Phase.FINAL, 32.50);
        bench.lay(new Entry.RoundStruck(trial.draft().id(), "of another reading"));
        bench.lay(new Entry.RoundStruck(after.draft().id(), "read after it was accepted"));
        assertThat(since("a")).isEmpty();
        bench.lay(new Entry.RoundStruck(stands.draft().id(), "the bridge stood off"));
        assertThat(since("a")).contains("a reading of clearance a was struck after it was accepted");
        accept("a", Phase.FINAL);
        assertThat(since("a")).isEmpty();
    }

    @Test
    void roundsReadBeforeTheChangeNoLongerCount() {
        choose("a", "sP", "d80-11");
        bench.round("a", Phase.FINAL, 32.08);
        bench.round("a", Phase.FINAL, 32.09);
        assertThat(Reopened.rounds(bench.job(), bench.unit(), "a", Phase.FINAL)).hasSize(2);
        choose("a", "sP", "d80-12");
        bench.round("a", Phase.FINAL, 32.10);
        assertThat(Reopened.rounds(bench.job(), bench.unit(), "a", Phase.FINAL))
                .extracting(said -> said.what().values().get(0))
                .containsExactly(32.10 * MM);
        assertThat(Reopened.stale(bench.job(), bench.unit()))
                .hasSize(2)
                .allSatisfy((id, why) ->
                        assertThat(why).isEqualTo("the pack of clearance a was changed after it was read"));
    }

    @Test
    void trialRoundsDoNotHangOnThePackButOnTheStepsBeforeThem() {
        bench.packIn("b", Phase.TRIAL, "SP=d38-05 sP=d80-06");
        bench.round("b", Phase.TRIAL, 0.16, 0.16);
        choose("b", "SP", "d38-03");
        assertThat(Reopened.rounds(bench.job(), bench.unit(), "b", Phase.TRIAL)).hasSize(1);
        bench.layDone("T03");
        bench.lay(new Entry.StepUndone("T03", "the cone stood off"));
        assertThat(Reopened.rounds(bench.job(), bench.unit(), "b", Phase.TRIAL)).isEmpty();
    }
}
