package shimwright.rebuild.demo;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import shimwright.rebuild.act.Act;
import shimwright.rebuild.act.ClearanceActs;
import shimwright.rebuild.act.HandBackActs;
import shimwright.rebuild.act.HoldActs;
import shimwright.rebuild.act.IntakeActs;
import shimwright.rebuild.act.OrderActs;
import shimwright.rebuild.act.StepActs;
import shimwright.rebuild.clearance.SharedShims;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.plan.Planner;
import shimwright.rebuild.supply.OrderList;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Step.Phase;
import shimwright.rebuild.unit.model.UnitType.Check;
import shimwright.rebuild.unit.model.UnitType.CheckKind;
import shimwright.rebuild.workbench.Workbench;

/** The demo job as its script has it, act by act, for whoever takes every wrong tap back at once. */
final class Scripted {
    private final Deque<Function<Workbench, Act.OfJob>> ahead = new ArrayDeque<>();

    Scripted() {
        Map<String, List<String[]>> script = new LinkedHashMap<>();
        for (String line : DemoUnit.lines("van-7.txt")) {
            String[] parts = line.split("\\s*\\|\\s*");
            script.computeIfAbsent(parts[0], step -> new ArrayList<>()).add(parts);
        }
        List<Step> steps = Planner.lay(DemoUnit.A, Map.of(), java.util.Set.of())
                .orElseThrow()
                .ahead();
        ahead.add(bench -> new OrderActs.HaveHere(
                OrderList.of(bench.unit(), bench.job()).lines().stream()
                        .map(OrderList.Line::key)
                        .toList(),
                "the kit, laid out and counted",
                ""));
        for (Step step : steps) {
            List<String[]> lines = script.getOrDefault(step.id(), List.of());
            lines.forEach(line -> ahead.add(bench -> act(bench, step, line)));
            attests(step, lines).forEach(act -> ahead.add(bench -> act));
            ahead.add(bench -> new StepActs.Done(step.id(), "", Map.of(), "", "the script has no clock"));
        }
        ahead.add(bench -> new HandBackActs.HandBack("12 months", "", "quiet"));
    }

    /** The next right act; empty after the hand-back. */
    Optional<Act.OfJob> next(Workbench bench) {
        return Optional.ofNullable(ahead.poll()).map(act -> act.apply(bench));
    }

    private static List<Act.OfJob> attests(Step step, List<String[]> lines) {
        List<Act.OfJob> acts = new ArrayList<>();
        for (Check check : step.hold().isBlank()
                ? List.<Check>of()
                : DemoUnit.A.holdPoint(step.hold()).checks()) {
            boolean scripted = lines.stream().anyMatch(l -> l[1].equals("check") && l[2].equals(check.id()));
            if (!scripted && check.kind() == CheckKind.NONE && check.asked()) {
                acts.add(new HoldActs.ReadCheck(step.id(), step.hold(), check.id(), "", "yes", "", "", ""));
            }
        }
        return acts;
    }

    private static Act.OfJob act(Workbench bench, Step step, String[] part) {
        return switch (part[1]) {
            case "check" ->
                new HoldActs.ReadCheck(step.id(), step.hold(), part[2], part[3], "", "", "as the script has it", "");
            case "trial" -> new ClearanceActs.NamePieces(part[2], "trial", pieces(part[3]));
            case "fitted" -> new ClearanceActs.NamePieces(part[2], "final", pieces(part[3]));
            case "round" -> new ClearanceActs.ReadRound(part[2], part[3], "", "", List.of(part[4].split("\\s+")));
            case "strike" -> strike(bench, part[2], part[3], part[4]);
            case "note" -> new IntakeActs.MakeNote(part[2], part[3]);
            case "together" ->
                new ClearanceActs.ChooseTogether(
                        SharedShims.groups(bench.unit()).get(0).get(0), pieces(part[2]), "");
            case "choose" ->
                new ClearanceActs.ChoosePack(
                        part[2], pieces(part[3]).values().iterator().next(), "");
            case "accept" -> new ClearanceActs.AcceptClearance(part[2], "");
            default -> throw new IllegalStateException("no word " + part[1]);
        };
    }

    private static Act.OfJob strike(Workbench bench, String clearance, String phase, String reason) {
        List<Job.Said<Entry.RoundRead>> rounds =
                bench.job().roundsOf(clearance, Phase.valueOf(phase.toUpperCase(Locale.ROOT)));
        return new IntakeActs.Strike(rounds.get(rounds.size() - 1).id(), reason);
    }

    private static Map<String, String> pieces(String text) {
        Map<String, String> pieces = new LinkedHashMap<>();
        for (String place : text.split("\\s+")) {
            String[] sides = place.split("=");
            pieces.put(sides[0], sides[1].replace('+', ' '));
        }
        return pieces;
    }
}
