package shimwright.bench.web.plan;

import io.javalin.http.Context;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import shimwright.bench.desk.JobOnBench;
import shimwright.bench.web.kit.Door;
import shimwright.bench.web.kit.Show;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.plan.BuildState;
import shimwright.rebuild.plan.Plan;
import shimwright.rebuild.plan.evening.Evening;
import shimwright.rebuild.plan.evening.EveningPlan;
import shimwright.rebuild.plan.evening.Tonight;
import shimwright.rebuild.plan.evening.Tonight.NotTonight;
import shimwright.rebuild.plan.evening.Tonight.Timed;
import shimwright.rebuild.plan.evening.Tonight.Why;
import shimwright.rebuild.plan.evening.WindowChance;
import shimwright.rebuild.unit.model.Step;

/**
 * What of the plan fits into tonight: until when, step by step with the time of day, where to stop well and why, and what is not for
 * tonight and why.
 *
 * @param until time of day at which one has to stop, as asked for or as the shop's evenings are
 * @param persons who stand at the bench, 1 or 2
 * @param origin where the time comes from, and how long it is
 * @param fits what is done, in order
 * @param stop where to stop well, as a sentence; empty where nothing fits
 * @param because why it is well to stop there
 * @param groups what is not for tonight, by reason
 * @param behind how many more steps stand behind those
 * @param risky windows that may be missed, as sentences
 * @param faults why what was typed is no time
 */
