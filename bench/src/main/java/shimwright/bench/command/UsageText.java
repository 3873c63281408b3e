package shimwright.bench.command;

import java.io.PrintStream;

/** What the command line says of itself. */
public final class UsageText {
    private UsageText() {}

    /** Prints what can be asked. */
    public static int help(PrintStream out) {
        out.println("""
                Shimwright, a bench companion for people who rebuild manual gearboxes.

                  shimwright demo                    a shop to try things in, made anew each time
                  shimwright serve --data DIR        your own shop; DIR is made when it is not there
                      --port N                       port to listen on (8613)
                      --host ADDRESS                 address to listen on (127.0.0.1; 0.0.0.0 lets paired devices in)
                      --plain                        other devices come in without encryption: whoever listens reads all
                      --accept-log                   go on with a log that is shorter than its head file says
                  shimwright backup --data DIR --to DIR    a checked copy, also while the shop is open
                  shimwright restore --from DIR --to DIR   lay a backup into an empty folder
                      --store ADDRESS                instead of --data or --to: a database that several benches share,
                                                     such as postgresql://user@host:5432/shop; with serve beside --data
                  shimwright verify --data DIR       whether all is as it was kept; exit code 1 where it is not
                      --job J --count N --hash H     whether a printed head is still in the log
                      --store ADDRESS                instead of --data: a database that several benches share
                  shimwright verify --backup DIR     the same of a backup; with --data or --store also whether it is of that shop
                  shimwright verify --record FILE    the same of a record that was handed out
                      --key NAME                     the name of the key that should have signed it (your own)
                      --owner DIR                    where the key and the remembered heads lie (~/.config/shimwright)
                  shimwright devices --data DIR      the devices that were let in
                      --pair owner|bench|onlooker    a code for one more; --person NAME signs on it
                      --revoke ID                    lets one out
                  shimwright unit check FILE         every problem of a unit file, with line and column
                  shimwright unit new                the beginning of a unit file
                  shimwright unit schema             the JSON Schema of unit files
                  shimwright calc                    the worksheets
                  shimwright calc NAME --help        a worksheet's inputs
                  shimwright calc NAME key=value …   work it out
                      --monte-carlo N --seed S       draw N times beside the simple rule for ± (N or auto)
                """);
        return 0;
    }

    /** Says that a command is not known. */
    public static int unknown(String command, PrintStream err) {
        err.println("There is no command \"" + command + "\". Type ./shimwright help for what there is.");
        return 2;
    }
}
