package shimwright.rebuild.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import shimwright.mechanics.conformity.Verdict;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.rebuild.act.ActContext;
import shimwright.rebuild.act.StepActs;
import shimwright.rebuild.demo.DemoWorkbench;
import shimwright.rebuild.demo.Van7;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.LogEntry;
import shimwright.rebuild.money.Labour;
import shimwright.rebuild.record.HandBackRecord.Decision;
import shimwright.rebuild.record.HandBackRecord.HoldReading;
import shimwright.rebuild.record.HandBackRecord.Setting;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.Step.Phase;
import shimwright.rebuild.unit.model.Unit;
import shimwright.rebuild.workbench.ShopFloor;

/** The record of the demo job, invented scenario: everything that was kept appears, and every number is an entry's. */
class HandBackRecordTest {
    private static final DemoWorkbench BENCH = Van7.handedBack();
    private static final HandBackRecord RECORD = HandBackRecord.of(BENCH.job(), BENCH.unit());

    private static Setting setting(HandBackRecord of, String clearance) {
        return of.clearances().stream()
                .filter(s -> s.clearance().id().equals(clearance))
                .findFirst()
                .orElseThrow();
    }

    private static List<Entry> kept() {
        return BENCH.entries().stream().map(LogEntry::body).toList();
    }

    private static <E extends Entry> List<E> kept(Class<E> type) {
        return kept().stream().filter(type::isInstance).map(type::cast).toList();
    }

    @Test
    void whatToldTheVariantIsThereInTheWordsOfTheFile() {
        assertThat(RECORD.tellTales())
                .hasSize(6)
                .containsEntry("right side cover", "brass bush, square drive 2.8 mm")
                .containsEntry("letter cast inside the left side cover", "B");
        assertThat(RECORD.tellTales()).doesNotContainKey("tag riveted beside the clutch lever");
    }

    @Test
    void anAcceptedClearanceKeepsTheLimitsItWasJudgedByThoughTheFileSaysOthersNow() {
        Unit changed = BENCH.unit()
                .withClearances(BENCH.unit().type().clearances().stream()
                        .map(c -> c.as(c.lower() - 1e-4, c.upper() + 1e-4, c.aim() + 1e-5, c.growth() + 1e-4))
                        .toList());
        HandBackRecord later = HandBackRecord.of(BENCH.job(), changed);
        for (Setting setting : RECORD.clearances()) {
            Clearance then = setting.clearance();
            Clearance now = setting(later, then.id()).clearance();
            boolean kept = setting.accepted() != null;
            assertThat(now.limits().equals(then.limits())).as(then.id()).isEqualTo(kept);
            assertThat(Math.abs(now.growth() - then.growth()) < 1e-12)
                    .as(then.id())
                    .isEqualTo(kept);
        }
        assertThat(RECORD.clearances()).anyMatch(setting -> setting.accepted() != null);
    }

    @Test
    void theShopsRateTimesTheTimeOfEveryStepDoneIsWhatTheWorkComesTo() {
        double hours = BENCH.job().stepsDone().stream()
                        .mapToDouble(step -> BENCH.unit().step(step).duration())
                        .sum()
                / 3600;
        Labour labour = Labour.of(BENCH.job(), BENCH.unit(), "72,50 CHF").orElseThrow();
        assertThat(labour.hours()).isCloseTo(hours, within(1e-9)).isGreaterThan(5);
        assertThat(labour.amount()).isCloseTo(72.5 * hours, within(1e-6));
        assertThat(labour.currency()).isEqualTo("CHF");
        assertThat(Labour.of(BENCH.job(), BENCH.unit(), "")).isEmpty();
    }

    @Test
    void everyRoundIsThereAsCountingOrAsStruck() {
        List<Entry.RoundRead> shown = new ArrayList<>();
        RECORD.clearances().forEach(setting -> {
            setting.trial().forEach(said -> shown.add(said.what()));
            setting.last().forEach(said -> shown.add(said.what()));
        });
        RECORD.struck().forEach(struck -> shown.add(struck.round().what()));
        assertThat(shown).containsExactlyInAnyOrderElementsOf(kept(Entry.RoundRead.class));
        assertThat(RECORD.struck())
                .extracting(HandBackRecord.Struck::reason)
                .containsExactly(
                        "read with another pack in",
                        "read with another pack in",
                        "place 6 read one tenth too high, the small hand of the dial");
    }

