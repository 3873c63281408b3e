package shimwright.bench;

import java.io.PrintStream;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import shimwright.bench.command.Options;
import shimwright.bench.store.backup.Backup;
import shimwright.bench.store.sign.OwnerFolder;
import shimwright.bench.store.verify.Verification;
import shimwright.bench.store.verify.Verification.Shop;
import shimwright.bench.store.verify.VerificationReport;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;

/** Backups from the command line: made of a shop that may be running, checked, and laid back into an empty folder. */
final class BackupCommands {
    private static final int REFUSED = 2;
    private static final int FOUND = 1;

    private BackupCommands() {}

    /** {@code backup --data DIR --to DIR}, or {@code --store ADDRESS} for a database. */
    static int backup(List<String> args, PrintStream out, PrintStream err) {
        return run(args, out, err, "data", "store", "to", "backup", (options, owner) -> {
            Path to = Path.of(options.get("to", ""));
            return options.has("store")
                    ? Backup.make(options.get("store", ""), to, owner)
                    : Backup.make(Path.of(options.get("data", "")), to, owner);
        });
    }

    /** {@code restore --from DIR --to DIR}, or {@code --store ADDRESS} for a database. */
    static int restore(List<String> args, PrintStream out, PrintStream err) {
        return run(args, out, err, "to", "store", "from", "restored", (options, owner) -> {
            Path from = Path.of(options.get("from", ""));
            return options.has("store")
                    ? Backup.restore(from, options.get("store", ""))
                    : Backup.restore(from, Path.of(options.get("to", "")));
        });
    }

    /** {@code verify --data DIR [--job J] [--count N --hash H]}, {@code --backup DIR} or {@code --record FILE [--data DIR]}; in place of {@code --data DIR} {@code --store ADDRESS} for a database. */
    static int verify(List<String> args, PrintStream out, PrintStream err) {
        Outcome<Options> options = Options.read(
                args, Set.of("data", "store", "backup", "record", "job", "count", "hash", "owner", "key"), Set.of());
        if (!(options instanceof Outcome.Ok<Options> ok)) {
            return refused(options.refusals(), err);
        }
        Outcome<VerificationReport> checked = verified(ok.value());
        if (!(checked instanceof Outcome.Ok<VerificationReport> report)) {
            return refused(checked.refusals(), err);
        }
        report.value().sound().stream().distinct().forEach(line -> out.println("sound: " + line));
        report.value().remarks().stream().distinct().forEach(line -> out.println("note: " + line));
        report.value().faults().forEach(fault -> err.println("FAULT: " + fault.sentence()));
        out.println(
                report.value().isWhole()
                        ? "Nothing was found that is not as it was kept."
                        : report.value().faults().size() + " found that is not as it was kept.");
        return report.value().isWhole() ? 0 : FOUND;
    }

    private static Outcome<VerificationReport> verified(Options options) {
        Verification check = new Verification(
                owner(options, Clock.systemUTC()),
                options.has("key") ? Optional.of(options.get("key", "")) : Optional.empty());
        Optional<Shop> shop = shop(options);
        if (options.has("data") && options.has("store")) {
            return Outcome.refused(Refusal.at("verify", "two shops are named", "Say --data DIR or --store ADDRESS"));
        }
        if (options.has("record")) {
            return Outcome.ok(check.record(Path.of(options.get("record", "")), shop));
        }
        if (options.has("backup")) {
            return Outcome.ok(check.backup(Path.of(options.get("backup", "")), shop));
        }
        if (shop.isEmpty()) {
            return Outcome.refused(Refusal.at(
                    "verify",
                    "nothing to check is named",
                    "Say --data DIR, --store ADDRESS, --backup DIR or --record FILE"));
        }
        if (!options.has("hash")) {
            return Outcome.ok(check.shop(shop.get()));
        }
        String count = options.get("count", "");
        if (!count.matches("[0-9]{1,18}")) {
            return Outcome.refused(
                    Refusal.of("--count", "\"" + count + "\" is not a number of entries", "Type it as it is printed"));
        }
        return Outcome.ok(
                check.head(shop.get(), options.get("job", ""), Long.parseLong(count), options.get("hash", "")));
    }

    private static Optional<Shop> shop(Options options) {
        if (options.has("store")) {
            return Optional.of(new Shop.Database(options.get("store", "")));
        }
        return options.has("data") ? Optional.of(new Shop.Folder(Path.of(options.get("data", "")))) : Optional.empty();
    }

    /** The owner's folder that is named, or the user's. */
    static OwnerFolder owner(Options options, Clock clock) {
        return options.has("owner")
                ? new OwnerFolder(Path.of(options.get("owner", "")), clock)
                : OwnerFolder.ofUser(clock);
    }

    private interface Work {
        Outcome<Backup.Made> of(Options options, Optional<OwnerFolder> owner);
    }

    /** Runs a command that needs one folder, and another or a database. */
    private static int run(
            List<String> args,
            PrintStream out,
            PrintStream err,
            String folder,
            String database,
            String other,
            String word,
            Work work) {
        Outcome<Options> options = Options.read(args, Set.of(folder, database, other, "owner"), Set.of());
        if (!(options instanceof Outcome.Ok<Options> ok)) {
            return refused(options.refusals(), err);
        }
        if (!ok.value().has(other) || ok.value().has(folder) == ok.value().has(database)) {
            err.println("Say from where and to where: --" + folder + " DIR (or --" + database + " ADDRESS) and --"
                    + other + " DIR");
            return REFUSED;
        }
        Outcome<Backup.Made> made = work.of(ok.value(), Optional.of(owner(ok.value(), Clock.systemUTC())));
        if (!(made instanceof Outcome.Ok<Backup.Made> done)) {
            return refused(made.refusals(), err);
        }
        done.value().missing().forEach(refusal -> err.println(refusal.sentence()));
        String to = ok.value().get("to", ok.value().has(database) ? "the database" : "");
        out.println(word + ": " + done.value().head().count() + " entries and "
                + done.value().files()
                + " files in " + to + ", checked. Head "
                + done.value().head().hash());
        return 0;
    }

    private static int refused(List<Refusal> refusals, PrintStream err) {
        refusals.forEach(refusal -> err.println(refusal.sentence()));
        return REFUSED;
    }
}
