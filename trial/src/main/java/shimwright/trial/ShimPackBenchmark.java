package shimwright.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import shimwright.mechanics.axial.shim.Piece;
import shimwright.mechanics.axial.shim.ShimPack;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.working.Worked;

/**
 * How long the search for a pack takes in a drawer of 40 pieces.
 *
 * <p>Run by {@code ./check -DskipTests}, which leaves the class path in {@code trial/target/classpath}, and then
 * {@code java -cp trial/target/classes:$(cat trial/target/classpath) org.openjdk.jmh.Main ShimPackBenchmark}.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class ShimPackBenchmark {
    private static final int PIECES = 40;
    private static final double MICROMETRE = 1e-6;

    /** Most pieces in a pack. */
    @Param({"2", "3", "4", "6"})
    public int most = 2;

    private ShimPack.Case question = question(most);

    /** Fills the drawer anew for the number of pieces asked for. */
    @Setup
    public void fill() {
        question = question(most);
    }

    private static ShimPack.Case question(int most) {
        Random random = new Random(40);
        List<Piece> drawer = new ArrayList<>();
        for (int i = 0; i < PIECES; i++) {
            double stamped = (200 + 25 * (i % 20)) * MICROMETRE;
            drawer.add(new Piece("s" + i, stamped + 3 * MICROMETRE * random.nextGaussian(), 2 * MICROMETRE));
        }
        return new ShimPack.Case(
                278 * MICROMETRE,
                5 * MICROMETRE,
                null,
                797 * MICROMETRE,
                2 * MICROMETRE,
                -1,
                20 * MICROMETRE,
                80 * MICROMETRE,
                null,
                0.95,
                drawer,
                1,
                most,
                3);
    }

    /** The search as the bench asks for it. */
    @Benchmark
    public Outcome<Worked<ShimPack.Result>> search() {
        return ShimPack.work(question);
    }
}