    @Test
    void everyPackChosenAndEveryPieceFittedIsThere() {
        Set<String> pieces = new HashSet<>();
        for (Setting setting : RECORD.clearances()) {
            setting.chosen().forEach(said -> said.what().pieces().forEach(p -> pieces.add(p.piece())));
            Entry.PackIn fitted = setting.fitted();
            if (fitted != null) {
                fitted.pieces().values().forEach(in -> in.forEach(p -> pieces.add(p.piece())));
            }
        }
        // chosen of the demo source: sP, SP, sL, sR, sI and the ring 2.06
        assertThat(pieces)
                .containsExactlyInAnyOrder("d80-11", "d38-03", "d80-16", "d80-13", "d52-03", "d52-09", "r22-03");
    }

    @Test
    void everyTrialPackIsThere() {
        assertThat(RECORD.clearances()).filteredOn(s -> s.trialPack() != null).hasSize(5);
        assertThat(Objects.requireNonNull(setting(RECORD, "c").trialPack()).pieces())
                .containsKey("sI");
        assertThat(setting(RECORD, "f").trialPack()).isNull();
    }

    @Test
    void everyClearanceStandsInSettingOrderWithItsAcceptance() {
        assertThat(RECORD.clearances())
                .extracting(s -> s.clearance().id())
                .containsExactlyElementsOf(BENCH.unit().type().settingOrder());
        for (String id : List.of("a", "c", "e", "f")) {
            Setting setting = setting(RECORD, id);
            Job.Said<Entry.ClearanceAccepted> accepted = Objects.requireNonNull(setting.accepted());
            assertThat(kept()).contains(accepted.what());
            assertThat(setting.readWithPack()).isTrue();
        }
        // b and d are proved by drag
        assertThat(setting(RECORD, "b").accepted()).isNull();
        assertThat(setting(RECORD, "d").readWithPack()).isFalse();
        assertThat(Objects.requireNonNull(setting(RECORD, "c").accepted())
                        .what()
                        .phase())
                .isEqualTo(Phase.AGAIN);
    }

    @Test
    void theEtchedLimitsStandInTheRecord() {
        assertThat(setting(RECORD, "a").clearance().aim()).isCloseTo(52.07e-3, within(1e-12));
    }

    @Test
    void everyCheckReadIsThereAsHoldPointOrAsProof() {
        List<Entry.CheckRead> shown = new ArrayList<>();
        List.of(RECORD.holds(), RECORD.proofs())
                .forEach(list -> list.stream()
                        .map(HoldReading::read)
                        .filter(Objects::nonNull)
                        .forEach(said -> shown.add(said.what())));
        assertThat(shown).containsExactlyInAnyOrderElementsOf(kept(Entry.CheckRead.class));
        assertThat(RECORD.proofs()).extracting(HoldReading::hold).containsOnly("H34", "H35", "H36");
    }

    @Test
    void everyFastenerIsThereOnceAsItWasTightenedLast() {
        Map<String, String> last = new java.util.LinkedHashMap<>();
        kept(Entry.StepDone.class)
                .forEach(done -> BENCH.unit().step(done.step()).fasteners().forEach(f -> last.put(f, done.step())));
        assertThat(RECORD.torques())
                .isNotEmpty()
                .allSatisfy(t -> assertThat(last).containsKey(t.what().fastener()));
        last.forEach((fastener, step) -> assertThat(RECORD.torques())
                .filteredOn(t -> t.what().fastener().equals(fastener))
                .extracting(HandBackRecord.Tightened::step)
                .contains(step));
        assertThat(RECORD.torques()).allMatch(t -> t.done().by().equals("the workshop"));
    }

    @Test
    void everyConsumableIsThereWithItsSteps() {
        Map<String, String> used = RECORD.consumables();
        assertThat(used.get(BENCH.unit().consumable("AN").name())).isEqualTo("R02, R03, B02");
        assertThat(used.keySet())
                .contains(java.util.stream.Stream.of("AN", "RTV", "TL", "TS", "GR", "OI", "MC", "FR")
                        .map(id -> BENCH.unit().consumable(id).name())
                        .toArray(String[]::new));
    }

