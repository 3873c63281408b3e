package shimwright.rebuild.act;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.money.Rate;
import shimwright.rebuild.rules.ShopWeights;

/** What a shop says of itself must be of use where it is asked: a time of day is one, hours are numbers. */
final class ShopFacts {
    private static final Pattern TIME = Pattern.compile("([01]?\\d|2[0-3])([:.][0-5]\\d)?");
    private static final Pattern HOURS = Pattern.compile("\\d{1,2}([.]\\d{1,2})?");
    private static final Set<String> WORDS = Set.of("", "en", "en-GB", "en-US", "de");
    private static final int WEEK = 7;
    private static final double DAY = 24;

    private ShopFacts() {}

    /** Everything that cannot be used; a fact left empty is not said, and may be. */
    static List<Refusal> faults(Map<String, String> facts) {
        List<Refusal> faults = new ArrayList<>();
        String begins = facts.getOrDefault("begins", "").strip();
        if (!begins.isEmpty() && !TIME.matcher(begins).matches()) {
            faults.add(new Refusal(
                    "fact.begins",
                    "when an evening begins",
                    "\"" + begins + "\" is not a time of day",
                    "Write it as 18:30"));
        }
        String evening = facts.getOrDefault("evening", "").strip();
        if (!evening.isEmpty()) {
            hours(evening, faults);
        }
        String rate = facts.getOrDefault("rate", "").strip();
        if (!rate.isEmpty() && Rate.of(rate).isEmpty()) {
            faults.add(new Refusal(
                    "fact.rate", "rate an hour", "\"" + rate + "\" has not one number in it", "Write it as 60 EUR"));
        }
        String words = facts.getOrDefault("words", "").strip();
        if (!WORDS.contains(words)) {
            faults.add(new Refusal(
                    "fact.words",
                    "words of the trade",
                    "\"" + words + "\" is no language that is here",
                    "Choose one of en, en-GB, en-US and de"));
        }
        minutes(facts, ShopWeights.DAY_SOONER, "what a day sooner is worth", faults);
        minutes(facts, ShopWeights.FINISH_BEGUN, "what finishing what is begun may cost", faults);
        return List.copyOf(faults);
    }

    private static void minutes(Map<String, String> facts, String name, String place, List<Refusal> faults) {
        String typed = facts.getOrDefault(name, "").strip();
        if (!typed.isEmpty() && ShopWeights.minutes(typed).isEmpty()) {
            faults.add(new Refusal(
                    "fact." + name,
                    place,
                    "\"" + typed + "\" is no number of minutes from 0 to 1440",
                    "Write it as 10"));
        }
    }

    private static void hours(String evening, List<Refusal> faults) {
        List<String> parts = List.of(evening.split("[\\s,;]+"));
        if (parts.size() != 1 && parts.size() != WEEK) {
            faults.add(new Refusal(
                    "fact.evening",
                    "hours",
                    parts.size() + " numbers",
                    "Give one for every day, or seven from Monday to Sunday"));
        }
        parts.stream()
                .filter(part -> !HOURS.matcher(part).matches() || Double.parseDouble(part) > DAY)
                .forEach(part -> faults.add(new Refusal(
                        "fact.evening",
                        "hours",
                        "\"" + part + "\" is no number of hours",
                        "Write it as 2.5, with a point")));
    }
}
