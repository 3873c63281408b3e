package shimwright.rebuild.clearance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static shimwright.rebuild.demo.DemoWorkbench.MM;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.rebuild.clearance.Session.Stage;
import shimwright.rebuild.demo.DemoWorkbench;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Shop;
import shimwright.rebuild.job.Shop.Gauge;
import shimwright.rebuild.unit.model.Step.Phase;

/** A shop with gauges of its own names: the reading takes the gauge that was in the hand. Limits of c: 0.02 to 0.08. */
class OwnShopTest {
    private static final Gauge FINE = gauge("my indicator", 0.001, 0.001);
    private static final Gauge HUNDREDTH = gauge("old dial", 0.01, 0.005);
    private static final Gauge CALIPER = gauge("caliper", 0.02, 0.03);

    private final DemoWorkbench bench = DemoWorkbench.open();

    private static Gauge gauge(String id, double step, double error) {
        return new Gauge(id, id, Kind.LENGTH, step * MM, error * MM, 0, 0, 10 * MM);
    }

    private Shop with(Gauge... gauges) {
        Map<String, Gauge> own = new LinkedHashMap<>();
        for (Gauge gauge : gauges) {
            own.put(gauge.id(), gauge);
        }
        return new Shop(bench.shop().pieces(), own);
    }

    private Session session(Shop shop) {
        return Sessions.of(bench.unit(), bench.job(), shop, "c");
    }

    private void rounds(String gauge) {
        bench.packIn("c", Phase.TRIAL, "sI=d52-10");
        for (int i = 0; i < 3; i++) {
            bench.lay(new Entry.RoundRead("c", Phase.TRIAL, gauge, List.of(0.24 * MM, 0.32 * MM), ""));
        }
    }

    @Test
    void anyGaugeFineEnoughIsTakenTheFinestFirst() {
        Session fresh = session(with(HUNDREDTH, CALIPER, FINE));
        assertThat(fresh.gauges()).containsExactly(FINE, HUNDREDTH);
        assertThat(fresh.gauge()).isEqualTo(FINE);
        assertThat(session(bench.shop()).gauge())
                .extracting(g -> Objects.requireNonNull(g).id())
                .isEqualTo("DI");
    }

    @Test
    void theReadingIsProofWithTheGaugeOfItsOwnEntryAndHasThatUncertainty() {
        rounds("old dial");
        Session coarse = session(with(HUNDREDTH, FINE));
        assertThat(coarse.stage()).isEqualTo(Stage.CHOOSE);
        assertThat(coarse.gauge()).isEqualTo(HUNDREDTH);
        DemoWorkbench other = DemoWorkbench.open();
        other.packIn("c", Phase.TRIAL, "sI=d52-10");
        for (int i = 0; i < 3; i++) {
            other.lay(new Entry.RoundRead("c", Phase.TRIAL, "my indicator", List.of(0.24 * MM, 0.32 * MM), ""));
        }
        Session fine = Sessions.of(other.unit(), other.job(), with(HUNDREDTH, FINE), "c");
        double before = Objects.requireNonNull(coarse.trial().measured()).u();
        double after = Objects.requireNonNull(fine.trial().measured()).u();
        // JCGM 100:2008 4.3.7: what the step read twice and the error limit add; the rest of the budget is the same
        double step = (0.01 * 0.01 - 0.001 * 0.001) / 6;
        double error = (0.005 * 0.005 - 0.001 * 0.001) / 3;
        assertThat(before * before - after * after).isBetween(step / 2 * MM * MM, (step + error) * 1.5 * MM * MM);
    }

    @Test
    void aGaugeTheShopHasNotIsSaidForTheRoundsReadWithIt() {
        rounds("DI");
        Session session = session(with(FINE));
        assertThat(session.trial().refusals())
                .extracting(Refusal::sentence)
                .containsExactly(
                        "gauge DI: the shop has no data of this gauge, so its uncertainty is not known. Enter its step "
                                + "and error limit in the shop, or say which gauge was used.");
        assertThat(session.gauge()).isEqualTo(FINE);
    }

