package shimwright.rebuild.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import shimwright.mechanics.conformity.Verdict;
import shimwright.mechanics.quantity.Kind;
import shimwright.rebuild.demo.DemoWorkbench;
import shimwright.rebuild.demo.EntryStream;
import shimwright.rebuild.job.Entry.PieceIn;
import shimwright.rebuild.job.Job.Place;
import shimwright.rebuild.job.Job.Position;
import shimwright.rebuild.unit.model.Step.Phase;

class FoldTest {
    private final EntryStream stream = EntryStream.of(DemoWorkbench.opening());

    private static Entry.RoundRead round(Phase phase, double value) {
        return new Entry.RoundRead("c", phase, "DI", List.of(value), "");
    }

    private static Entry.PackIn trial(String piece) {
        return new Entry.PackIn("c", Phase.TRIAL, Map.of("sI", List.of(new PieceIn(piece, 0.0008, 2e-6))));
    }

    private static Entry.PackChosen chosen(String clearance, String position, String piece, String because) {
        return new Entry.PackChosen(
                clearance,
                position,
                List.of(new PieceIn(piece, 0.001, 2e-6)),
                4e-5,
                5e-6,
                0.97,
                Verdict.IN,
                because,
                List.of(),
                Map.of());
    }

    private static Entry.Judged judged(String limit, String what, Entry.Decision decision) {
        return new Entry.Judged(limit, List.of(), what, decision, "worn", "");
    }

    private static Entry.CheckRead check(String step, String check, Verdict verdict) {
        return new Entry.CheckRead(step, "H18", check, List.of(1.5), Kind.TORQUE, false, verdict, "", List.of());
    }

    @Test
    void nothingKeptIsNoJobAndNeitherIsAStreamWithoutAnOpening() {
        assertThat(Fold.job(List.of())).isEmpty();
        assertThat(Fold.job(EntryStream.of(new Entry.NoteMade("job", "lost")).entries()))
                .isEmpty();
    }

    @Test
    void theOpeningStandsWithItsTimeAndASecondOneChangesNothing() {
        stream.add(new Entry.JobOpened("other", "t", "B", "", List.of(), Map.of(), "", ""));
        Job job = stream.job();
        assertThat(job.opened().number()).isEqualTo("V-0093");
        assertThat(job.openedAt()).isEqualTo(EntryStream.BEGIN.plus(EntryStream.APART));
        assertThat(job.id()).isEqualTo("job-1");
        assertThat(job.closed()).isFalse();
    }

    @Test
    void theHeadIsThatOfTheLastEntry() {
        LogEntry last = stream.add(new Entry.NoteMade("job", "wet"));
        assertThat(stream.job().head()).isEqualTo(new Head(2, last.streamHash()));
    }

    @Test
    void aStruckRoundNoLongerCountsAndItsReasonStays() {
        stream.add(trial("d52-10"));
        LogEntry wrong = stream.add(round(Phase.TRIAL, 0.0003));
        LogEntry right = stream.add(round(Phase.TRIAL, 0.0002));
        stream.add(new Entry.RoundStruck(wrong.draft().id(), "slipped"));
        Job job = stream.job();
        assertThat(job.roundsOf("c", Phase.TRIAL))
                .extracting(Job.Said::id)
                .containsExactly(right.draft().id());
        assertThat(job.struck()).containsExactly(Map.entry(wrong.draft().id(), "slipped"));
        assertThat(job.entries()).contains(wrong);
    }

    @Test
    void anotherTrialPackStrikesWhatWasReadBefore() {
        stream.add(trial("d52-10"));
        LogEntry before = stream.add(round(Phase.TRIAL, 0.0003));
        stream.add(trial("d52-09"));
        LogEntry after = stream.add(round(Phase.TRIAL, 0.0004));
        Job job = stream.job();
        assertThat(job.roundsOf("c", Phase.TRIAL))
                .extracting(Job.Said::id)
                .containsExactly(after.draft().id());
        assertThat(job.struck()).containsEntry(before.draft().id(), "read with another pack in");
        assertThat(Objects.requireNonNull(job.packsIn().get(new Place("c", Phase.TRIAL)))
                        .what())
                .isEqualTo(trial("d52-09"));
    }

