package shimwright.rebuild.learn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import shimwright.mechanics.conformity.Verdict;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.rebuild.act.ActContext;
import shimwright.rebuild.act.HandBackActs;
import shimwright.rebuild.complaint.Advice;
import shimwright.rebuild.complaint.CaseBefore;
import shimwright.rebuild.complaint.Suspect;
import shimwright.rebuild.demo.DemoUnit;
import shimwright.rebuild.demo.DemoWorkbench;
import shimwright.rebuild.demo.EntryStream;
import shimwright.rebuild.inspect.JudgedPiece;
import shimwright.rebuild.job.Basis;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Entry.Decision;
import shimwright.rebuild.job.Entry.LiesIn;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.Shop;
import shimwright.rebuild.record.Fitted;
import shimwright.rebuild.reuse.Experience;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.Step.Phase;
import shimwright.rebuild.unit.model.Unit;

/** What boxes that went back and came back teach the next one, by the log alone. Unit: invented. */
class TaughtTest {
    private static final Unit A = DemoUnit.A;
    private static final JudgedPiece RING =
            JudgedPiece.of(A, A.wearLimit("C01")).get(0);
    private static final LocalDate LATER = LocalDate.of(2031, 9, 1);

    private static EntryStream box(String number) {
        Entry.JobOpened of = DemoWorkbench.opening();
        EntryStream log = new EntryStream("job-" + number);
        log.add(new Entry.JobOpened(
                number,
                of.unitType(),
                of.variant(),
                of.owner(),
                of.said(),
                of.tellTales(),
                of.overruledBecause(),
                of.remark()));
        return log;
    }

    private static EntryStream reused(String number) {
        EntryStream log = box(number);
        log.add(new Entry.Judged(
                "C01", List.of(), "gap", Decision.REUSE, "good enough", "", "ring_3", Map.of(), List.of()));
        log.add(new Entry.HandedBack("12 months", "", ""));
        return log;
    }

    private static EntryStream cameBack(String number, LiesIn lies) {
        EntryStream log = reused(number);
        String id = log.add(new Entry.Returned(LATER, "it crunches into third", List.of("ring_3"), ""))
                .draft()
                .id();
        log.add(new Entry.ReturnExplained(
                id, List.of("ring_3"), "blocker ring worn", lies, "", List.of("ring 3: reuse")));
        return log;
    }

    private static List<Outlook> outlooks(EntryStream... logs) {
        List<Outlook> all = new ArrayList<>();
        for (EntryStream log : logs) {
            all.addAll(Taught.of(log.job()).outlooks());
        }
        return all;
    }

    @Test
    void aComebackMakesAChanceAndNoneBoundsIt() {
        assertThat(Experience.of(List.of(), "C01", RING)).isEmpty();
        assertThat(Experience.of(outlooks(reused("one"), reused("two")), "C01", RING))
                .singleElement()
                .satisfies(none -> {
                    assertThat(none.boxes()).isEqualTo(2);
                    assertThat(none.chance()).isEmpty();
                    // 1 − 0.05^(1/2) = 0.776, the exact bound of a binomial share of which none was seen (from memory)
                    assertThat(none.say()).contains("in 2 boxes: none came back", "78 %");
                });
        List<Experience> back = Experience.of(outlooks(cameBack("one", LiesIn.THE_PART), reused("two")), "C01", RING);
        assertThat(back).singleElement().satisfies(one -> {
            // (1 + 1) / (2 + 2), P. S. Laplace's rule of succession
            assertThat(one.chance().getAsDouble()).isCloseTo(0.5, within(1e-12));
            assertThat(one.say()).contains("1 came back for it (one)");
        });
        assertThat(Experience.offered(null, back, Decision.REUSE)).isEqualTo(0.5);
        assertThat(Experience.offered(0.1, back, Decision.REUSE)).isEqualTo(0.1);
        assertThat(Experience.offered(null, back, Decision.REPLACE)).isNull();
        // how it was used says nothing of the part, nor does what nobody knows
        assertThat(Experience.of(outlooks(cameBack("one", LiesIn.ITS_USE)), "C01", RING))
                .allMatch(one -> one.back().isEmpty());
        // another ring says nothing of this one
        JudgedPiece other = JudgedPiece.of(A, A.wearLimit("C01")).get(1);
        assertThat(Experience.of(outlooks(cameBack("one", LiesIn.THE_PART)), "C01", other))
                .isEmpty();
    }

