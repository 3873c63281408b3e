package shimwright.bench.command;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import shimwright.mechanics.outcome.Outcome;
import shimwright.rebuild.unit.UnitFiles;
import shimwright.rebuild.unit.UnitSchema;
import shimwright.rebuild.unit.UnitType;

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
        Outcome<UnitType> read = UnitFiles.read(file.toString(), content).outcome();
        read.refusals().forEach(refusal -> err.println(refusal.sentence()));
        if (read instanceof Outcome.Ok<UnitType> ok) {
            UnitType type = ok.value();
            out.println(file + ": sound. " + type.maker() + " " + type.model() + ", variants "
                    + String.join(", ", type.variants().keySet()) + ", "
                    + type.steps().size() + " steps, "
                    + type.clearances().size() + " clearances.");
            return 0;
        }
        int count = read.refusals().size();
        err.println(count + (count == 1 ? " problem." : " problems."));
        return REFUSED;
    }
}
