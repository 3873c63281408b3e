package shimwright.bench.picture.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import shimwright.bench.picture.plan.PlanDiagram.Box;
import shimwright.bench.picture.plan.PlanDiagram.Bracket;
import shimwright.bench.picture.plan.PlanDiagram.State;
import shimwright.bench.picture.svg.DrawnSvg;

class PlanDiagramTest {
    private static final List<Box> STEPS = IntStream.rangeClosed(1, 9)
            .mapToObj(i ->
                    new Box("S0" + i + "A", "PRESS", 4, i < 8 ? State.DONE : State.AHEAD, i % 2 == 0, i % 3 == 0, "/"))
            .toList();

    private static final List<Bracket> WINDOWS = List.of(
            new Bracket("S02A", "S04A", "anaerobic sealant on face G, joined within 30 min"),
            new Bracket("S03A", "S04A", "face G joined, tightened within 15 min"),
            new Bracket("S04A", "S05A", "main case at 105 degC, cup in within 40 s"),
            new Bracket("S08A", "NOWHERE", "not drawn"));

    @Test
    void windowsThatRunTogetherStandUnderOneAnotherAndAreNamedInFull() {
        for (double width : new double[] {362, 1120}) {
            String svg = PlanDiagram.svg("p", STEPS, WINDOWS, Map.of("PRESS", "at the press"), width);
            DrawnSvg drawn = DrawnSvg.of(svg);
            assertThat(drawn.overlaps()).as("texts that cover each other").isEmpty();
            assertThat(drawn.outside()).as("texts off the sheet").isEmpty();
            assertThat(svg)
                    .contains(WINDOWS.get(1).label(), WINDOWS.get(2).label(), ">S07A<", ">PRESS<")
                    .doesNotContain("not drawn");
        }
        assertThat(PlanDiagram.svg("p", STEPS, WINDOWS, Map.of(), 1120))
                .contains(WINDOWS.get(0).label());
    }

    @Test
    void aPlanWithoutWindowsHasNoneInItsKey() {
        assertThat(PlanDiagram.svg("p", STEPS, List.of(), Map.of(), 1120)).contains("0 0 1120 ");
    }
}
