package shimwright.trial;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
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
import shimwright.rebuild.supply.Cover;
import shimwright.rebuild.supply.KitCover;
import shimwright.rebuild.supply.Need;
import shimwright.rebuild.unit.model.Kit;

/** The cheapest cover of 60 parts by 12 kits of 15 lines each, as large as such a list gets. Run like {@link ShimPackBenchmark}. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class KitCoverBenchmark {
    private static final int PARTS = 60;
    private static final int KITS = 12;
    private static final int LINES = 15;

    /** Of the chance by which the list is made. */
    @Param({"1", "2", "3"})
    public long seed = 1;

    private final List<Need> needs = new ArrayList<>();
    private final List<Kit> kits = new ArrayList<>();
    private final Map<String, Cover.Single> singles = new LinkedHashMap<>();

    /** Makes the list. */
    @Setup
    public void make() {
        Random random = new Random(seed);
        double[] prices = new double[PARTS];
        for (int n = 0; n < PARTS; n++) {
            Need need = new Need("P" + n, "part " + n, 1 + random.nextInt(3), List.of("i" + n), List.of("worn"), "");
            prices[n] = 3.0 + random.nextInt(40);
            needs.add(need);
            singles.put(need.key(), new Cover.Single(need, 1, prices[n], "S1"));
        }
        for (int k = 0; k < KITS; k++) {
            List<Kit.Line> lines = new ArrayList<>();
            double worth = 0;
            for (int l = 0; l < LINES; l++) {
                int part = random.nextInt(PARTS);
                int quantity = 1 + random.nextInt(2);
                lines.add(new Kit.Line("P" + part, "part " + part, quantity, 0, "", "i" + part));
                worth += quantity * prices[part];
            }
            kits.add(new Kit("K" + k, lines, Math.round(worth * (0.5 + 0.4 * random.nextDouble())), Set.of()));
        }
    }

    /** The cheapest cover. */
    @Benchmark
    public Cover cover() {
        return KitCover.of(needs, kits, singles);
    }
}
