package shimwright.bench.web.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import shimwright.bench.web.clearance.ClearanceView;
import shimwright.bench.web.plan.BackOutTarget;
import shimwright.bench.web.plan.ForecastView;
import shimwright.bench.web.plan.LearnView;
import shimwright.bench.web.words.Words;
import shimwright.mechanics.conformity.Verdict;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.rebuild.job.Entry.PieceIn;

/** What templates used to compute themselves; expected words worked out by hand. */
class ShowTest {
    private static final Show SHOW = new Show(UnitSystem.METRIC, ZoneOffset.UTC);
    private static final List<PieceIn> PACK = List.of(new PieceIn("d-02", 1.03e-3, 0), new PieceIn("d-07", 0.21e-3, 0));

    @Test
    void aPackIsShownByPiecesAndAsAWhole() {
        assertThat(SHOW.pieces(PACK)).isEqualTo(SHOW.length(1.03e-3) + " (d-02) + " + SHOW.length(0.21e-3) + " (d-07)");
        assertThat(SHOW.thickness(PACK)).isEqualTo(SHOW.length(1.24e-3)).startsWith("1.24");
        assertThat(SHOW.pieces(List.of())).isEmpty();
    }

    @Test
    void aUnitStandsOnceBehindItsReadings() {
        assertThat(SHOW.values(List.of(Math.toRadians(1.2)), Kind.ANGLE)).containsOnlyOnce("°");
        assertThat(SHOW.values(List.of(1e-3, 2e-3), Kind.LENGTH)).isEqualTo("1.000, 2.000 mm");
    }

    @Test
    void timesAndSharesAreTurnedOnce() {
        assertThat(SHOW.minutes(1.5)).isEqualTo("90 s");
        assertThat(SHOW.minutes(75)).isEqualTo("75 min");
        assertThat(SHOW.hours(90)).isEqualTo("1.5");
        assertThat(SHOW.hundredths(0.356)).isEqualTo("36");
        assertThat(SHOW.size(-2e-5)).isEqualTo(SHOW.length(2e-5));
        assertThat(ForecastView.barWidth(1)).isEqualTo(60);
    }

    @Test
    void wordsComeFromKeys() {
        assertThat(SHOW.spaced("from_the_rear")).isEqualTo("from the rear");
        assertThat(SHOW.key(Verdict.NOT_PROVEN)).isEqualTo("not-proven");
        assertThat(SHOW.shortened("0123456789abcdef", 4)).isEqualTo("0123");
        assertThat(SHOW.named(List.of("a", "b"), Map.of("a", "input shaft"))).isEqualTo("input shaft, b");
        assertThat(BackOutTarget.itemOf("item:sh_in")).isEqualTo("sh_in");
        assertThat(BackOutTarget.itemOf("step:T04")).isEmpty();
        assertThat(ClearanceView.placeOf("sP=d-02+d-07")).isEqualTo("sP");
        assertThat(ClearanceView.tagsOf("sP=d-02+d-07")).isEqualTo("d-02 d-07");
        assertThat(LearnView.withoutLast("yny")).isEqualTo("yn");
        assertThat(LearnView.withoutLast("")).isEmpty();
    }

    @Test
    void whatWasTypedComesBackLineByLine() {
        Page page = new Page(
                "",
                SHOW,
                "",
                null,
                List.of(),
                Map.of("values", "1\n\n3", "form", "read-C31"),
                "",
                "",
                "",
                Held.USUAL,
                Words.PLAIN,
                "");
        assertThat(page.typedLines("values")).containsExactly("1", "", "3");
        assertThat(page.typedLinesIn("read-C31", "values")).containsExactly("1", "", "3");
        assertThat(page.typedLinesIn("read-C14", "values")).containsExactly("");
        assertThat(page.newestFirst(List.of(1, 2, 3))).containsExactly(3, 2, 1);
    }
}
