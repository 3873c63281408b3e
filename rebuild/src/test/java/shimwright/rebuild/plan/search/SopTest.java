package shimwright.rebuild.plan.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import shimwright.rebuild.plan.model.SequencingProblem;
import shimwright.rebuild.plan.verify.OrderVerifier;

/**
 * Sequential ordering problems of TSPLIB 95 (G. Reinelt, Univ. Heidelberg) with their published optima; the files lie beside
 * the project, where they are absent nothing is tested. From the notes on planning: order strength alone does not say which
 * are hard.
 */
class SopTest {
    @ParameterizedTest
    @CsvSource({
        "ESC07, 2125",
        "ESC11, 2075",
        "ESC12, 1675",
        "ESC47, 1288",
        "br17.10, 55",
        "br17.12, 55",
        "p43.4, 83005",
        "rbg109a, 1038"
    })
    void thePublishedOptimumIsReachedAndProven(String name, double optimum) throws IOException {
        SequencingProblem problem = SopFiles.sop(name + ".sop");
        long began = System.nanoTime();
        Solution answer = Search.best(problem, new SearchBudget(1 << 20, 6_000_000), SearchObserver.nobody())
                .orElseThrow();
        if (Boolean.getBoolean("shimwright.figures")) {
            double seconds = (System.nanoTime() - began) / 1e9;
            System.out.printf(
                    Locale.ROOT,
                    "| %s | %.0f | %.0f | %s | %.2f | %d |%n",
                    name,
                    optimum,
                    answer.cost().total(),
                    answer.proven() ? "yes" : "no",
                    seconds,
                    answer.states());
        }
        assertThat(answer.cost().total()).isEqualTo(optimum);
        assertThat(answer.proven()).isTrue();
        assertThat(OrderVerifier.faults(problem, answer.order(), answer.cost())).isEmpty();
    }
}
