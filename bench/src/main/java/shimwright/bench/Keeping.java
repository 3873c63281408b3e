package shimwright.bench;

import java.io.PrintStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import shimwright.bench.command.Options;
import shimwright.bench.store.Backup;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;

/** Backups from the command line: made of a shop that may be running, checked, and laid back into an empty folder. */
final class Keeping {
    private static final int REFUSED = 2;

    private Keeping() {}

    /** {@code backup --data DIR --to DIR}. */
    static int backup(List<String> args, PrintStream out, PrintStream err) {
        return run(args, out, err, "data", "backup", (data, to) -> Backup.make(data, to));
    }

    /** {@code restore --from DIR --to DIR}. */
    static int restore(List<String> args, PrintStream out, PrintStream err) {
        return run(args, out, err, "from", "restored", (from, to) -> Backup.restore(from, to));
    }

    private interface Work {
        Outcome<Backup.Made> of(Path from, Path to);
    }

    private static int run(List<String> args, PrintStream out, PrintStream err, String source, String word, Work work) {
        Outcome<Options> options = Options.read(args, Set.of(source, "to"), Set.of());
        if (!(options instanceof Outcome.Ok<Options> ok)) {
            return refused(options.refusals(), err);
        }
        if (!ok.value().has(source) || !ok.value().has("to")) {
            err.println("Say from where and to where: --" + source + " DIR --to DIR");
            return REFUSED;
        }
        Path to = Path.of(ok.value().get("to", ""));
        Outcome<Backup.Made> made = work.of(Path.of(ok.value().get(source, "")), to);
        if (!(made instanceof Outcome.Ok<Backup.Made> done)) {
            return refused(made.refusals(), err);
        }
        done.value().missing().forEach(refusal -> err.println(refusal.sentence()));
        out.println(word + ": " + done.value().head().count() + " entries and "
                + done.value().files()
                + " files in " + to.toAbsolutePath() + ", checked. Head "
                + done.value().head().hash());
        return 0;
    }

    private static int refused(List<Refusal> refusals, PrintStream err) {
        refusals.forEach(refusal -> err.println(refusal.sentence()));
        return REFUSED;
    }
}