    @Test
    void theSameTrialPackNamedAgainStrikesNothing() {
        stream.add(trial("d52-10"));
        stream.add(round(Phase.TRIAL, 0.0003));
        stream.add(trial("d52-10"));
        assertThat(stream.job().roundsOf("c", Phase.TRIAL)).hasSize(1);
        assertThat(stream.job().struck()).isEmpty();
    }

    @Test
    void anotherPackOfOneReadingLeavesTheOtherReadingsAlone() {
        stream.add(trial("d52-10"));
        stream.add(round(Phase.FINAL, 0.0001));
        stream.add(new Entry.RoundRead("a", Phase.TRIAL, "IM", List.of(0.032), ""));
        stream.add(trial("d52-09"));
        assertThat(stream.job().roundsOf("c", Phase.FINAL)).hasSize(1);
        assertThat(stream.job().roundsOf("a", Phase.TRIAL)).hasSize(1);
    }

    @Test
    void anUndoneStepStandsAgainOnceItIsRedoneAndTheRedoingCounts() {
        stream.add(new Entry.StepDone("P01", ""));
        stream.add(new Entry.StepDone("P02", ""));
        stream.add(new Entry.StepUndone("P01", "dirt in the oil way"));
        assertThat(stream.job().stepsDone()).containsExactly("P02");
        LogEntry redone = stream.add(new Entry.StepDone("P01", ""));
        assertThat(stream.job().stepsDone()).containsExactly("P02", "P01");
        assertThat(stream.job().doneAt()).containsEntry("P01", redone.draft().at());
    }

    @Test
    void undoingAStepTakesBackWhatItsHoldPointWasPassedOn() {
        stream.add(check("F03", "drag", Verdict.IN));
        stream.add(check("T05", "drag", Verdict.IN));
        stream.add(new Entry.HoldOverruled("F03", "H18", "the old one did the same"));
        stream.add(new Entry.StepDone("F03", ""));
        stream.add(new Entry.StepUndone("F03", "another spacer"));
        Job job = stream.job();
        assertThat(job.check("F03", "drag")).isEmpty();
        assertThat(job.check("T05", "drag")).isPresent();
        assertThat(job.holdsOverruled()).isEmpty();
        assertThat(shimwright.rebuild.record.OverruledAdvice.of(job)).isEmpty();
    }

    @Test
    void aStepThatCouldNotBeDoneIsForgottenOnceItIs() {
        stream.add(new Entry.StepCannot("D04", "no beam wrench"));
        assertThat(stream.job().cannot()).containsOnlyKeys("D04");
        stream.add(new Entry.StepDone("D04", ""));
        assertThat(stream.job().cannot()).isEmpty();
    }

    @Test
    void theLatestVerdictWinsAndTheEarlierStaysInTheLog() {
        stream.add(judged("C01", "ring gap", Entry.Decision.REUSE));
        stream.add(judged("C01", "ring gap of 3rd", Entry.Decision.REPLACE));
        stream.add(judged("", "hub 5", Entry.Decision.REWORK));
        Job job = stream.job();
        assertThat(job.judged()).containsOnlyKeys("C01", "hub 5");
        assertThat(Objects.requireNonNull(job.judged().get("C01")).what().decision())
                .isEqualTo(Entry.Decision.REPLACE);
        assertThat(job.entries()).hasSize(4);
    }

    @Test
    void theLatestReadingOfACheckAndTheLatestSideOfAChoiceCount() {
        stream.add(check("F03", "drag", Verdict.OUT));
        stream.add(check("F03", "drag", Verdict.IN));
        stream.add(new Entry.ChoiceTaken("O1", "late", "pair is new"));
        stream.add(new Entry.ChoiceTaken("O1", "early", "it is not"));
        Job job = stream.job();
        assertThat(job.check("F03", "drag").orElseThrow().what().verdict()).isEqualTo(Verdict.IN);
        assertThat(job.check("F03", "other")).isEmpty();
        assertThat(job.sides()).containsExactly(Map.entry("O1", "early"));
    }

