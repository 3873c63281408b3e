package shimwright.trial;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import shimwright.mechanics.registry.Registry;
import shimwright.mechanics.worksheet.Worksheet;

/**
 * From the start of a process to its answer, median of ten, beside a process that only says its version: {@code java -cp
 * … shimwright.trial.ColdStart COMMAND…}, such as {@code ./shimwright calc involute angle=20}.
 */
public final class ColdStart {
    private static final int RUNS = 10;

    private ColdStart() {}

    /**
     * Runs the harness.
     *
     * @param args the command to time; "names" prints the worksheets for {@link SheetBenchmark}
     */
    public static void main(String[] args) throws IOException, InterruptedException {
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        if (args.length == 1 && args[0].equals("names")) {
            out.println(names());
            return;
        }
        String java = System.getProperty("java.home") + "/bin/java";
        double bare = median(List.of(java, "-XX:TieredStopAtLevel=1", "-version"));
        double ours = median(List.of(args));
        out.printf("java -version %.0f ms, %s %.0f ms, ratio %.2f%n", bare, String.join(" ", args), ours, ours / bare);
    }

    /** Every worksheet, as {@code -p name=} takes them. */
    static String names() {
        return Registry.all().stream().map(Worksheet::name).collect(Collectors.joining(","));
    }

    private static double median(List<String> command) throws IOException, InterruptedException {
        List<Double> times = new ArrayList<>();
        for (int i = 0; i < RUNS; i++) {
            long start = System.nanoTime();
            Process process = new ProcessBuilder(command)
                    .redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .start();
            if (process.waitFor() != 0) {
                throw new IOException(String.join(" ", command) + " ended with " + process.exitValue());
            }
            times.add((System.nanoTime() - start) / 1e6);
        }
        times.sort(Double::compare);
        return (times.get(RUNS / 2 - 1) + times.get(RUNS / 2)) / 2;
    }
}
