package shimwright.bench.sheet;

import java.util.List;
import java.util.Optional;
import shimwright.mechanics.measure.Sampling;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.worksheet.Worksheet;

/**
 * How a calculation is drawn: a count or "auto", a seed, a coverage. Each door has its own names for the three.
 *
 * @param count name of the count
 * @param seed name of the seed
 * @param coverage name of the coverage
 */
public record DrawOptions(String count, String seed, String coverage) {
    /** On the command line. */
    public static final DrawOptions COMMAND = new DrawOptions("--monte-carlo", "--seed", "--coverage");
    /** In the address of a page or of the door for programs; no input of a worksheet has a dash in its name. */
    public static final DrawOptions ADDRESS =
            new DrawOptions("monte-carlo", "monte-carlo-seed", "monte-carlo-coverage");

    private static final int MOST_ADAPTIVE = 1_000_000;
    /** Draws that a request may ask for, and those of a sheet that takes milliseconds each. */
    private static final int MOST_WAITED = 200_000;

    private static final int MOST_SLOW = 2_000;

    /** All three names. */
    public List<String> names() {
        return List.of(count, seed, coverage);
    }

    /** The three as typed; empty texts are not given. */
    public record Typed(String count, String seed, String coverage) {}

    /**
     * Reads them.
     *
     * @param typed texts
     * @param refusals for what cannot be read
     * @return empty where no draws are asked for, or where something is refused
     */
    public Optional<Sampling> read(Typed typed, List<Refusal> refusals) {
        int before = refusals.size();
        boolean adaptive = typed.count().equals("auto");
        int draws = adaptive ? MOST_ADAPTIVE : (int) whole(count, typed.count(), "100000, or auto", 0, refusals);
        long from = whole(seed, typed.seed(), "7", 1, refusals);
        double share = share(typed.coverage(), refusals);
        if (refusals.size() > before) {
            return Optional.empty();
        }
        if (typed.count().isEmpty()) {
            if (!typed.seed().isEmpty() || !typed.coverage().isEmpty()) {
                refusals.add(Refusal.of(count, "not given", "Give it, such as 100000, beside seed and coverage"));
            }
            return Optional.empty();
        }
        Sampling sampling =
                new Sampling(draws, from, share, Runtime.getRuntime().availableProcessors(), adaptive);
        refusals.addAll(sampling.checked().refusals());
        return refusals.size() > before ? Optional.empty() : Optional.of(sampling);
    }

    /** The same for somebody who waits for a page: fewer draws, still fewer of a slow worksheet. */
    public Optional<Sampling> waited(Worksheet<?, ?> sheet, Typed typed, List<Refusal> refusals) {
        Optional<Sampling> read = read(typed, refusals);
        int most = sheet.slow() ? MOST_SLOW : MOST_WAITED;
        if (read.isPresent() && read.get().adaptive()) {
            return read.map(s -> new Sampling(most, s.seed(), s.coverage(), s.threads(), true));
        }
        if (read.isPresent() && read.get().draws() > most) {
            refusals.add(Refusal.of(
                    count,
                    read.get().draws() + " draws would keep you waiting",
                    "Take up to " + most + " here, or use calc on the command line"));
            return Optional.empty();
        }
        return read;
    }

    private static long whole(String name, String text, String example, long none, List<Refusal> refusals) {
        if (text.isEmpty() || text.equals("auto")) {
            return none;
        }
        try {
            long number = Long.parseLong(text);
            if (name.endsWith("monte-carlo") && number != (int) number) {
                refusals.add(Refusal.of(name, text + " draws asked for", "Type a number, such as " + example));
            }
            return number;
        } catch (NumberFormatException notOne) {
            refusals.add(Refusal.of(name, "\"" + text + "\" is not a number", "Type one, such as " + example));
            return none;
        }
    }

    private double share(String text, List<Refusal> refusals) {
        if (text.isEmpty()) {
            return 0.95;
        }
        try {
            return text.endsWith("%")
                    ? Double.parseDouble(text.substring(0, text.length() - 1)) / 100
                    : Double.parseDouble(text);
        } catch (NumberFormatException notOne) {
            refusals.add(Refusal.of(coverage, "\"" + text + "\" is not a number", "Type one, such as 0.95"));
            return 0.95;
        }
    }
}
