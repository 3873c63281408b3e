package shimwright.bench.web.plan;

import io.javalin.http.Context;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
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
import shimwright.rebuild.supply.Need;
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
    private static final int MOST_SHOWN = 3;
    private static final double MINUTE = 60;
    /** Chance from which a window is spoken of. */
    private static final double WORTH_SAYING = 0.02;
    /** Standard deviation of a time that lies evenly up to a share above and below what is planned, as a part of that share. */
    private static final double OF_SHARE = 1 / Math.sqrt(6);

    private static final Map<Why, String> TITLES = titles();

    /**
     * A step of tonight.
     *
     * @param time from and to, times of day
     * @param note getting ready and waiting before it; empty for none
     * @param why why it stands here in the plan, reason by reason; empty where nothing is to be said
     */
    public record Line(Step step, String time, String note, List<String> why) {}

    /**
     * Steps that are not for tonight for one reason.
     *
     * @param more how many more there are
     */
    public record Group(String title, List<NotTonight> steps, long more) {}

    private static Map<Why, String> titles() {
        Map<Why, String> titles = new EnumMap<>(Why.class);
        titles.put(Why.WINDOW, "Do not begin any more: it could not be closed tonight");
        titles.put(Why.CURES, "Has to cure, dry or cool first");
        titles.put(Why.AWAITED, "Waits for a delivery, or for an order");
        titles.put(Why.HANDS, "Needs a second pair of hands");
        titles.put(Why.TOO_LONG, "Too long for what is left");
        titles.put(Why.SPARED, "Would fit, but takes less getting ready in its turn");
        return titles;
    }

    static TonightView of(
            Context ctx, Door door, JobOnBench bench, Plan plan, Map<String, List<String>> because, Show show) {
        LocalDateTime now = bench.bench().now().atZone(show.zone()).toLocalDateTime();
        String kept = door.remembered(ctx, "tonight");
        String typed = ctx.queryParam("until");
        String helper = ctx.queryParam("persons");
        List<Refusal> faults = new ArrayList<>();
        Map<String, String> facts = bench.shop().facts();
        EveningEnd evening = (typed != null ? EveningEnd.typed(typed.strip(), now, faults) : EveningEnd.kept(kept, now))
                .orElseGet(() -> EveningEnd.usual(facts, now));
        int persons = (helper == null ? kept : helper).endsWith("2") ? 2 : 1;
        if (typed != null && faults.isEmpty()) {
            door.remember(ctx, "tonight", evening.at() + " " + persons);
        }
        double seconds = Math.max(0, Duration.between(now, evening.at()).toSeconds());
        BuildState present = bench.present();
        Tonight tonight =
                EveningPlan.tonight(bench.unit(), bench.job().sides(), present, plan, new Evening(seconds, persons));
        double share = share(door.remembered(ctx, "evening-spread"));
        return new TonightView(
                faults.isEmpty() || typed == null ? evening.clock() : typed,
                persons,
                evening.origin() + ": " + show.span(seconds) + " from now",
                tonight.steps().stream()
                        .map(timed -> line(timed, bench.bench().now(), because, show))
                        .toList(),
                stop(tonight, bench.bench().now(), show),
                tonight.stopBecause(),
                groups(bench, tonight),
                tonight.notTonight().stream().filter(n -> n.why() == Why.BEHIND).count(),
                risky(bench, present, plan, tonight, share, show),
                List.copyOf(faults));
    }

    private static double share(String percent) {
        return (percent.matches("\\d{1,2}") ? Double.parseDouble(percent) : 30) / 100 * OF_SHARE;
    }

    private static Line line(Timed timed, Instant now, Map<String, List<String>> because, Show show) {
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
                because.getOrDefault(step.id(), List.of()));
    }

    private static String at(Instant now, double seconds, Show show) {
        ZonedDateTime time = now.plusMillis(Math.round(seconds * 1000)).atZone(show.zone());
        return EveningEnd.clock(time.toLocalTime());
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

    /** The words of a step that waits; what nobody has ordered comes on no day. */
    private static NotTonight said(JobOnBench bench, NotTonight not) {
        String first = not.words().split(",", 2)[0];
        List<Need> own = bench.bench().heldUp().getOrDefault(not.step().id(), List.of());
        List<Need> needs = own.isEmpty() ? bench.bench().heldUp().getOrDefault(first, List.of()) : own;
        return needs.isEmpty() || not.why() != Why.AWAITED
                ? not
                : new NotTonight(
                        not.step(),
                        not.why(),
                        (own.isEmpty() ? first + ", which must follow at once: " : "")
                                + needs.stream().map(Need::numbered).collect(Collectors.joining(", "))
                                + " must be new and is neither ordered nor here.");
    }

    private static List<Group> groups(JobOnBench bench, Tonight tonight) {
        List<Group> groups = new ArrayList<>();
        TITLES.forEach((why, title) -> {
            List<NotTonight> all = tonight.notTonight().stream()
                    .filter(not -> not.why() == why)
                    .map(not -> said(bench, not))
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
