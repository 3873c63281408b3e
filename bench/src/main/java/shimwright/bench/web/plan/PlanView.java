package shimwright.bench.web.plan;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import shimwright.bench.desk.JobOnBench;
import shimwright.bench.picture.plan.PlanDiagram;
import shimwright.bench.picture.plan.PlanDiagram.Box;
import shimwright.bench.picture.plan.PlanDiagram.Bracket;
import shimwright.bench.picture.plan.PlanDiagram.State;
import shimwright.bench.web.kit.Drawings;
import shimwright.bench.web.kit.Show;
import shimwright.rebuild.plan.Plan;
import shimwright.rebuild.plan.StepReason;
import shimwright.rebuild.supply.Need;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Unit;
import shimwright.rebuild.unit.model.UnitType.Choice;

/**
 * The plan as the page shows it.
 *
 * @param plan the plan
 * @param drawing the plan as a picture, for a tablet and for a phone
 * @param figures what the order costs, as sentences
 * @param because why a step stands where it stands, reason by reason, by step
 * @param heldUp what must be new and is neither ordered nor here
 */
public record PlanView(
        Plan plan, Drawings drawing, List<String> figures, Map<String, List<String>> because, List<HeldUpBy> heldUp) {
    /** So many steps are named one after another before the rest is counted. */
    private static final int MOST_NAMED = 3;

    private static final double WIDE = 1120;
    private static final double NARROW = 362;

    /**
     * A part that holds steps up.
     *
     * @param steps by their ids, as one line
     * @param part its number and name
     */
    public record HeldUpBy(String steps, String part) {}

    private static List<HeldUpBy> heldUp(JobOnBench bench) {
        Map<Need, List<String>> steps = new LinkedHashMap<>();
        bench.bench()
                .heldUp()
                .forEach((step, needs) -> needs.forEach(need ->
                        steps.computeIfAbsent(need, n -> new ArrayList<>()).add(step)));
        return steps.entrySet().stream()
                .map(e ->
                        new HeldUpBy(String.join(", ", e.getValue()), e.getKey().numbered()))
                .toList();
    }

    /** The choices of the unit file that a job may take either way; what it leaves out or adds itself is none of them. */
    public static List<Choice> choices(Unit unit) {
        return unit.type().choices().stream()
                .filter(choice -> !choice.id().equals("this-job"))
                .toList();
    }

    static PlanView of(JobOnBench bench, Plan plan, Show show) {
        List<Box> boxes = new ArrayList<>();
        bench.job()
                .stepsDone()
                .forEach(id -> bench.unit().findStep(id).ifPresent(step -> boxes.add(box(bench, step, State.DONE))));
        plan.ahead()
                .forEach(step -> boxes.add(
                        box(bench, step, plan.next().filter(step::equals).isPresent() ? State.NOW : State.AHEAD)));
        List<Bracket> brackets = bench.unit().type().windows().stream()
                .map(w -> new Bracket(w.opens(), w.closes(), w.name() + " " + show.span(w.longest())))
                .toList();
        Map<String, String> stations = new LinkedHashMap<>();
        bench.unit().type().stations().forEach((id, station) -> stations.put(id, station.name()));
        Map<String, List<String>> because = new LinkedHashMap<>();
        plan.because()
                .forEach(why -> because.put(
                        why.step().id(), words(bench.unit(), bench.job().stepsDone(), why, show)));
        return new PlanView(
                plan,
                new Drawings(
                        PlanDiagram.svg("plan", boxes, brackets, stations, WIDE),
                        PlanDiagram.svg("plan-narrow", boxes, brackets, stations, NARROW)),
                figures(plan, show),
                because,
                heldUp(bench));
    }

    private static Box box(JobOnBench bench, Step step, State state) {
        return new Box(
                step.id(),
                step.at(),
                step.duration() / 60,
                state,
                step.oneWay(),
                !step.hold().isBlank(),
                "/job/" + bench.job().id() + "/build?step=" + step.id());
    }

    private static List<String> figures(Plan plan, Show show) {
        List<String> said = new ArrayList<>();
        said.add(show.number(plan.minutes() / 60, 1) + " hours of work ahead; turning the case "
                + plan.cost().turns() + " times " + show.span(plan.cost().turning()) + ", tools and walking "
                + show.span(plan.cost().tools() + plan.cost().walking()) + ", waiting "
                + show.span(plan.cost().waiting()) + ".");
        if (plan.cost().risk() > 0) {
            said.add("A late find is to be reckoned with at "
                    + show.span(plan.cost().risk()) + " on average.");
        }
        said.add(
                plan.proven()
                        ? (plan.finishing() > 0
                                ? "No possible order costs less than the cheapest one known: that is proven."
                                : "No possible order costs less: this is proven.")
                        : "Another order could be better by "
                                + (plan.gap() < 1 ? "less than a minute" : show.number(plan.gap(), 0) + " min at most")
                                + "; not proven best.");
        if (plan.finishing() > 0) {
            said.add("It takes " + show.span(plan.finishing())
                    + " more than the cheapest order known, so that what is begun beside the case is finished first.");
        }
        if (plan.left() > 0) {
            said.add(
                    "A sub-assembly is left begun " + (plan.left() == 1 ? "once" : plan.left() + " times")
                            + " though it could be gone on with: nothing was found that finishes it first for what you say that it may cost.");
        }
        long taste = plan.because().stream()
                .filter(why -> !why.asWellAfter().isEmpty())
                .count();
        if (taste > 0) {
            said.add("Where " + taste
                    + " of the steps come is only a matter of taste within the limits that \"Why here\" names.");
        }
        List<Step> hands =
                plan.ahead().stream().filter(step -> step.persons() > 1).toList();
        if (!hands.isEmpty()) {
            said.add("A second pair of hands is needed for " + named(hands) + ".");
        }
        plan.late()
                .forEach(window ->
                        said.add("The window \"" + window.name() + "\" can no longer be kept. " + window.why()));
        return said;
    }

    /** The first steps of some, each with what is done at it, and how many more there are. */
    static String named(Collection<Step> steps) {
        String first = steps.stream().limit(MOST_NAMED).map(Step::named).collect(Collectors.joining(", "));
        return steps.size() <= MOST_NAMED ? first : first + " and " + (steps.size() - MOST_NAMED) + " more";
    }

    private static String withoutStop(String sentence) {
        return sentence.endsWith(".") ? sentence.substring(0, sentence.length() - 1) : sentence;
    }

    /** Why a step stands where it stands, reason by reason. */
    public static List<String> words(Unit unit, Collection<String> done, StepReason why, Show show) {
        List<String> said = new ArrayList<>();
        why.waitsFor().forEach((step, because) -> {
            if (!done.contains(step.id())) {
                said.add("after " + step.named() + ": "
                        + withoutStop(unit.reason(why.step().id(), step.id())));
            }
        });
        if (!why.heldUp().isEmpty()) {
            said.add("waiting for it: " + named(why.heldUp()));
        }
        why.opens().forEach(window -> said.add("opens " + window.name() + ", " + show.span(window.longest())));
        why.closes().forEach(window -> said.add("closes " + window.name()));
        if (why.ahead() > 0) {
            said.add("read early, which saves " + show.span(why.ahead()) + " of late finds on average");
        }
        if (why.putOff().isPresent() && Math.abs(why.putOff().getAsDouble()) >= 30) {
            double cost = why.putOff().getAsDouble();
            said.add("put off until before "
                    + (why.lastBefore().isEmpty()
                            ? "the end"
                            : unit.step(why.lastBefore()).named()) + " it " + (cost > 0 ? "costs " : "saves ")
                    + show.span(Math.abs(cost)));
        }
        if (!why.asWellAfter().isEmpty()) {
            said.add("a matter of taste: it could as well come later, up to right after "
                    + unit.step(why.asWellAfter()).named() + ", and cost the same");
        }
        return said;
    }
}
