package shimwright.rebuild.demo;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.rebuild.clearance.Decisions;
import shimwright.rebuild.clearance.SharedShims;
import shimwright.rebuild.inspect.Checks;
import shimwright.rebuild.inspect.GaugeReadings;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.plan.Planner;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Step.Phase;
import shimwright.rebuild.unit.model.UnitType.Check;
import shimwright.rebuild.unit.model.UnitType.CheckKind;

/**
 * The demo job played step by step in the order of the plan, as the person at the bench would. It is played once in a run of
 * the tests, through every rule; each test gets a bench of its own with what had been kept when its step was next.
 */
public final class Van7 {
    private static final String END = "";
    private static final Van7 PLAYED = new Van7(DemoWorkbench.open());

    private final DemoWorkbench bench;
    private final Map<String, List<String[]>> script = new LinkedHashMap<>();
    private final List<Step> order;
    private final Map<String, Integer> keptBefore = new HashMap<>();
    private int done;

    private Van7(DemoWorkbench bench) {
        this.bench = bench;
        for (String line : DemoUnit.lines("van-7.txt")) {
            String[] parts = line.split("\\s*\\|\\s*");
            script.computeIfAbsent(parts[0], step -> new ArrayList<>()).add(parts);
        }
        // each step that the plan names is done in turn, so the plan laid first stays the plan
        order = Planner.lay(bench.unit(), bench.job().sides(), bench.job().stepsDone())
                .orElseThrow()
                .ahead();
        keptBefore.put(order.get(0).id(), bench.entries().size());
    }

    /** The job played up to a step, which is not done; an empty name plays all of it, without the hand-back. */
    public static DemoWorkbench before(String step) {
        synchronized (PLAYED) {
            return PLAYED.bench.asAfter(PLAYED.playTo(step));
        }
    }

    /** The job played to its hand-back. */
    public static DemoWorkbench handedBack() {
        DemoWorkbench bench = before("");
        bench.keep(new Entry.HandedBack(
                "12 months or 40 000 km; hub 5 six months",
                "change fluid at 2 000 km; report any singing at once",
                "quiet"));
        return bench;
    }

    /** How many entries were kept when the step was next. */
    private int playTo(String until) {
        while (!keptBefore.containsKey(until)) {
            play(order.get(done));
            done++;
            keptBefore.put(
                    done < order.size() ? order.get(done).id() : END,
                    bench.entries().size());
        }
        return keptBefore.get(until);
    }

    private void play(Step step) {
        script.getOrDefault(step.id(), List.of()).forEach(line -> line(step, line));
        attest(step);
        bench.keep(new Entry.StepDone(step.id(), ""));
    }

    /** Says yes to whatever can only be said yes to; a measured check that the script leaves out stops the play. */
    private void attest(Step step) {
        if (step.hold().isBlank()) {
            return;
        }
        for (Check check : bench.unit().holdPoint(step.hold()).checks()) {
            boolean read = bench.job().check(step.id(), check.id()).isPresent();
            if (!read && check.kind() == CheckKind.NONE && check.asked()) {
                bench.in(step.id(), check.id());
            }
        }
    }

    private void line(Step step, String[] part) {
        switch (part[1]) {
            case "check" -> check(step, part[2], part[3]);
            case "trial" -> bench.packIn(part[2], Phase.TRIAL, part[3]);
            case "fitted" -> bench.packIn(part[2], Phase.FINAL, part[3]);
            case "round" -> bench.keep(bench.read(part[2], phase(part[3]), millimetres(part[4])));
            case "strike" -> strike(part[2], phase(part[3]), part[4]);
            case "note" -> bench.keep(new Entry.NoteMade(part[2], part[3]));
            case "together" -> together(part[2]);
            case "choose" ->
                bench.keep(Decisions.choose(
                                bench.session(part[2]),
                                bench.pack(part[3]).values().iterator().next(),
                                "")
                        .orElseThrow());
            case "accept" ->
                bench.keep(Decisions.accept(bench.session(part[2]), "").orElseThrow());
            default -> throw new IllegalStateException("no word " + part[1]);
        }
    }

    private static Phase phase(String text) {
        return Phase.valueOf(text.toUpperCase(Locale.ROOT));
    }

    private static double[] millimetres(String text) {
        return java.util.Arrays.stream(text.split("\\s+"))
                .mapToDouble(Double::parseDouble)
                .toArray();
    }

    private void check(Step step, String id, String text) {
        Check check = bench.unit().holdPoint(step.hold()).checks().stream()
                .filter(c -> c.id().equals(id))
                .findFirst()
                .orElseThrow();
        Kind kind = check.kind().quantity();
        List<Double> values = new ArrayList<>();
        for (String value : text.split("\\s+")) {
            values.add(Quantities.parse(value, kind, check.bareUnit(), id)
                    .orElseThrow()
                    .si());
        }
        Checks.Judged judged = Checks.judge(
                        check, GaugeReadings.of(values).after(bench.job(), check), UnitSystem.METRIC)
                .orElseThrow();
        bench.keep(new Entry.CheckRead(
                step.id(), step.hold(), id, values, kind, false, judged.verdict(), judged.say(), judged.working()));
    }

    private void strike(String clearance, Phase phase, String reason) {
        List<Job.Said<Entry.RoundRead>> rounds = bench.job().roundsOf(clearance, phase);
        bench.keep(new Entry.RoundStruck(rounds.get(rounds.size() - 1).id(), reason));
    }

    private void together(String pieces) {
        List<String> group = SharedShims.groups(bench.unit()).get(0);
        SharedShims.choose(bench.unit(), bench.job(), bench.shop(), group, bench.pack(pieces), "")
                .orElseThrow()
                .forEach(bench::keep);
    }
}
