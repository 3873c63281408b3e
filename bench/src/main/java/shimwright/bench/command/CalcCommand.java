package shimwright.bench.command;

import java.io.PrintStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import shimwright.bench.sheet.Cases;
import shimwright.bench.sheet.DrawOptions;
import shimwright.bench.sheet.SheetJson;
import shimwright.mechanics.measure.Sampling;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.mechanics.registry.Registry;
import shimwright.mechanics.worksheet.Answer;
import shimwright.mechanics.worksheet.Help;
import shimwright.mechanics.worksheet.Worksheet;

/**
 * {@code calc}: lists the worksheets; {@code calc NAME --help} explains one; {@code calc NAME key=value …} works it out.
 * {@code --json} prints data, {@code --units inch} means and prints inches, {@code --input FILE.json|FILE.csv} takes one
 * or many cases from a file, to which keys on the command line are added; {@code --monte-carlo N|auto}, {@code --seed
 * S} and {@code --coverage P} draw beside the simple rule;
 * {@code --manual DIR} writes the manual.
 */
public final class CalcCommand {
    private static final int DONE = 0;
    private static final int REFUSED = 2;

    private CalcCommand() {}

    /** What was asked for, read from the command line. */
    private record Asked(
            Map<String, String> given,
            boolean json,
            boolean help,
            String input,
            UnitSystem system,
            Optional<Sampling> sampling) {
        Outcome<Answer> answer(Worksheet<?, ?> sheet, Map<String, ?> cases) {
            return sheet.answer(cases, system, sampling);
        }
    }

    /**
     * Runs the command.
     *
     * @param args what follows {@code calc}
     * @param out for answers
     * @param err for refusals: a sentence each, or one JSON object a case under {@code --json}
     * @return 0 when every case was answered, 2 when anything was refused
     */
    public static int run(List<String> args, PrintStream out, PrintStream err) {
        boolean json = args.contains("--json");
        if (!args.isEmpty() && args.get(0).equals("--manual")) {
            return ManualCommand.run(args.size() > 1 ? args.get(1) : "", out, err);
        }
        if (args.isEmpty() || args.get(0).startsWith("--")) {
            list(out, json);
            return DONE;
        }
        String name = args.get(0);
        Worksheet<?, ?> sheet = Registry.find(name).orElse(null);
        if (sheet == null) {
            return refuse(List.of(unknown(name)), name, 0, json, err);
        }
        Outcome<Asked> asked = read(args.subList(1, args.size()), json);
        if (!asked.isOk()) {
            return refuse(asked.refusals(), name, 0, json, err);
        }
        Asked wish = asked.orElseThrow();
        if (wish.help()) {
            out.print(Help.text(sheet, wish.system()));
            return DONE;
        }
        return wish.input().isEmpty() ? one(sheet, wish, out, err) : many(sheet, wish, out, err);
    }

    private static void list(PrintStream out, boolean json) {
        if (json) {
            out.println(SheetJson.line(SheetJson.list()));
            return;
        }
        out.println("Worksheets. calc NAME --help explains one, calc NAME key=value ... works it out.");
        out.println();
        for (Worksheet<?, ?> sheet : Registry.all()) {
            out.printf(Locale.ROOT, "  %-18s %s%n", sheet.name(), sheet.doc());
        }
    }

    private static Refusal unknown(String name) {
        String near = Registry.all().stream()
                .map(Worksheet::name)
                .filter(known -> known.startsWith(name) || known.contains(name) || name.contains(known))
                .findFirst()
                .map(known -> "Did you mean " + known + "?")
                .orElse("calc alone lists them");
        return Refusal.at("", "there is no worksheet \"" + name + "\"", near);
    }

