package shimwright.bench.picture.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import shimwright.bench.picture.plan.SwimlaneDiagram.Bar;

class SwimlaneDiagramTest {
    private static final List<String> LANES = List.of("First", "Second");
    private static final Pattern HEIGHT = Pattern.compile("viewBox=\"0 0 (\\d+) (\\d+)\"");

    private static List<Integer> heights(List<String> pages) {
        return pages.stream()
                .flatMap(page -> HEIGHT.matcher(page).results().limit(1))
                .map((MatchResult found) -> Integer.valueOf(found.group(2)))
                .toList();
    }

    @Test
    void aShortBarIsTallEnoughToBeReadAndALongEmptyTimeIsShort() {
        List<Bar> one = List.of(new Bar("A1", "a minute", 0, 60, List.of(0), false));
        List<String> page = SwimlaneDiagram.pages("p", one, LANES, 1120);
        assertThat(page).hasSize(1);
        // head 24, a bar of 25, 4 below
        assertThat(heights(page)).containsExactly(53);
        assertThat(page.get(0)).contains("A1", "1 min · a minute", "First", "Second", "0:00");
        assertThat(heights(SwimlaneDiagram.pages("p", one, LANES, 362))).containsExactly(68);
        List<Bar> apart = List.of(one.get(0), new Bar("A2", "ten hours later", 36_060, 36_120, List.of(1), true));
        List<String> wait = SwimlaneDiagram.pages("p", apart, LANES, 1120);
        assertThat(heights(wait)).containsExactly(53 + 44 + 25);
        // from the end at 1 min to the begin at 601 min
        assertThat(wait.get(0)).contains("wait 600 min");
        assertThat(page.get(0)).doesNotContain("wait");
        assertThat(SwimlaneDiagram.pages("p", List.of(), LANES, 1120)).isEmpty();
    }

    @Test
    void aLongDayIsCutIntoPagesAndABarThatIsCutGoesOn() {
        List<Bar> bars = new ArrayList<>();
        for (int k = 0; k < 120; k++) {
            bars.add(new Bar("S" + k, "step " + k, 600L * k, 600L * (k + 1), List.of(0), k % 2 == 0));
        }
        bars.add(new Bar("LONG", "oven", 0, 72_000, List.of(1), false));
        List<String> pages = SwimlaneDiagram.pages("p", bars, LANES, 1120);
        assertThat(heights(pages)).hasSize(5).allMatch(high -> high <= 648);
        assertThat(pages.get(0)).contains(">LONG<").doesNotContain("… LONG");
        assertThat(pages.get(1)).contains("… LONG");
        long shown = pages.stream()
                .flatMap(page -> Pattern.compile(">S\\d+<").matcher(page).results())
                .count();
        assertThat(shown).isEqualTo(120);
    }
}
