package shimwright.bench.demo;

import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import shimwright.bench.demo.Script.Line;
import shimwright.bench.desk.Desk;
import shimwright.bench.desk.JobOnBench;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.rebuild.act.Act;
import shimwright.rebuild.act.ClearanceActs;
import shimwright.rebuild.act.HandBackActs;
import shimwright.rebuild.act.HoldActs;
import shimwright.rebuild.act.InspectActs;
import shimwright.rebuild.act.IntakeActs;
import shimwright.rebuild.act.OrderActs;
import shimwright.rebuild.act.ShopActs;
import shimwright.rebuild.act.StepActs;
import shimwright.rebuild.act.StripActs;
import shimwright.rebuild.clearance.SharedShims;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.plan.Timers.Timer;
import shimwright.rebuild.supply.OrderList;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.UnitType.Check;
import shimwright.rebuild.unit.model.UnitType.CheckKind;
import shimwright.rebuild.unit.model.WearLimit;
import shimwright.rebuild.unit.model.WearLimit.Direction;

/** Plays one script through the same acts as the person at the bench would. */
final class Player {
    private static final String WHO = "the workshop";
    private static final Duration ENTRY = Duration.ofMinutes(1);

    private final Desk desk;
    private final Script script;
    private final PlayedClock clock;
    private String job = "";
    private int entry;

    Player(Desk desk, Script script, PlayedClock clock) {
        this.desk = desk;
        this.script = script;
        this.clock = clock;
    }

    /** Plays intake and then the build, up to the step named; an empty name plays all of it and hands back. */
    void play(String until) {
        open();
        script.at("").forEach(this::story);
        while (true) {
            JobOnBench bench = desk.bench(job).orElseThrow();
            Step step = bench.next().orElse(null);
            if (step == null || step.id().equals(until)) {
                break;
            }
            script.at(step.id()).forEach(line -> at(step, line));
            attest(step);
            done(step);
        }
        script.at(until.isEmpty() ? "end" : until).forEach(this::story);
    }

    /** Waits for what must be waited for, works as long as the step takes, and says that it is done. */
    private void done(Step step) {
        clock.pass(Duration.ofSeconds(Math.round(step.duration())));
        for (Timer timer : desk.bench(job).orElseThrow().timers()) {
            if (!timer.mustEnd() && timer.closes().equals(step.id())) {
                clock.passUntil(timer.until());
            }
        }
        act(new StepActs.Done(step.id(), "", Map.of(), "", ""));
    }

    private void open() {
        Map<String, String> tales = new LinkedHashMap<>();
        Line first = new Line("", List.of());
        for (Line line : script.at("")) {
            if (line.word().equals("open")) {
                first = line;
            } else if (line.word().equals("tale")) {
                tales.put(line.part(0), line.part(1));
            }
        }
        String said = script.at("").stream()
                .filter(line -> line.word().equals("said"))
                .map(line -> line.part(0))
                .collect(Collectors.joining("\n"));
        String type = desk.shelf().types().iterator().next().id();
        ShopActs.OpenJob open =
                new ShopActs.OpenJob(type, first.part(0), first.part(2), first.part(1), tales, "", said, first.part(3));
        job = desk.act(open, signed()).orElseThrow().stream();
    }

    private Desk.Signed signed() {
        entry++;
        return new Desk.Signed(
                "demo-" + (job.isEmpty() ? "open" + script.hashCode() : job) + "-" + entry, WHO, UnitSystem.METRIC);
    }

    private void act(Act.OfJob act) {
        clock.pass(ENTRY);
        desk.act(job, act, signed()).orElseThrow();
    }

    private void story(Line line) {
        switch (line.word()) {
            case "off" -> act(new StripActs.TakeOff(line.part(0), List.of(), line.part(1)));
            case "found" -> found(line);
            case "seen" -> act(new IntakeActs.Observe(line.part(0), line.part(1)));
            case "judge" -> judge(line);
            case "here" -> here(line);
            case "note" -> act(new IntakeActs.MakeNote(line.part(0), line.part(1)));
            case "handback" -> act(new HandBackActs.HandBack(line.part(0), line.part(1), line.part(2)));
            default -> {
                // open, tale and said are read when the job is opened
            }
        }
    }

