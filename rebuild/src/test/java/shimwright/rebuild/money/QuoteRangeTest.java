package shimwright.rebuild.money;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.ZoneOffset;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import shimwright.rebuild.demo.DemoWorkbench;
import shimwright.rebuild.job.Entry;

/** A quote is a range from chances, prices and hours; what nobody knows makes it wider and is never taken for nothing. */
class QuoteRangeTest {
    private static Entry.QuoteLine line(long cents, double chance) {
        return new Entry.QuoteLine("part", cents, chance, "");
    }

    @Test
    void whatIsSureIsNoRange() {
        assertThat(QuoteRange.of(List.of(line(1_000, 1), line(500, 0)), 2_000, 0))
                .isEqualTo(new QuoteRange(3_000, 3_000, 3_000));
    }

    @Test
    void whatNobodyHasAChanceForIsInTheUpperEndAlone() {
        QuoteRange range = QuoteRange.of(List.of(line(1_000, 1), line(700, -1)), 0, 0);
        assertThat(range).isEqualTo(new QuoteRange(1_000, 1_000, 1_700));
    }

    /** By hand: of two evenly spread halves the tenth and ninetieth hundredths lie at sqrt(0.2) - 1 and 1 - sqrt(0.2) of the spread. */
    @Test
    void theHoursSpreadAsATriangle() {
        QuoteRange range = QuoteRange.of(List.of(), 100_000, 0.3);
        double tenth = 100_000 * 0.3 * (1 - Math.sqrt(0.2));
        assertThat((double) range.low()).isCloseTo(100_000 - tenth, within(900.0));
        assertThat((double) range.high()).isCloseTo(100_000 + tenth, within(900.0));
        assertThat((double) range.likely()).isCloseTo(100_000, within(900.0));
    }

    @Property(tries = 60)
    void aGreaterChanceIsNeverCheaper(
            @ForAll @DoubleRange(min = 0, max = 1) double chance,
            @ForAll @DoubleRange(min = 0, max = 1) double more,
            @ForAll @IntRange(max = 100_000) int cents) {
        double greater = Math.min(1, chance + more);
        QuoteRange one = QuoteRange.of(List.of(line(cents, chance), line(4_000, 0.4)), 30_000, 0.3);
        QuoteRange other = QuoteRange.of(List.of(line(cents, greater), line(4_000, 0.4)), 30_000, 0.3);
        assertThat(other.low()).isGreaterThanOrEqualTo(one.low());
        assertThat(other.high()).isGreaterThanOrEqualTo(one.high());
        assertThat(one.low()).isLessThanOrEqualTo(one.likely());
        assertThat(one.likely()).isLessThanOrEqualTo(one.high());
    }

    @Test
    void hoursAreThoseBetweenEntriesThatLieCloseTogether() {
        DemoWorkbench bench = DemoWorkbench.open();
        int before = bench.entries().size();
        bench.layDone("P01", "P02", "P03");
        // each entry of the stream lies a quarter of an hour after the one before
        assertThat(WorkTime.of(bench.job(), ZoneOffset.UTC).hours()).isCloseTo((before + 2) * 0.25, within(1e-9));
    }

    @Test
    void theOwnerIsAskedAgainWhereMoreIsFound() {
        DemoWorkbench bench = DemoWorkbench.open();
        assertThat(Consent.of(bench.job(), 0).ask()).isTrue();
        String quote = bench.keep(new Entry.Quoted(
                        List.of(line(1_000, 1), new Entry.QuoteLine("rings", 500, 0.5, "")),
                        900,
                        1_000,
                        1_500,
                        "EUR",
                        List.of(),
                        List.of(),
                        ""))
                .draft()
                .id();
        assertThat(Consent.of(bench.job(), 0).ask()).isTrue();
        bench.keep(new Entry.OwnerAnswered(
                quote,
                Entry.OwnerSays.AGREED,
                Entry.Channel.BY_TELEPHONE,
                bench.job().openedAt().atOffset(ZoneOffset.UTC).toLocalDate(),
                "the owner",
                1_500,
                ""));
        assertThat(Consent.of(bench.job(), 1_500).ask()).isFalse();
        assertThat(Consent.of(bench.job(), 1_501).say()).contains("more than that by now");
        bench.keep(new Entry.Judged("", List.of(), "rings", Entry.Decision.REPLACE, "worn", ""));
        assertThat(Consent.of(bench.job(), 1_500).ask()).as("reckoned with").isFalse();
        bench.keep(new Entry.Judged("", List.of(), "crown wheel", Entry.Decision.REPLACE, "broken tooth", ""));
        assertThat(Consent.of(bench.job(), 1_500).why()).containsExactly("crown wheel: broken tooth");
    }
}