    @Test
    void notesAreThereInOrderOfTheLog() {
        assertThat(RECORD.notes())
                .extracting(said -> said.what().text())
                .containsExactly(
                        "The first gap was the wanted figure and false: the setting cup stood 0.11 off its seat.");
        assertThat(RECORD.overruled()).isEmpty();
    }

    @Test
    void theSameFoldGivesTheSameRecord() {
        assertThat(HandBackRecord.of(BENCH.job(), BENCH.unit())).isEqualTo(RECORD);
    }

    /** Printing computes nothing: every number that is the job's own stands in an entry. */
    @Test
    void everyNumberOfTheRecordIsANumberOfAnEntry() {
        Set<Double> kept = new HashSet<>();
        kept().forEach(entry -> numbers(entry, kept));
        Set<Double> shown = new HashSet<>();
        for (Setting setting : RECORD.clearances()) {
            numbers(setting.trialPack(), shown);
            numbers(setting.fitted(), shown);
            numbers(setting.trial(), shown);
            numbers(setting.chosen(), shown);
            numbers(setting.last(), shown);
            numbers(setting.accepted(), shown);
        }
        RECORD.holds().forEach(hold -> numbers(hold.read(), shown));
        RECORD.proofs().forEach(hold -> numbers(hold.read(), shown));
        numbers(RECORD.decisions(), shown);
        numbers(RECORD.struck(), shown);
        assertThat(shown).hasSizeGreaterThan(150);
        assertThat(kept).containsAll(shown);
    }

    private static void numbers(@org.jspecify.annotations.Nullable Object value, Set<Double> into) {
        if (value instanceof Double number) {
            into.add(number);
        } else if (value instanceof Iterable<?> list) {
            list.forEach(one -> numbers(one, into));
        } else if (value instanceof Map<?, ?> map) {
            map.values().forEach(one -> numbers(one, into));
        } else if (value instanceof Record) {
            for (RecordComponent component : value.getClass().getRecordComponents()) {
                try {
                    numbers(component.getAccessor().invoke(value), into);
                } catch (ReflectiveOperationException broken) {
                    throw new IllegalStateException(broken);
                }
            }
        }
    }

    private static Entry.Found found(String limit, String what, String words, String outcome) {
        return new Entry.Found(limit, List.of(), what, List.of(0.00062), Kind.LENGTH, words, outcome, List.of());
    }

    @Test
    void findingsAndVerdictsMeetOnOneLine() {
        DemoWorkbench job = DemoWorkbench.open();
        job.keep(found("C01", "ring gap", "ring 3", "0.62 mm is within."));
        job.keep(found("C01", "ring gap", "", "0.55 mm is within."));
        job.keep(found("", "tapers", "cup grey", "Noted."));
        job.keep(new Entry.Judged("C01", List.of(), "ring gap", Entry.Decision.REUSE, "enough left", ""));
        job.keep(new Entry.Judged("C01", List.of(), "ring gap", Entry.Decision.REPLACE, "kit renews all", "owner"));
        job.keep(new Entry.Judged("", List.of(), "hub 5", Entry.Decision.REWORK, "donor", ""));
        List<Decision> decisions = HandBackRecord.of(job.job(), job.unit()).decisions();
        assertThat(decisions.get(0).readings()).extracting(Entry.Found::words).containsExactly("ring 3", "");
        assertThat(decisions)
                .usingRecursiveFieldByFieldElementComparatorIgnoringFields("readings")
                .containsExactly(
                        new Decision(
                                "ring gap",
                                "ring 3. 0.62 mm is within. 0.55 mm is within.",
                                "replace",
                                "kit renews all",
                                "owner",
                                List.of(),
                                List.of()),
                        new Decision("tapers", "cup grey. Noted.", "", "", "", List.of(), List.of()),
                        new Decision("hub 5", "", "rework", "donor", "", List.of(), List.of()));
    }

