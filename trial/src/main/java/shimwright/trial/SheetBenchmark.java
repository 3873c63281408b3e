package shimwright.trial;

import java.util.Map;
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
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.mechanics.registry.Registry;
import shimwright.mechanics.worksheet.Answer;
import shimwright.mechanics.worksheet.Worksheet;

/**
 * Calls per second of a worksheet with its worked example, from text to answer with its working. All sheets: {@code -p
 * name=...} with the names {@link ColdStart#names} prints. Run as {@link ShimPackBenchmark} says.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Warmup(iterations = 1, time = 300, timeUnit = TimeUnit.MILLISECONDS)
@Measurement(iterations = 3, time = 200, timeUnit = TimeUnit.MILLISECONDS)
@Fork(1)
public class SheetBenchmark {
    /** The worksheet. */
    @Param({"involute"})
    public String name = "involute";

    private Worksheet<?, ?> sheet = sheet(name);
    private Map<String, String> example = sheet.example();

    /** Takes the sheet asked for. */
    @Setup
    public void take() {
        sheet = sheet(name);
        example = sheet.example();
    }

    private static Worksheet<?, ?> sheet(String name) {
        return Registry.find(name).orElseThrow();
    }

    /** One answer. */
    @Benchmark
    public Outcome<Answer> answer() {
        return sheet.answer(example, UnitSystem.METRIC);
    }
}
