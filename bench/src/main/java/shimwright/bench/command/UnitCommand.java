package shimwright.bench.command;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import shimwright.rebuild.plan.blocking.DrawingComparison;
import shimwright.rebuild.unit.file.UnitFiles;
import shimwright.rebuild.unit.file.UnitSchema;
import shimwright.rebuild.unit.model.UnitType;

/** {@code unit check FILE}, {@code unit new}, {@code unit schema}. */
public final class UnitCommand {
    private static final int REFUSED = 2;

    private UnitCommand() {}

    /** Runs the command; 0 for a sound file, 2 where anything is refused. */
    public static int run(List<String> args, PrintStream out, PrintStream err) {
        String what = args.isEmpty() ? "" : args.get(0);
        if (what.equals("check") && args.size() == 2) {
            return check(Path.of(args.get(1)), out, err);
        }
        if (what.equals("new") && args.size() == 1) {
            out.print(UnitFiles.starter());
            return 0;
        }
        if (what.equals("schema") && args.size() == 1) {
            out.println(UnitSchema.json());
            return 0;
        }
        err.println("Type unit check FILE, unit new or unit schema.");
        return REFUSED;
    }

    private static int check(Path file, PrintStream out, PrintStream err) {
        byte[] content;
        try {
            content = Files.readAllBytes(file);
        } catch (IOException broken) {
            err.println(file + ": it cannot be read. Look at the name and its permissions.");
            return REFUSED;
        }
        UnitFiles.Result read = UnitFiles.read(file.toString(), content);
        read.problems().forEach(problem -> err.println(problem.sentence()));
        if (read instanceof UnitFiles.Good good) {
            UnitType type = good.type();
            out.println(file + ": sound. " + type.maker() + " " + type.model() + ", variants "
                    + String.join(", ", type.variants().keySet()) + ", "
                    + type.steps().size() + " steps, "
                    + type.clearances().size() + " clearances.");
            good.remarks().forEach(remark -> out.println("remark: " + remark.sentence()));
            DrawingComparison.report(file.toString(), good).forEach(out::println);
            return 0;
        }
        int count = read.problems().size();
        err.println(count + (count == 1 ? " problem." : " problems."));
        return REFUSED;
    }
}
