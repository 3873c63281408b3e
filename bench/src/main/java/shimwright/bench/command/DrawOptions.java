package shimwright.bench.command;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import shimwright.mechanics.measure.Sampling;
import shimwright.mechanics.outcome.Refusal;

/** {@code --monte-carlo N|auto}, {@code --seed S}, {@code --coverage P}: how a calculation is drawn. */
final class DrawOptions {
    private static final Set<String> NAMES = Set.of("--monte-carlo", "--seed", "--coverage");
    private static final int MOST_ADAPTIVE = 1_000_000;

    private int draws;
    private boolean adaptive;
    private long seed = 1;
    private double coverage = 0.95;
    private boolean detail;

    boolean knows(String option) {
        return NAMES.contains(option);
    }

    void take(String option, String text, List<Refusal> refusals) {
        try {
            switch (option) {
                case "--seed" -> seed = Long.parseLong(text);
                case "--coverage" ->
                    coverage = text.endsWith("%")
                            ? Double.parseDouble(text.substring(0, text.length() - 1)) / 100
                            : Double.parseDouble(text);
                default -> {
                    adaptive = text.equals("auto");
                    draws = adaptive ? MOST_ADAPTIVE : Integer.parseInt(text);
                }
            }
            detail = detail || !option.equals("--monte-carlo");
        } catch (NumberFormatException notOne) {
            refusals.add(
                    new Refusal(option, "\"" + text + "\" is not a number", "Type one, such as " + example(option)));
        }
    }

    private static String example(String option) {
        return switch (option) {
            case "--seed" -> "--seed 7";
            case "--coverage" -> "--coverage 0.95";
            default -> "--monte-carlo 100000, or auto";
        };
    }

    /** What was asked for, if it was. */
    Optional<Sampling> sampling(List<Refusal> refusals) {
        if (draws == 0 && detail && refusals.isEmpty()) {
            refusals.add(
                    new Refusal("--monte-carlo", "not given", "Add --monte-carlo 100000 to --seed and --coverage"));
        }
        if (draws == 0) {
            return Optional.empty();
        }
        int threads = Runtime.getRuntime().availableProcessors();
        Sampling sampling = new Sampling(draws, seed, coverage, threads, adaptive);
        refusals.addAll(sampling.checked().refusals());
        return Optional.of(sampling);
    }
}