    @Test
    void aGaugeTooCoarseForTheLimitsIsRefusedInWords() {
        Session session = session(with(CALIPER));
        assertThat(session.gauge()).isNull();
        assertThat(session.say()).startsWith("The shop has no gauge that can prove this clearance, such as DI");
        assertThat(Decisions.round(
                                session,
                                Phase.TRIAL,
                                List.of("caliper"),
                                with(CALIPER),
                                List.of(0.24 * MM, 0.32 * MM),
                                "")
                        .refusals())
                .extracting(Refusal::sentence)
                .containsExactly(
                        "gauge caliper: A step of 0.020 mm with an error limit of 0.030 mm is too coarse: limits "
                                + "0.060 mm apart cannot be proven with it. Take a finer gauge.");
        rounds("caliper");
        assertThat(Objects.requireNonNull(session(with(CALIPER)).trial().measured())
                        .cautions())
                .anyMatch(c -> c.contains("is too coarse"));
    }

    @Test
    void everyFaultOfARoundIsSaidAtOnce() {
        Session session = session(with(FINE));
        assertThat(Decisions.round(session, Phase.TRIAL, List.of("DI"), with(FINE), List.of(), "")
                        .refusals())
                .extracting(Refusal::place)
                .containsExactly("gauge DI");
        assertThat(Decisions.round(session, Phase.TRIAL, List.of("my indicator"), with(FINE), List.of(24 * MM), "")
                        .refusals())
                .extracting(Refusal::fact)
                .containsExactly("1 of 2 numbers", "a reading lies outside what gauge my indicator can show");
        assertThat(Decisions.round(
                                session,
                                Phase.TRIAL,
                                List.of("my indicator"),
                                with(FINE),
                                List.of(0.24 * MM, 0.32 * MM),
                                "")
                        .orElseThrow()
                        .gauge())
                .isEqualTo("my indicator");
    }

    @Test
    void namingPiecesRefusesAllThatCannotBe() {
        Session session = bench.session("c");
        assertThat(Decisions.packIn(
                                session,
                                Phase.TRIAL,
                                Map.of("sI", bench.pieces("d80-01"), "sX", List.of()),
                                bench.shop(),
                                "V-0093")
                        .refusals())
                .extracting(Refusal::fact)
                .containsExactlyInAnyOrder("it is of family SH80, here goes SH52", "this clearance has no such place");
        assertThat(Decisions.packIn(session, Phase.TRIAL, Map.of(), bench.shop(), "V-0093")
                        .refusals())
                .extracting(Refusal::fact)
                .containsExactly("it is not said which piece is in");
    }

    @Test
    void aShimOfThisJobMayBeNamedAsTrialPieceAndOneOfAnotherNot() {
        rounds("old dial");
        bench.keep(Decisions.choose(session(with(HUNDREDTH)), bench.pieces("d52-03", "d52-09"), "")
                .orElseThrow());
        assertThat(Decisions.packIn(bench.session("c"), Phase.TRIAL, bench.pack("sI=d52-03"), bench.shop(), "V-0093")
                        .isOk())
                .isTrue();
        assertThat(Decisions.packIn(bench.session("c"), Phase.TRIAL, bench.pack("sI=d52-03"), bench.shop(), "V-0094")
                        .refusals())
                .extracting(Refusal::fact)
                .containsExactly("it is in unit V-0093");
    }

    @Test
    void theAimOfTheFileIsTheTarget() {
        // aim 0.05 is the middle of c; ring play f aims at 0.03 within 0.01 to 0.06
        bench.packIn("f", Phase.FINAL, "ring=r22-01");
        for (int i = 0; i < 2; i++) {
            bench.round("f", Phase.FINAL, 0.11, 0.12);
        }
        assertThat(Objects.requireNonNull(
                                Objects.requireNonNull(bench.session("f").advice())
                                        .result())
                        .wantedThickness())
                .isCloseTo((1.979 + 0.115 - 0.03) * MM, within(1e-8));
    }
}
