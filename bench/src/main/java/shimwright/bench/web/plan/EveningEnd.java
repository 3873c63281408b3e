package shimwright.bench.web.plan;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import shimwright.mechanics.outcome.Refusal;

/**
 * When tonight one has to stop: as typed, as typed before, or as the shop's evenings are.
 *
 * @param at the end, in the shop's zone
 * @param origin where it comes from, the beginning of a sentence
 */
record EveningEnd(LocalDateTime at, String origin) {
    /** Where the shop has not said how long its evenings are. */
    private static final double USUAL_HOURS = 2;

    private static final Pattern CLOCK = Pattern.compile("([01]?\\d|2[0-3])[:.]([0-5]\\d)");
    private static final Pattern SPAN = Pattern.compile("(\\d{1,3}(?:\\.\\d{1,2})?) ?(h|min)");

    /**
     * What was typed: a time of day, the next there is, or how long from now, at most a day.
     *
     * @param faults gets why it is no time
     */
    static Optional<EveningEnd> typed(String text, LocalDateTime now, List<Refusal> faults) {
        Matcher clock = CLOCK.matcher(text);
        Matcher span = SPAN.matcher(text);
        if (clock.matches()) {
            LocalDateTime end = now.toLocalDate()
                    .atTime(LocalTime.of(Integer.parseInt(clock.group(1)), Integer.parseInt(clock.group(2))));
            return Optional.of(new EveningEnd(end.isBefore(now) ? end.plusDays(1) : end, "As you said"));
        }
        if (span.matches()) {
            double minutes = Double.parseDouble(span.group(1)) * (span.group(2).equals("h") ? 60 : 1);
            if (minutes <= 24 * 60) {
                return Optional.of(new EveningEnd(now.plusSeconds(Math.round(minutes * 60)), "As you said"));
            }
        }
        faults.add(new Refusal(
                "until",
                "tonight until",
                text.isEmpty() ? "nothing typed" : "\"" + text + "\" is no time",
                "Write a time of day, 22:00, or how long, 2.5 h or 40 min"));
        return Optional.empty();
    }

    /** What was typed before, while that time has not come. */
    static Optional<EveningEnd> kept(String text, LocalDateTime now) {
        try {
            LocalDateTime end = LocalDateTime.parse(text.split(" ", -1)[0]);
            return end.isAfter(now) && end.isBefore(now.plusDays(1))
                    ? Optional.of(new EveningEnd(end, "As you said"))
                    : Optional.empty();
        } catch (DateTimeParseException none) {
            return Optional.empty();
        }
    }

    /** The rest of the shop's evening where it has begun, else a whole one from now. */
    static EveningEnd usual(Map<String, String> facts, LocalDateTime now) {
        Optional<Double> hours = hours(facts.getOrDefault("evening", ""), now.toLocalDate());
        Matcher begins = CLOCK.matcher(facts.getOrDefault("begins", "").strip());
        Duration whole = Duration.ofSeconds(Math.round(hours.orElse(USUAL_HOURS) * 3600));
        if (begins.matches()) {
            LocalDateTime begin = now.toLocalDate()
                    .atTime(LocalTime.of(Integer.parseInt(begins.group(1)), Integer.parseInt(begins.group(2))));
            if (!begin.isAfter(now) && begin.plus(whole).isAfter(now)) {
                return new EveningEnd(begin.plus(whole), "The rest of the shop's evening");
            }
        }
        return new EveningEnd(
                now.plus(whole),
                hours.isPresent()
                        ? "As long as the shop's evenings are"
                        : "The shop has not said how long its evenings are");
    }

    private static Optional<Double> hours(String fact, LocalDate day) {
        String[] parts = fact.strip().split("[\\s,;]+");
        String part = parts.length == 7 ? parts[day.getDayOfWeek().getValue() - 1] : parts[0];
        return part.matches("\\d{1,2}(\\.\\d{1,2})?") ? Optional.of(Double.parseDouble(part)) : Optional.empty();
    }

    /** The end as a time of day, 22:00. */
    String clock() {
        return clock(at.toLocalTime());
    }

    /** A time of day as it is shown, 22:00. */
    static String clock(LocalTime time) {
        return String.format(Locale.ROOT, "%02d:%02d", time.getHour(), time.getMinute());
    }
}