    @Test
    void whyItCameBackStandsWithThePartAndCountsAsACaseUntilItIsStruck() {
        EntryStream log = cameBack("one", LiesIn.THE_PART);
        Memories memories = Memories.of(log.job());
        assertThat(memories.items(List.of("ring_3")))
                .singleElement()
                .satisfies(back -> assertThat(back.words())
                        .contains("came back on 2031-09-01", "blocker ring worn (the part)", "ring 3: reuse"));
        assertThat(memories.whole()).hasSize(1);
        Job next = box("two").job();
        double before = ring(Advice.of(A, next, List.of()));
        Advice told = Advice.of(A, next, List.of(log.job()));
        assertThat(ring(told)).isGreaterThan(before);
        assertThat(told.evidence().before())
                .singleElement()
                .satisfies(box -> assertThat(box.how()).isEqualTo(CaseBefore.How.CAME_BACK));
        String why = log.entries().get(log.entries().size() - 1).draft().id();
        log.add(new Entry.EntryStruck(why, "another box"));
        assertThat(Advice.of(A, next, List.of(log.job())).evidence().before()).isEmpty();
        assertThat(Memories.of(log.job()).whole().get(0).words()).contains("the cause is not on the record");
    }

    private static double ring(Advice advice) {
        return advice.suspects().stream()
                .filter(suspect -> suspect.id().equals("ring"))
                .mapToDouble(Suspect::chance)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aThingFoundUnderItsOwnNameIsKnownAgainUnderTheGeneralOneAndTheOtherWayRound() {
        EntryStream own = box("one");
        own.add(new Entry.SuspectLooked("own:blocker ring 3", "blocker ring 3", Entry.Seen.FOUND, ""));
        Job next = box("two").job();
        Advice told = Advice.of(A, next, List.of(own.job()));
        assertThat(told.suspects())
                .filteredOn(suspect -> suspect.id().equals("ring"))
                .singleElement()
                .satisfies(ring -> assertThat(ring.pro()).contains("it was so in 1 of 1 case before (one)"));
        EntryStream general = box("one");
        general.add(new Entry.SuspectLooked("ring", "blocker ring", Entry.Seen.FOUND, ""));
        EntryStream said = box("two");
        said.add(new Entry.ComplaintSaid(Map.of("kind", "crunch"), List.of("Y8"), "", List.of()));
        assertThat(Advice.of(A, said.job(), List.of(general.job())).suspects())
                .filteredOn(suspect -> suspect.name().equals("blocker ring 3"))
                .singleElement()
                .satisfies(ring -> assertThat(ring.pro()).contains("it was so in 1 of 1 case before (one)"));
    }

    @Test
    void lessonsStandWhereTheyMatter() {
        EntryStream log = reused("one");
        log.add(new Entry.NoteMade(Entry.NoteMade.LESSON, "count the needles"));
        log.add(new Entry.NoteMade("clearance F", "warm the case first"));
        log.add(new Entry.NoteMade("item ring_3", "comes in two makes"));
        Memories memories = Memories.of(log.job());
        assertThat(memories.whole()).extracting(Remembered::words).containsExactly("count the needles");
        assertThat(memories.clearance("F")).extracting(Remembered::words).containsExactly("warm the case first");
        assertThat(memories.limit("C01", List.of("ring_3")))
                .extracting(Remembered::words)
                .contains("comes in two makes", "ring_3 reuse: good enough");
    }

    @Test
    void fourFiguresMakeAChartAndTwoDoNot() {
        List<Figure> figures = new ArrayList<>();
        Random random = new Random(4);
        for (int i = 1; i <= 4; i++) {
            EntryStream log = box("job " + i);
            Clearance clearance = A.type().clearances().get(0);
            double aim = clearance.aim();
            log.add(new Entry.ClearanceAccepted(
                    clearance.id(),
                    Phase.FINAL,
                    aim + 1e-5 * random.nextGaussian(),
                    1e-6,
                    1,
                    Verdict.IN,
                    aim,
                    "",
                    "",
                    List.of(),
                    new Basis(clearance.lower(), clearance.upper(), aim, 10, aim, 0.95).kept()));
            log.add(new Entry.CheckRead(
                    "D01",
                    "H1",
                    "drag",
                    List.of(1.0 + 0.1 * i, 1.2 + 0.1 * i),
                    Kind.TORQUE,
                    false,
                    Verdict.IN,
                    "",
                    List.of()));
            figures.addAll(Figure.of(log.job()));
            List<FigureRow> trends = FigureRow.of(A.type(), figures);
            assertThat(trends).hasSize(2);
            assertThat(trends)
                    .allMatch(trend -> trend.chart().isOk() == trend.figures().size() >= 4);
            if (i == 2) {
                assertThat(trends.get(0).chart().refusals().get(0).sentence()).contains("2 values, a chart wants 4");
                assertThat(trends.get(0).drawn()).isEmpty();
            }
        }
        List<FigureRow> trends = FigureRow.of(A.type(), figures);
        assertThat(trends.get(1).kind()).isEqualTo(Kind.TORQUE);
        assertThat(trends.get(1).chart().orElseThrow().result().center()).isCloseTo(1.35, within(1e-12));
        // mean moving range 0.1, limits mean ± 3 × 0.1 / 1.128 (ISO 7870-2)
        assertThat(trends.get(1).chart().orElseThrow().result().upper()).isCloseTo(1.35 + 0.3 / 1.128, within(1e-9));
        assertThat(trends.get(1).chart().orElseThrow().working())
                .allMatch(line -> line.kind() == Kind.TORQUE || line.kind() == Kind.NUMBER);
        assertThat(trends.get(1).drawn()).hasSize(2);
        assertThat(FigureRow.about(trends, "H1/drag")).hasSize(1);
    }

    @Test
    void twoBoxesSayWhatToStockAndHowLittleTheyKnow() {
        Clearance clearance = A.type().clearances().stream()
                .filter(one -> one.positions().get(0).most() == 1)
                .findFirst()
                .orElseThrow();
        Clearance.Position place = clearance.positions().get(0);
        double middle = (A.shimFamily(place.family()).thinnest()
                        + A.shimFamily(place.family()).thickest())
                / 2;
        List<ShimWish> wishes = new ArrayList<>();
        for (int i = 0; i < 2; i++) {
            EntryStream log = box("job " + i);
            double aim = clearance.aim();
            // 0.01 mm short of its aim: the piece that was wished for differs by that over the effect
            log.add(new Entry.PackChosen(
                    clearance.id(),
                    place.id(),
                    List.of(new Entry.PieceIn("s" + i, middle + i * 4e-5, 1e-6)),
                    aim - 1e-5,
                    1e-6,
                    1,
                    Verdict.IN,
                    "",
                    List.of(),
                    new Basis(clearance.lower(), clearance.upper(), aim, 10, aim, 0.95).kept()));
            wishes.addAll(ShimWish.of(log.job()));
        }
        Shop shop = new Shop(Map.of(), Map.of());
        StockAdvice.Asked asked = new StockAdvice.Asked(3, 0.8, StockAdvice.STEP);
        StockAdvice advice = StockAdvice.of(A.type(), wishes, shop, asked).get(0);
        assertThat(advice.mean().getAsDouble()).isCloseTo(middle + 2e-5 + 1e-5 / place.effect(), within(1e-12));
        // t(97.5 %, 1) = 12.706 and 1.960 of any table: 12.706 × √1.5 / 1.960
        assertThat(StockAdvice.wider(2)).isCloseTo(12.706 * Math.sqrt(1.5) / 1.960, within(2e-3));
        // and no wider than a fifth of the thickness, beyond which a shim would have to be thinner than nothing
        assertThat(advice.widened().getAsDouble())
                .isLessThan(advice.mean().getAsDouble() / 5)
                .isGreaterThan(2.83e-5);
        assertThat(advice.hold().orElseThrow()).isNotEmpty().allMatch(hold -> hold.lacks() == hold.pieces());
        assertThat(StockAdvice.of(A.type(), wishes.subList(0, 1), shop, asked)
                        .get(0)
                        .hold()
                        .refusals())
                .extracting(Refusal::sentence)
                .anyMatch(said -> said.contains("fewer than two boxes"));
        assertThat(StockAdvice.of(A.type(), wishes, shop, new StockAdvice.Asked(0, 0, StockAdvice.STEP))
                        .get(0)
                        .hold()
                        .refusals())
                .extracting(Refusal::sentence)
                .anyMatch(said -> said.contains("for how many boxes"));
    }

    @Test
    void whatWasFittedIsOnTheRecordOfAReturn() {
        EntryStream log = box("one");
        String sent = log.add(new Entry.Sent("AB-12 blocker ring", List.of("ring_3"), "Haldane Gears", LATER, 0, ""))
                .draft()
                .id();
        assertThat(Fitted.lines(A, log.job(), List.of("ring_3")).get(0)).contains("nothing is on the record");
        log.add("came", "the lad", new Entry.CameBack(sent, true, "gap 1.2 mm"));
        log.add(new Entry.StepDone(
                A.type().steps().stream()
                        .filter(step -> step.installs().contains("ring_3")
                                || step.builds().contains("ring_3"))
                        .findFirst()
                        .orElseThrow()
                        .id(),
                ""));
        assertThat(Fitted.lines(A, log.job(), List.of("ring_3", "no such part")))
                .singleElement()
                .satisfies(line -> assertThat(line)
                        .contains(
                                "AB-12 blocker ring from Haldane Gears",
                                "gap 1.2 mm, looked at by the lad",
                                "put in at"));
    }

    @Test
    void nothingComesBackBeforeItWasHandedBack() {
        DemoWorkbench bench = DemoWorkbench.open();
        LocalDate today = bench.lying().now().atOffset(ZoneOffset.UTC).toLocalDate();
        assertThat(bench.against(new Entry.Returned(today, "it whines", List.of(), "")))
                .extracting(Refusal::sentence)
                .anyMatch(said -> said.contains("not handed back yet"));
        assertThat(bench.against(new Entry.FollowUpPlanned(LATER, "")))
                .extracting(Refusal::sentence)
                .anyMatch(said -> said.contains("not handed back yet"));
        bench.lay(new Entry.HandedBack("12 months", "", ""));
        assertThat(bench.against(new Entry.Returned(today, "", List.of("no_such"), "")))
                .extracting(Refusal::sentence)
                .anyMatch(said -> said.contains("Say what the owner says it does"))
                .anyMatch(said -> said.contains("no such part"));
        assertThat(bench.against(new Entry.Returned(LocalDate.of(2020, 1, 1), "it whines", List.of(), "")))
                .extracting(Refusal::sentence)
                .anyMatch(said -> said.contains("before the unit was handed back"));
        assertThat(bench.against(new Entry.Returned(today.plusDays(9), "it whines", List.of(), "")))
                .extracting(Refusal::sentence)
                .anyMatch(said -> said.contains("is still to come"));
        assertThat(bench.against(
                        new Entry.ReturnExplained("none", List.of(), "a chip", LiesIn.OUR_WORK, "", List.of())))
                .extracting(Refusal::sentence)
                .anyMatch(said -> said.contains("nothing says that it came back"));
        String returned = bench.keep(new Entry.Returned(today, "it whines", List.of("ring_3"), "V-0099"))
                .draft()
                .id();
        bench.keep(new Entry.ReturnExplained(returned, List.of(), "a chip", LiesIn.OUR_WORK, "", List.of()));
        bench.keep(new Entry.FollowUpPlanned(LATER, "oil level"));
        assertThat(bench.job().end().toAsk()).isPresent();
        bench.keep(new Entry.FollowedUp("quiet", ""));
        assertThat(bench.job().end().toAsk()).isEmpty();
    }

    @Test
    void aDayThatIsNoneIsRefusedAndNothingIsHandedBack() {
        DemoWorkbench bench = DemoWorkbench.open();
        ActContext around = new ActContext(
                new shimwright.rebuild.workbench.ShopFloor(bench.shop(), Map.of(), java.util.Set.of()),
                shimwright.mechanics.quantity.UnitSystem.METRIC,
                EntryStream.BEGIN);
        assertThat(new HandBackActs.HandBack("12 months", "", "", "next spring", "")
                        .on(bench.lying(), around)
                        .refusals())
                .extracting(Refusal::sentence)
                .anyMatch(said -> said.contains("is no day"));
        assertThat(new HandBackActs.HandBack("12 months", "", "", "2031-09-01", "count them")
                        .on(bench.lying(), around)
                        .orElseThrow()
                        .entries())
                .hasSize(3);
    }
}