    @Test
    void whatWasReusedOutsideItsLimitOrAgainstAClockWasPassedAgainstTheAdvice() {
        DemoWorkbench job = DemoWorkbench.open();
        Map<String, String> out = Map.of("verdict", "OUT", "limit", "0.50 mm");
        for (String limit : List.of("C01", "C02")) {
            job.keep(new Entry.Found(
                    limit, List.of(), "gap " + limit, List.of(0.00042), Kind.LENGTH, "", "below", List.of(), out));
        }
        job.keep(found("C03", "of before", "", "0.3 mm is below the limit of 0.5 mm: rework or replace."));
        job.keep(new Entry.Judged("C01", List.of(), "gap C01", Entry.Decision.REUSE, "the owner will have it", ""));
        job.keep(new Entry.Judged("C02", List.of(), "gap C02", Entry.Decision.REPLACE, "worn", ""));
        job.keep(new Entry.Judged("C03", List.of(), "of before", Entry.Decision.REUSE, "no part to be had", ""));
        job.lay(new Entry.TimeOverruled("R03", "early", "sealant cures", Map.of("by", -1740.0), "a warm room"));
        assertThat(HandBackRecord.of(job.job(), job.unit()).overruled())
                .containsExactly(
                        "gap C01 reused by the workshop although found outside its limit: the owner will have it",
                        "of before reused by the workshop although found outside its limit: no part to be had",
                        "Step R03 done 29 min too early (sealant cures) by the workshop: a warm room");
    }

    @ParameterizedTest
    @ValueSource(strings = {"E01", "T06", "T09", "T10"})
    void whatIsTightenedForATrialReadingIsNotClaimedAsTightened(String step) {
        DemoWorkbench job = DemoWorkbench.open();
        ActContext around = new ActContext(
                new ShopFloor(job.shop(), Map.of(), Set.of()),
                UnitSystem.METRIC,
                job.lying().now());
        new StepActs.Done(step, "", Map.of(), "", "")
                .on(job.lying(), around)
                .orElseThrow()
                .entries()
                .forEach(entry -> job.lay((Entry.OfJob) entry));
        assertThat(job.unit().step(step).fasteners()).isNotEmpty();
        assertThat(HandBackRecord.of(job.job(), job.unit()).torques()).isEmpty();
    }

    @Test
    void anEmptyJobHasARecordThatClaimsNothing() {
        DemoWorkbench job = DemoWorkbench.open();
        HandBackRecord empty = HandBackRecord.of(job.job(), job.unit());
        assertThat(empty.clearances()).hasSize(6).allMatch(s -> s.accepted() == null);
        assertThat(empty.torques()).isEmpty();
        assertThat(empty.holds()).isEmpty();
        // the proofs are named although nothing is read
        assertThat(empty.proofs()).hasSize(11).allMatch(r -> r.read() == null);
    }

    @Test
    void anAcceptanceThatNoLongerStandsIsNotClaimed() {
        DemoWorkbench job = Van7.before("D06");
        assertThat(setting(HandBackRecord.of(job.job(), job.unit()), "e").accepted())
                .isNotNull();
        job.lay(new Entry.PackChosen(
                "a", "sP", job.pieces("d80-12"), 52.094e-3, 5e-6, 0.9, Verdict.IN, "", List.of(), Map.of()));
        HandBackRecord record = HandBackRecord.of(job.job(), job.unit());
        assertThat(setting(record, "e").accepted()).isNull();
        assertThat(setting(record, "e").last()).isEmpty();
        assertThat(record.struck())
                .extracting(HandBackRecord.Struck::reason)
                .contains("the pack of clearance a was changed after it was read");
    }

    @Test
    void whatWasOverruledAndPhotographedIsThere() {
        DemoWorkbench job = DemoWorkbench.open();
        job.keep(new Entry.HoldOverruled("P02", "H01", "gauged last week"));
        job.keep(new Entry.PictureAdded("step P02", "bb".repeat(32), "image/png", 3, "seat"));
        job.keep(new Entry.PictureAdded("job", "cc".repeat(32), "image/jpeg", 4, ""));
        job.keep(new Entry.PictureAdded("step P02", "dd".repeat(32), "image/png", 5, ""));
        job.lay(new Entry.NoteMade("job", " "));
        HandBackRecord record = HandBackRecord.of(job.job(), job.unit());
        assertThat(record.overruled())
                .containsExactly("Hold point H01 at step P02 passed by the workshop: gauged last week");
        assertThat(record.pictures())
                .extracting(s -> s.what().picture())
                .containsExactly("bb".repeat(32), "cc".repeat(32), "dd".repeat(32));
        assertThat(record.notes()).isEmpty();
    }
}
