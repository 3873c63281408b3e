package shimwright.rebuild.rules;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import shimwright.rebuild.plan.Weights;

/** What the shop says that a plan weighs beside minutes at the bench. */
public final class ShopWeights {
    /** Name of the shop's fact: minutes at the bench that a day sooner is worth. */
    public static final String DAY_SOONER = "day-sooner";

    /** Name of the shop's fact: minutes that it may cost to finish a sub-assembly that is begun. */
    public static final String FINISH_BEGUN = "finish-begun";

    private static final Pattern NUMBER = Pattern.compile("\\d{1,4}([.]\\d{1,2})?");
    private static final double DAY = 1440;

    private ShopWeights() {}

    /** As the shop has said; the usual weights where it has not. */
    public static Weights of(Map<String, String> facts) {
        Weights usual = Weights.usual();
        double sooner =
                minutes(facts.getOrDefault(DAY_SOONER, "")).map(day -> 60 * day).orElse(usual.daySooner());
        OptionalDouble finishing = minutes(facts.getOrDefault(FINISH_BEGUN, ""))
                .map(each -> OptionalDouble.of(60 * each))
                .orElse(usual.finishing());
        return new Weights(sooner, evening(facts).orElse(usual.evening()), finishing);
    }

    /** The mean of the hours at the bench on the days that have any, s. */
    private static OptionalDouble evening(Map<String, String> facts) {
        return Stream.of(facts.getOrDefault("evening", "").strip().split("[\\s,;]+"))
                .filter(hours -> NUMBER.matcher(hours).matches())
                .mapToDouble(Double::parseDouble)
                .filter(hours -> hours > 0 && hours <= 24)
                .map(hours -> 3600 * hours)
                .average();
    }

    /** True where the shop has said what a day sooner is worth. */
    public static boolean said(Map<String, String> facts) {
        return minutes(facts.getOrDefault(DAY_SOONER, "")).isPresent();
    }

    /** Minutes from 0 to 1440, as typed; empty for anything else. */
    public static Optional<Double> minutes(String typed) {
        String text = typed.strip();
        return NUMBER.matcher(text).matches() && Double.parseDouble(text) <= DAY
                ? Optional.of(Double.parseDouble(text))
                : Optional.empty();
    }
}
