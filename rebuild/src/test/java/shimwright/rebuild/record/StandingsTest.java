package shimwright.rebuild.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.rebuild.demo.DemoUnit;
import shimwright.rebuild.demo.DemoWorkbench;
import shimwright.rebuild.demo.EntryStream;
import shimwright.rebuild.inspect.JudgedPiece;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Entry.Decision;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.record.Standings.State;
import shimwright.rebuild.rules.Rules;
import shimwright.rebuild.supply.Need;
import shimwright.rebuild.supply.Needs;
import shimwright.rebuild.unit.model.Unit;

/** Five rings have a line each: what one is found to be says nothing of the others. Unit: invented. */
class StandingsTest {
    private static final Unit A = DemoUnit.A;

    private final EntryStream log = EntryStream.of(DemoWorkbench.opening());

    private static Entry.Found found(String limit, String piece, String verdict) {
        return new Entry.Found(
                limit,
                List.of(),
                "read",
                List.of(0.01395),
                Kind.LENGTH,
                "",
                verdict,
                List.of(),
                Map.of("verdict", verdict),
                piece);
    }

    private static Entry.Judged judged(String limit, String piece, Decision decision) {
        return new Entry.Judged(
                limit, List.of(), "read", decision, "because of " + piece, "", piece, Map.of(), List.of());
    }

    private List<State> states(String limit) {
        return Standings.of(A, log.job(), A.wearLimit(limit)).stream()
                .map(Standings.Standing::state)
                .toList();
    }

    private List<Need> needs(String item) {
        return Needs.of(A, log.job()).stream()
                .filter(need -> need.items().contains(item))
                .toList();
    }

    @Test
    void aLimitJudgesEachRingEachSpringAndEachSleeveOnItsHub() {
        assertThat(JudgedPiece.of(A, A.wearLimit("C01")))
                .extracting(JudgedPiece::id)
                .containsExactly("ring_3", "ring_4", "ring_5");
        assertThat(JudgedPiece.of(A, A.wearLimit("C17")))
                .extracting(JudgedPiece::id)
                .containsExactly("detents#1", "detents#2", "detents#3");
        assertThat(JudgedPiece.of(A, A.wearLimit("C06")))
                .extracting(JudgedPiece::id)
                .containsExactly("hub_34+slider_34", "hub_12+slider_12", "hub_5+slider_5");
        assertThat(JudgedPiece.of(A, A.wearLimit("C29"))).singleElement().satisfies(piece -> {
            assertThat(piece.id()).isEmpty();
            assertThat(piece.parts()).containsExactly("crown", "pinion");
        });
        assertThat(JudgedPiece.of(A, A.wearLimit("C32"))).hasSize(5);
    }

    @Test
    void oneRailIsReplacedAndTheOthersAreNot() {
        log.add(found("C14", "rail_12", "OUT"));
        log.add(found("C14", "rail_34", "IN"));
        assertThat(states("C14")).containsExactly(State.GOOD, State.OPEN, State.NOT_LOOKED_AT);
        assertThat(needs("rail_12")).isEmpty();
        log.add(judged("C14", "rail_12", Decision.REPLACE));
        assertThat(states("C14")).containsExactly(State.GOOD, State.REPLACE, State.NOT_LOOKED_AT);
        assertThat(needs("rail_12")).singleElement().satisfies(need -> {
            assertThat(need.pieces()).isEqualTo(1);
            assertThat(need.why()).containsExactly("because of rail_12");
        });
        assertThat(needs("rail_34")).isEmpty();
        assertThat(Standings.byItem(A, log.job()))
                .containsEntry("rail_12", State.REPLACE)
                .containsEntry("rail_34", State.GOOD)
                .doesNotContainKey("rail_5R");
        assertThat(Standings.worst(A, log.job(), A.wearLimit("C14"))).contains(Decision.REPLACE);
    }

    @Test
    void whatWasSaidOfAllAlikeHoldsForEachUntilItHasItsOwn() {
        log.add(found("C14", "", "OUT"));
        assertThat(states("C14")).containsOnly(State.OPEN).hasSize(3);
        log.add(judged("C14", "", Decision.REPLACE));
        assertThat(states("C14")).containsOnly(State.REPLACE);
        assertThat(needs("rail_34")).hasSize(1);
        log.add(judged("C14", "rail_34", Decision.REUSE));
        assertThat(states("C14")).containsExactly(State.REUSE, State.REPLACE, State.REPLACE);
        assertThat(needs("rail_34")).isEmpty();
        log.add(found("C14", "rail_34", "OUT"));
        assertThat(states("C14").get(0)).isEqualTo(State.OPEN);
        log.add(judged("C14", "", Decision.REUSE));
        assertThat(states("C14")).containsOnly(State.REUSE);
    }

    @Test
    void ofThreeSpringsAsManyAreOrderedAsAreToBeReplaced() {
        log.add(judged("C17", "detents#2", Decision.REPLACE));
        assertThat(needs("detents")).singleElement().satisfies(need -> {
            assertThat(need.pieces()).isEqualTo(1);
            assertThat(need.parts()).containsExactly("detents#2");
        });
        log.add(judged("C18", "detents#2", Decision.REPLACE));
        assertThat(needs("detents")).singleElement().extracting(Need::pieces).isEqualTo(1);
        log.add(new Entry.Sent(
                "spring", List.of("detents"), "agent", LocalDate.of(2031, 4, 1), 0, "", List.of("detents#2")));
        assertThat(needs("detents")).isEmpty();
        log.add(judged("C18", "detents#3", Decision.REPLACE));
        assertThat(needs("detents")).singleElement().extracting(Need::parts).isEqualTo(List.of("detents#3"));
        // an order of an older program was for all of them
        log.add(new Entry.Sent("springs", List.of("detents"), "agent", LocalDate.of(2031, 4, 1), 0, ""));
        assertThat(needs("detents")).isEmpty();
    }

