package shimwright.trial;

import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.DoubleStream;
import org.hipparchus.random.RandomDataGenerator;
import org.hipparchus.random.Well19937c;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import shimwright.mechanics.measure.Distribution;
import shimwright.mechanics.measure.MonteCarlo;
import shimwright.mechanics.measure.Sampling;

/**
 * Draws per second of the gauge block of JCGM 101:2008 9.5, against a plain loop over the numerics library. Both give
 * mean and standard deviation in nm; ours sorts the draws for its intervals as well. Run like {@link ShimPackBenchmark}.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Warmup(iterations = 2, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class MonteCarloBenchmark {
    private static final int DRAWS = 100_000;
    private static final List<Distribution> INPUTS = List.of(
            new Distribution.ScaledT(25, 18),
            new Distribution.ScaledT(6, 24),
            new Distribution.ScaledT(4, 5),
            new Distribution.ScaledT(7, 8),
            new Distribution.Rectangular(2e-6),
            new Distribution.Normal(0.2),
            new Distribution.Cyclic(0.5),
            new Distribution.RoughRectangular(1e-6, 0.1e-6),
            new Distribution.RoughRectangular(0.050, 0.025));

    private static double length(double[] x) {
        double standard = 50_000_623 + x[0];
        double difference = 215 + x[1] + x[2] + x[3];
        double theta = -0.1 + x[5] + x[6];
        double expansion = 11.5e-6 + x[4];
        return (standard * (1 + expansion * (theta - x[8])) + difference) / (1 + (expansion + x[7]) * theta)
                - 50_000_000;
    }

    private static double[] ours(int threads) {
        MonteCarlo.Run run = MonteCarlo.run(
                INPUTS,
                1,
                (x, y) -> {
                    y[0] = length(x);
                    return true;
                },
                Sampling.of(DRAWS, 1).onThreads(threads));
        return run.results().stream()
                .flatMapToDouble(one -> one == null ? DoubleStream.empty() : DoubleStream.of(one.mean(), one.u()))
                .toArray();
    }

    /** Ours on one thread. */
    @Benchmark
    @OperationsPerInvocation(DRAWS)
    public double[] oneThread() {
        return ours(1);
    }

    /** Ours on two threads. */
    @Benchmark
    @OperationsPerInvocation(DRAWS)
    public double[] twoThreads() {
        return ours(2);
    }

    /** A loop that draws from the library; t as a normal over the root of χ²/ν. */
    @Benchmark
    @OperationsPerInvocation(DRAWS)
    public double[] plainLoop() {
        RandomDataGenerator random = RandomDataGenerator.of(new Well19937c(1));
        double[] x = new double[9];
        double mean = 0;
        double squares = 0;
        for (int i = 1; i <= DRAWS; i++) {
            x[0] = 25 * student(random, 18);
            x[1] = 6 * student(random, 24);
            x[2] = 4 * student(random, 5);
            x[3] = 7 * student(random, 8);
            x[4] = random.nextUniform(-2e-6, 2e-6);
            x[5] = random.nextNormal(0, 0.2);
            x[6] = 0.5 * Math.cos(Math.PI * random.nextDouble());
            x[7] = random.nextUniform(0.9e-6, 1.1e-6) * random.nextUniform(-1, 1);
            x[8] = random.nextUniform(0.025, 0.075) * random.nextUniform(-1, 1);
            double y = length(x);
            double away = y - mean;
            mean += away / i;
            squares += away * (y - mean);
        }
        return new double[] {mean, Math.sqrt(squares / (DRAWS - 1))};
    }

    private static double student(RandomDataGenerator random, double nu) {
        return random.nextNormal(0, 1) / Math.sqrt(random.nextGamma(nu / 2, 2) / nu);
    }
}