public record TonightView(
        String until,
        int persons,
        String origin,
        List<Line> fits,
        String stop,
        List<String> because,
        List<Group> groups,
        long behind,
        List<String> risky,
        List<Refusal> faults) {
    /** Where the shop has not said how long its evenings are. */
    private static final double USUAL_HOURS = 2;

    private static final int MOST_SHOWN = 3;
    private static final double MINUTE = 60;
    /** Chance from which a window is spoken of. */
    private static final double WORTH_SAYING = 0.02;
    /** Standard deviation of a time that lies evenly up to a share above and below what is planned, as a part of that share. */
    private static final double OF_SHARE = 1 / Math.sqrt(6);

    private static final Pattern CLOCK = Pattern.compile("([01]?\\d|2[0-3])[:.]([0-5]\\d)");
    private static final Pattern SPAN = Pattern.compile("(\\d{1,3}(?:\\.\\d{1,2})?) ?(h|min)");
    private static final Map<Why, String> TITLES = titles();

    /**
     * A step of tonight.
     *
     * @param time from and to, times of day
     * @param note getting ready and waiting before it; empty for none
     * @param why why it stands here in the plan; empty where nothing is to be said
     */
    public record Line(Step step, String time, String note, String why) {}

    /**
     * Steps that are not for tonight for one reason.
     *
     * @param more how many more there are
     */
    public record Group(String title, List<NotTonight> steps, long more) {}

    /** The time there is: until when, and where that comes from. */
    private record Time(LocalDateTime end, String origin) {}

    private static Map<Why, String> titles() {
        Map<Why, String> titles = new EnumMap<>(Why.class);
        titles.put(Why.WINDOW, "Do not begin any more: it could not be closed tonight");
        titles.put(Why.CURES, "Has to cure, dry or cool first");
        titles.put(Why.AWAITED, "Waits for a delivery");
        titles.put(Why.HANDS, "Needs a second pair of hands");
        titles.put(Why.TOO_LONG, "Too long for what is left");
        titles.put(Why.SPARED, "Would fit, but takes less getting ready in its turn");
        return titles;
    }

    static TonightView of(Context ctx, Door door, JobOnBench bench, Plan plan, Map<String, String> because, Show show) {
        LocalDateTime now = bench.bench().now().atZone(show.zone()).toLocalDateTime();
        String kept = door.remembered(ctx, "tonight");
        String typed = ctx.queryParam("until");
        String helper = ctx.queryParam("persons");
        List<Refusal> faults = new ArrayList<>();
        Time time = typed != null
                ? typed(typed.strip(), now, faults).orElseGet(() -> usual(bench, now))
                : kept(kept, now).orElseGet(() -> usual(bench, now));
        int persons = (helper == null ? kept : helper).endsWith("2") ? 2 : 1;
        if (typed != null && faults.isEmpty()) {
            door.remember(ctx, "tonight", time.end() + " " + persons);
        }
        double seconds = Math.max(0, Duration.between(now, time.end()).toSeconds());
        BuildState present = bench.present();
        Tonight tonight =
                EveningPlan.tonight(bench.unit(), bench.job().sides(), present, plan, new Evening(seconds, persons));
        double share = share(door.remembered(ctx, "evening-spread"));
        return new TonightView(
                faults.isEmpty() || typed == null ? clock(time.end()) : typed,
                persons,
                time.origin() + ": " + show.span(seconds) + " from now",
                tonight.steps().stream()
                        .map(timed -> line(timed, bench.bench().now(), because, show))
                        .toList(),
                stop(tonight, bench.bench().now(), show),
                tonight.stopBecause(),
                groups(tonight),
                tonight.notTonight().stream().filter(n -> n.why() == Why.BEHIND).count(),
                risky(bench, present, plan, tonight, share, show),
                List.copyOf(faults));
    }

    private static String clock(LocalDateTime time) {
        return String.format(Locale.ROOT, "%02d:%02d", time.getHour(), time.getMinute());
    }

    private static Optional<Time> typed(String text, LocalDateTime now, List<Refusal> faults) {
        Matcher clock = CLOCK.matcher(text);
        Matcher span = SPAN.matcher(text);
        if (clock.matches()) {
            LocalDateTime end = now.toLocalDate()
                    .atTime(LocalTime.of(Integer.parseInt(clock.group(1)), Integer.parseInt(clock.group(2))));
            return Optional.of(new Time(end.isBefore(now) ? end.plusDays(1) : end, "As you said"));
        }
        if (span.matches()) {
            double minutes = Double.parseDouble(span.group(1)) * (span.group(2).equals("h") ? 60 : 1);
            if (minutes <= 24 * 60) {
                return Optional.of(new Time(now.plusSeconds(Math.round(minutes * 60)), "As you said"));
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
    private static Optional<Time> kept(String text, LocalDateTime now) {
        try {
            LocalDateTime end = LocalDateTime.parse(text.split(" ", -1)[0]);
            return end.isAfter(now) && end.isBefore(now.plusDays(1))
                    ? Optional.of(new Time(end, "As you said"))
                    : Optional.empty();
        } catch (DateTimeParseException none) {
            return Optional.empty();
        }
    }

    /** The rest of the shop's evening where it has begun, else a whole one from now. */
    private static Time usual(JobOnBench bench, LocalDateTime now) {
        Map<String, String> facts = bench.shop().facts();
        Optional<Double> hours = hours(facts.getOrDefault("evening", ""), now.toLocalDate());
        Matcher begins = CLOCK.matcher(facts.getOrDefault("begins", "").strip());
        Duration whole = Duration.ofSeconds(Math.round(hours.orElse(USUAL_HOURS) * 3600));
        if (begins.matches()) {
            LocalDateTime begin = now.toLocalDate()
                    .atTime(LocalTime.of(Integer.parseInt(begins.group(1)), Integer.parseInt(begins.group(2))));
            if (!begin.isAfter(now) && begin.plus(whole).isAfter(now)) {
                return new Time(begin.plus(whole), "The rest of the shop's evening");
            }
        }
        return new Time(
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

    private static double share(String percent) {
        return (percent.matches("\\d{1,2}") ? Double.parseDouble(percent) : 30) / 100 * OF_SHARE;
    }

    private static Line line(Timed timed, Instant now, Map<String, String> because, Show show) {
        Step step = timed.step();
        double ready = timed.ends() - timed.begins() - timed.waits() - step.duration();
        List<String> notes = new ArrayList<>();
        if (ready >= MINUTE / 2) {
            notes.add(show.span(ready) + " of turning, walking and laying out tools in it");
        }
        if (timed.waits() >= MINUTE / 2) {
            notes.add(show.span(timed.waits()) + " of waiting in it");
        }
        return new Line(
                step,
                at(now, timed.begins(), show) + " to " + at(now, timed.ends(), show),
                String.join(", ", notes),
                because.getOrDefault(step.id(), ""));
    }

    private static String at(Instant now, double seconds, Show show) {
        ZonedDateTime time = now.plusMillis(Math.round(seconds * 1000)).atZone(show.zone());
        return clock(time.toLocalDateTime());
    }

    private static String stop(Tonight tonight, Instant now, Show show) {
        if (tonight.stop().isEmpty()) {
            return "";
        }
        Timed last = tonight.steps().get(tonight.steps().size() - 1);
        return "Stop after " + last.step().id() + ", at about " + at(now, last.ends(), show) + "; "
                + (tonight.left() < 0
                        ? show.span(-tonight.left())
                                + " over your time, because a window is open that has to be closed."
                        : show.span(tonight.left()) + " are left over.");
    }

    private static List<Group> groups(Tonight tonight) {
        List<Group> groups = new ArrayList<>();
        TITLES.forEach((why, title) -> {
            List<NotTonight> all = tonight.notTonight().stream()
                    .filter(not -> not.why() == why)
                    .toList();
            boolean few = why == Why.TOO_LONG || why == Why.SPARED;
            List<NotTonight> shown = few ? all.stream().limit(MOST_SHOWN).toList() : all;
            if (!all.isEmpty()) {
                groups.add(new Group(title, shown, all.size() - shown.size()));
            }
        });
        return List.copyOf(groups);
    }

    private static List<String> risky(
            JobOnBench bench, BuildState present, Plan plan, Tonight tonight, double share, Show show) {
        List<String> closed =
                tonight.steps().stream().map(timed -> timed.step().id()).toList();
        return WindowChance.of(bench.unit(), bench.job().sides(), present, plan, share).stream()
                .filter(chance -> chance.missed() >= WORTH_SAYING)
                .filter(chance -> bench.unit().type().windows().stream()
                        .anyMatch(w -> w.id().equals(chance.window()) && closed.contains(w.closes())))
                .map(chance -> chance.words() + ": planned " + show.span(chance.planned()) + " of "
                        + show.span(chance.longest()) + ", missed about once in "
                        + Math.max(1, Math.round(1 / chance.missed())) + " times"
                        + (chance.spare() >= MINUTE / 2
                                ? "; lay everything out first, " + show.span(chance.spare()) + " of spare are missing."
                                : "."))
                .toList();
    }
}