    @Test
    void aSecondSpringIsOrderedWhileTheFirstIsAwaitedAndTheSameIsNot() {
        DemoWorkbench bench = DemoWorkbench.open();
        Entry.Sent second = new Entry.Sent(
                "spring", List.of("detents"), "agent", LocalDate.of(2031, 4, 1), 0, "", List.of("detents#2"));
        bench.keep(second);
        assertThat(Rules.check(bench.lying(), second))
                .extracting(Refusal::sentence)
                .anyMatch(said -> said.contains("is awaited already"));
        assertThat(Rules.check(
                        bench.lying(),
                        new Entry.Sent(
                                "spring", List.of("detents"), "agent", second.due(), 0, "", List.of("detents#3"))))
                .isEmpty();
        assertThat(Rules.check(
                        bench.lying(),
                        new Entry.Sent("spring", List.of("detents"), "agent", second.due(), 0, "", List.of("nut"))))
                .isNotEmpty();
    }

    @Test
    void aVerdictOnThePartSettlesWhateverWasFoundOnIt() {
        log.add(found("C10", "fork_5", "OUT"));
        log.add(found("trade:fork-bent", "fork_5", "OUT"));
        assertThat(Standings.undecided(A, log.job())).hasSize(2);
        log.add(judged(Entry.Judged.PART, "fork_5", Decision.REPLACE));
        assertThat(Standings.undecided(A, log.job())).isEmpty();
        assertThat(needs("fork_5")).hasSize(1);
        log.add(judged(Entry.Judged.PART, "fork_5", Decision.REUSE));
        assertThat(needs("fork_5")).isEmpty();
        log.add(found("trade:fork-bent", "fork_5", "OUT"));
        assertThat(Standings.undecided(A, log.job())).hasSize(1);
    }

    @Test
    void aReplacedPartNeedsNoFurtherVerdictButHowAPairRunsIsFoundAnew() {
        log.add(judged("C08", "slider_5", Decision.REPLACE));
        log.add(found("C12", "slider_5", "OUT"));
        log.add(found("C06", "hub_5+slider_5", "OUT"));
        assertThat(Standings.undecided(A, log.job()))
                .extracting(Standings.Standing::limit)
                .containsExactly("C06");
    }

    @Test
    void aVerdictThatStoodOnAReadingAloneFallsWithIt() {
        String id = log.add(found("C14", "rail_12", "OUT")).draft().id();
        log.add(judged("C14", "rail_12", Decision.REPLACE));
        log.add(new Entry.EntryStruck(id, "read beside the groove"));
        assertThat(states("C14").get(1)).isEqualTo(State.NOT_LOOKED_AT);
        assertThat(needs("rail_12")).isEmpty();
        log.add(found("C14", "rail_12", "OUT"));
        assertThat(states("C14").get(1)).isEqualTo(State.OPEN);
    }

    @Test
    void aVerdictChangedAfterThePartWentInOpensTheHandBackAndTheNeed() {
        String step = A.type().steps().stream()
                .filter(one -> one.installs().contains("fork_5"))
                .findFirst()
                .orElseThrow()
                .id();
        log.add(judged("C10", "fork_5", Decision.REUSE));
        log.add(new Entry.StepDone(step, ""));
        assertThat(Standings.fittedBefore(A, log.job())).isEmpty();
        log.add(judged("C10", "fork_5", Decision.REPLACE));
        assertThat(Standings.fittedBefore(A, log.job()))
                .singleElement()
                .extracting(Standings.FittedBefore::sentence)
                .isEqualTo("fork 5 went in at step " + step + " before it was decided to replace it");
        assertThat(needs("fork_5")).hasSize(1);
        log.add(new Entry.StepUndone(step, "for the new one"));
        log.add(new Entry.StepDone(step, ""));
        assertThat(Standings.fittedBefore(A, log.job())).isEmpty();
        assertThat(needs("fork_5")).isEmpty();
    }

    @Test
    void theRulesKnowWhichPiecesThereAre() {
        DemoWorkbench bench = DemoWorkbench.open();
        List<Entry.OfJob> wrong = new ArrayList<>(List.of(
                found("C14", "rail_99", "IN"),
                judged("C14", "ring_3", Decision.REUSE),
                judged(Entry.Judged.PART, "no such part", Decision.REUSE),
                found("trade:fork-bent", "", "IN"),
                found("trade:no-such-look", "fork_5", "IN")));
        wrong.forEach(entry ->
                assertThat(Rules.check(bench.lying(), entry)).as("%s", entry).isNotEmpty());
        List.of(found("C14", "rail_12", "IN"), judged(Entry.Judged.PART, "detents#2", Decision.REPLACE))
                .forEach(entry -> assertThat(Rules.check(bench.lying(), (Entry.OfJob) entry))
                        .isEmpty());
    }

    @Test
    void theRecordHasALineAPiece() {
        log.add(found("C14", "rail_12", "OUT"));
        log.add(found("C14", "rail_34", "IN"));
        log.add(judged("C14", "rail_12", Decision.REPLACE));
        Job job = log.job();
        assertThat(HandBackRecord.of(job, A).decisions())
                .extracting(decision -> decision.what() + " " + decision.verdict())
                .containsExactly("rail 1/2: read replace", "rail 3/4 with its cross pin: read ");
    }
}
