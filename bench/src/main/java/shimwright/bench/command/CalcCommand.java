package shimwright.bench.command;
import java.io.PrintStream; import java.util.List;
public final class CalcCommand { public static int run(List<String> a, PrintStream o, PrintStream e) { return 0; } }