    @Test
    void theLatestPackOfAPositionCountsWhicheverClearanceItWasChosenFor() {
        stream.add(chosen("e", "sL", "d80-16", ""));
        stream.add(chosen("d", "sL", "d80-17", ""));
        stream.add(chosen("a", "sP", "d80-11", ""));
        Job job = stream.job();
        assertThat(job.packIn("sL").orElseThrow().what().clearance()).isEqualTo("d");
        assertThat(job.packIn("sI")).isEmpty();
        assertThat(job.chosen()).containsKey(new Position("e", "sL"));
        assertThat(job.packOf("a")).containsOnlyKeys("sP");
        assertThat(job.packOf("f")).isEmpty();
    }

    @Test
    void theStoryIsKeptInOrder() {
        stream.add(new Entry.TakenOff("fluid", List.of(), "grey"));
        stream.add(new Entry.TakenOff("bellhousing", List.of("bellhousing"), ""));
        stream.add(new Entry.Found("", List.of(), "tapers", List.of(), Kind.NUMBER, "grey", "Noted.", List.of()));
        stream.add(new Entry.NoteMade("job", "first"));
        stream.add(new Entry.NoteMade("step T06", "second"));
        stream.add(new Entry.NoteMade("job", "third"));
        stream.add(new Entry.PictureAdded("job", "aa".repeat(32), "image/png", 3, "nose"));
        Job job = stream.job();
        assertThat(job.takenOff()).extracting(s -> s.what().gone()).containsExactly("fluid", "bellhousing");
        assertThat(job.found()).hasSize(1);
        assertThat(job.notes()).containsOnlyKeys("job", "step T06");
        assertThat(job.notes().get("job")).extracting(s -> s.what().text()).containsExactly("first", "third");
        assertThat(job.pictures()).containsOnlyKeys("job");
    }

    @Test
    void handedBackItIsClosedAndAFollowUpIsPartOfTheLog() {
        stream.add(new Entry.HandedBack("12 months", "", "quiet"));
        stream.add(new Entry.FollowedUp("quiet; fifth stays", "3 100 km"));
        Job job = stream.job();
        assertThat(job.closed()).isTrue();
        assertThat(Objects.requireNonNull(job.handedBack()).what().warranty()).isEqualTo("12 months");
        assertThat(job.entries()).hasSize(3);
    }

    @Test
    void everythingOverruledIsSaidWithWhoAndWhy() {
        EntryStream overruled = EntryStream.of(new Entry.JobOpened(
                "V-1", "t", "A", "", List.of(), Map.of(), "the flange stub has 25 teeth and that is built in", ""));
        overruled.add("1", "Ann", new Entry.HoldOverruled("D04", "H21", "beam wrench is out"));
        overruled.add("2", "Ben", chosen("c", "sI", "d52-09", "the better one is at sea"));
        overruled.add("3", "Cid", accepted("c", "the owner sells it"));
        overruled.add("4", "Cid", accepted("a", ""));
        assertThat(shimwright.rebuild.record.OverruledAdvice.of(overruled.job()))
                .containsExactly(
                        "Variant A although the tell-tales do not settle it: the flange stub has 25 teeth and that is built in",
                        "Hold point H21 at step D04 passed by Ann: beam wrench is out",
                        "Pack of clearance c chosen by Ben against the advice: the better one is at sea",
                        "Clearance c accepted by Cid although not proven within limits: the owner sells it");
    }

    private static Entry.ClearanceAccepted accepted(String clearance, String because) {
        return new Entry.ClearanceAccepted(
                clearance, Phase.FINAL, 4e-5, 5e-6, 0.9, Verdict.NOT_PROVEN, 4e-5, "", because, List.of(), Map.of());
    }
}