    private static Outcome<Asked> read(List<String> args, boolean json) {
        Map<String, String> given = new LinkedHashMap<>();
        List<Refusal> refusals = new ArrayList<>();
        boolean help = false;
        String input = "";
        UnitSystem system = UnitSystem.METRIC;
        Map<String, String> draws = new LinkedHashMap<>();
        for (int i = 0; i < args.size(); i++) {
            String arg = args.get(i);
            String next = i + 1 < args.size() ? args.get(i + 1) : "";
            switch (arg) {
                case "--json" -> {}
                case "--help" -> help = true;
                case "--input" -> {
                    input = next;
                    i++;
                    if (next.isEmpty()) {
                        refusals.add(Refusal.of("--input", "no file named", "Type --input cases.csv"));
                    }
                }
                case "--units" -> {
                    i++;
                    if (next.equals("inch")) {
                        system = UnitSystem.INCH;
                    } else if (!next.equals("metric")) {
                        refusals.add(Refusal.of("--units", "\"" + next + "\" is not known", "Type inch or metric"));
                    }
                }
                default -> {
                    if (DrawOptions.COMMAND.names().contains(arg)) {
                        draws.put(arg, next.isEmpty() ? "nothing" : next);
                        i++;
                    } else {
                        take(arg, given, refusals);
                    }
                }
            }
        }
        Optional<Sampling> sampling = DrawOptions.COMMAND.read(typed(draws), refusals);
        return refusals.isEmpty()
                ? Outcome.ok(new Asked(given, json, help, input, system, sampling))
                : Outcome.refused(refusals);
    }

    private static DrawOptions.Typed typed(Map<String, String> draws) {
        DrawOptions names = DrawOptions.COMMAND;
        return new DrawOptions.Typed(
                draws.getOrDefault(names.count(), ""),
                draws.getOrDefault(names.seed(), ""),
                draws.getOrDefault(names.coverage(), ""));
    }

    private static void take(String arg, Map<String, String> given, List<Refusal> refusals) {
        int equals = arg.indexOf('=');
        if (equals < 1 || arg.startsWith("--")) {
            refusals.add(Refusal.at("", "\"" + arg + "\" is not understood", "Type inputs as key=value"));
        } else if (given.put(arg.substring(0, equals), arg.substring(equals + 1)) != null) {
            refusals.add(Refusal.of(arg.substring(0, equals), "given twice", "Give it once"));
        }
    }

    private static int one(Worksheet<?, ?> sheet, Asked asked, PrintStream out, PrintStream err) {
        Outcome<Answer> answer = asked.answer(sheet, asked.given());
        if (!answer.isOk()) {
            return refuse(answer.refusals(), sheet.name(), 0, asked.json(), err);
        }
        if (asked.json()) {
            out.println(SheetJson.pretty(SheetJson.answer(answer.orElseThrow(), 0)));
        } else {
            out.print(answer.orElseThrow().text());
        }
        return DONE;
    }

    /** One case after another, each answered before the next is read; a refused one does not stop the others. */
    private static int many(Worksheet<?, ?> sheet, Asked asked, PrintStream out, PrintStream err) {
        int[] code = {DONE};
        Consumer<Cases.Case> each = one -> {
            Map<String, Object> given = new LinkedHashMap<>(one.given());
            given.putAll(asked.given());
            Outcome<Answer> answer = asked.answer(sheet, given);
            if (!answer.isOk()) {
                List<Refusal> placed = SheetJson.placed(answer.refusals(), one.place());
                code[0] = refuse(placed, sheet.name(), one.number(), asked.json(), err);
            } else if (asked.json()) {
                out.println(SheetJson.line(SheetJson.answer(answer.orElseThrow(), one.number())));
            } else {
                out.println("Case " + one.number() + " (" + one.place() + ")");
                out.println(answer.orElseThrow().text());
            }
        };
        List<Refusal> unread = CalcFile.read(Path.of(asked.input()), each);
        return unread.isEmpty() ? code[0] : refuse(unread, sheet.name(), 0, asked.json(), err);
    }

    private static int refuse(List<Refusal> refusals, String sheet, int number, boolean json, PrintStream err) {
        if (!json) {
            refusals.forEach(refusal -> err.println(refusal.sentence()));
            return REFUSED;
        }
        err.println(SheetJson.line(SheetJson.refusals(sheet, refusals, number)));
        return REFUSED;
    }
}
