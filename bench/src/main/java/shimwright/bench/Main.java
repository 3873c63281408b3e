package shimwright.bench;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.List;
import shimwright.bench.command.CalcCommand;
import shimwright.bench.command.UnitCommand;
import shimwright.bench.command.UsageText;

/** Joins store, web, print and command line. */
public final class Main {
    private Main() {}

    /** Runs the command that is named first, and ends the process with its status. */
    public static void main(String[] args) {
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        PrintStream err = new PrintStream(System.err, true, StandardCharsets.UTF_8);
        int code = run(List.of(args), out, err);
        if (code != Serving.GOES_ON) {
            System.exit(code);
        }
    }

    /**
     * Runs a command.
     *
     * @return the exit code, or {@link Serving#GOES_ON} where a server was started
     */
    static int run(List<String> args, PrintStream out, PrintStream err) {
        String command = args.isEmpty() ? "help" : args.get(0);
        List<String> rest = args.isEmpty() ? List.of() : args.subList(1, args.size());
        return switch (command) {
            case "demo" -> Serving.demo(rest, out, err);
            case "serve" -> Serving.serve(rest, out, err);
            case "backup" -> BackupCommands.backup(rest, out, err);
            case "restore" -> BackupCommands.restore(rest, out, err);
            case "verify" -> BackupCommands.verify(rest, out, err);
            case "devices" -> Network.devices(rest, Clock.systemUTC(), out, err);
            case "unit" -> UnitCommand.run(rest, out, err);
            case "calc" -> CalcCommand.run(rest, out, err);
            case "--warm" -> PlayedDemo.warm(rest, err);
            case "help", "--help", "-h" -> UsageText.help(out);
            default -> UsageText.unknown(command, err);
        };
    }
}