    /** A limit as the script names it, {@code C01} or, of one piece, {@code C01/ring_3}. */
    private Optional<WearLimit> limit(String named) {
        String id = named.split("/", 2)[0];
        return desk.bench(job).orElseThrow().unit().type().wearLimits().stream()
                .filter(wear -> wear.id().equals(id))
                .findFirst();
    }

    private void judge(Line line) {
        Optional<WearLimit> wear = limit(line.part(0));
        boolean part = line.part(0).startsWith(Entry.Judged.PART + "/");
        act(new InspectActs.Decide(
                part ? Entry.Judged.PART : wear.map(WearLimit::id).orElse(""),
                wear.map(WearLimit::what).orElse(line.part(0)),
                Entry.Decision.valueOf(line.part(1).toUpperCase(Locale.ROOT)),
                line.part(2),
                line.part(3),
                part || wear.isPresent() ? pieces(line) : List.of()));
    }

    private static List<String> pieces(Line line) {
        return Stream.of(line.part(0).split("/", 2)).skip(1).toList();
    }

    /** What is needed and bears one of the words lies here; a star stands for all that is left. */
    private void here(Line line) {
        JobOnBench bench = desk.bench(job).orElseThrow();
        act(new OrderActs.HaveHere(
                OrderList.of(bench.unit(), bench.job()).lines().stream()
                        .filter(needed ->
                                line.part(0).equals("*") || needed.what().contains(line.part(0)))
                        .map(OrderList.Line::key)
                        .toList(),
                line.part(1),
                ""));
    }

    private void found(Line line) {
        boolean attested = limit(line.part(0)).orElseThrow().direction() == Direction.ATTEST;
        act(new InspectActs.Inspect(
                limit(line.part(0)).orElseThrow().id(),
                attested ? "" : line.part(1),
                attested ? line.part(1) : "",
                "",
                "",
                line.part(2),
                String.join("", pieces(line))));
    }

    private void at(Step step, Line line) {
        switch (line.word()) {
            case "check" ->
                act(new HoldActs.ReadCheck(step.id(), step.hold(), line.part(0), line.part(1), "", "", "", ""));
            case "trial" -> act(new ClearanceActs.NamePieces(line.part(0), "trial", pieces(line.part(1))));
            case "fitted" -> act(new ClearanceActs.NamePieces(line.part(0), "final", pieces(line.part(1))));
            case "round" ->
                act(new ClearanceActs.ReadRound(
                        line.part(0), line.part(1), "", "", List.of(line.part(2).split("\\s+"))));
            case "strike" -> strike(line);
            case "choose" ->
                act(new ClearanceActs.ChoosePack(
                        line.part(0), pieces(line.part(1)).values().iterator().next(), line.part(2)));
            case "together" -> together(line);
            case "accept" -> act(new ClearanceActs.AcceptClearance(line.part(0), line.part(1)));
            default -> story(line);
        }
    }

    /** What can only be said yes to is said yes to; a measured check that the script leaves out stops the play. */
    private void attest(Step step) {
        if (step.hold().isBlank()) {
            return;
        }
        JobOnBench bench = desk.bench(job).orElseThrow();
        for (Check check : bench.unit().holdPoint(step.hold()).checks()) {
            boolean read = bench.job().check(step.id(), check.id()).isPresent();
            if (!read && check.kind() == CheckKind.NONE && check.asked()) {
                act(new HoldActs.ReadCheck(step.id(), step.hold(), check.id(), "", "yes", "", "", ""));
            }
        }
    }

    /** Tags by place, written as place=tag+tag. */
    private static Map<String, String> pieces(String text) {
        Map<String, String> pieces = new LinkedHashMap<>();
        for (String place : text.split("\\s+")) {
            String[] sides = place.split("=");
            pieces.put(sides[0], sides[1].replace('+', ' '));
        }
        return pieces;
    }

    private void strike(Line line) {
        Step.Phase phase = Step.Phase.valueOf(line.part(1).toUpperCase(Locale.ROOT));
        var rounds = desk.bench(job).orElseThrow().job().roundsOf(line.part(0), phase);
        act(new IntakeActs.Strike(rounds.get(rounds.size() - 1).id(), line.part(2)));
    }

    private void together(Line line) {
        String one =
                SharedShims.groups(desk.bench(job).orElseThrow().unit()).get(0).get(0);
        act(new ClearanceActs.ChooseTogether(one, pieces(line.part(0)), line.part(1)));
    }
}
