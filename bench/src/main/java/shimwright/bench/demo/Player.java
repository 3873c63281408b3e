package shimwright.bench.demo;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import shimwright.bench.demo.Script.Line;
import shimwright.bench.web.Desk;
import shimwright.mechanics.conformity.Verdict;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.mechanics.quantity.Units;
import shimwright.rebuild.clearance.Decisions;
import shimwright.rebuild.clearance.SharedShims;
import shimwright.rebuild.inspect.Checks;
import shimwright.rebuild.inspect.WearJudgement;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Entry.PieceIn;
import shimwright.rebuild.job.Shop;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Step.Phase;
import shimwright.rebuild.unit.model.Unit;
import shimwright.rebuild.unit.model.UnitType.Check;
import shimwright.rebuild.unit.model.UnitType.CheckKind;
import shimwright.rebuild.unit.model.WearLimit;

/** Plays one script through the desk, as the person at the bench would. */
final class Player {
    private static final String WHO = "the workshop";

    private final Desk desk;
    private final Script script;
    private String job = "";
    private int entry;

    Player(Desk desk, Script script) {
        this.desk = desk;
        this.script = script;
    }

    /** Plays intake and then the build, up to the step named; an empty name plays all of it and hands back. */
    void play(String until) {
        open();
        script.at("").forEach(this::story);
        while (true) {
            Desk.OnBench bench = desk.bench(job).orElseThrow();
            Step step = bench.next().orElse(null);
            if (step == null || step.id().equals(until)) {
                break;
            }
            script.at(step.id()).forEach(line -> at(step, line));
            attest(step);
            keep(new Entry.StepDone(step.id(), ""));
        }
        script.at(until.isEmpty() ? "end" : until).forEach(this::story);
    }

    private void open() {
        Map<String, String> tales = new LinkedHashMap<>();
        List<String> said = new ArrayList<>();
        Line first = new Line("", List.of());
        for (Line line : script.at("")) {
            switch (line.word()) {
                case "open" -> first = line;
                case "tale" -> tales.put(line.part(0), line.part(1));
                case "said" -> said.add(line.part(0));
                default -> {
                    // later
                }
            }
        }
        job = desk.freeJobId(first.part(0));
        Unit unit = desk.shelf().unit("ambleholt-l5-74", first.part(1)).orElseThrow();
        desk.keep(
                        job,
                        unit,
                        id(),
                        WHO,
                        new Entry.JobOpened(
                                first.part(0),
                                unit.type().id(),
                                first.part(1),
                                first.part(2),
                                said,
                                tales,
                                "",
                                first.part(3)))
                .orElseThrow();
    }

    private String id() {
        entry++;
        return "demo-" + (job.isEmpty() ? "open" : job) + "-" + entry;
    }

    private void keep(Entry.OfJob what) {
        desk.keep(job, null, id(), WHO, what).orElseThrow();
    }

    private void story(Line line) {
        switch (line.word()) {
            case "off" -> keep(new Entry.TakenOff(line.part(0), List.of(), line.part(1)));
            case "found" -> found(line);
            case "seen" ->
                keep(new Entry.Found(
                        "", List.of(), line.part(0), List.of(), Kind.NUMBER, line.part(1), "Noted.", List.of()));
            case "judge" ->
                keep(new Entry.Judged(
                        line.part(0).matches("C\\d+") ? line.part(0) : "",
                        List.of(),
                        what(line.part(0)),
                        Entry.Decision.valueOf(line.part(1).toUpperCase(Locale.ROOT)),
                        line.part(2),
                        line.part(3)));
            case "note" -> keep(new Entry.NoteMade(line.part(0), line.part(1)));
            case "handback" -> keep(new Entry.HandedBack(line.part(0), line.part(1), line.part(2)));
            default -> {
                // open, tale and said are read when the job is opened
            }
        }
    }

    private String what(String item) {
        return unit().type().wearLimits().stream()
                .filter(w -> w.id().equals(item))
                .map(WearLimit::what)
                .findFirst()
                .orElse(item);
    }

    private Unit unit() {
        return desk.bench(job).orElseThrow().unit();
    }

    private void found(Line line) {
        WearLimit wear = unit().wearLimit(line.part(0));
        Kind kind = wear.kind().quantity();
        List<Double> values = values(line.part(1), wear.bareUnit());
        WearJudgement judged = WearJudgement.of(wear, values, UnitSystem.METRIC).orElseThrow();
        keep(new Entry.Found(
                wear.id(), wear.items(), wear.what(), values, kind, line.part(2), judged.say(), judged.working()));
    }

    private static List<Double> values(String text, shimwright.mechanics.quantity.Unit unit) {
        List<Double> values = new ArrayList<>();
        for (String part : text.split("\\s+")) {
            values.add(Quantities.parse(part, unit.kind(), unit, text)
                    .orElseThrow()
                    .si());
        }
        return values;
    }

    private void at(Step step, Line line) {
        switch (line.word()) {
            case "check" -> check(step, line.part(0), line.part(1));
            case "trial" -> keep(new Entry.PackIn(line.part(0), Phase.TRIAL, pieces(line.part(1))));
            case "fitted" -> keep(new Entry.PackIn(line.part(0), Phase.FINAL, pieces(line.part(1))));
            case "round" -> round(line);
            case "strike" -> strike(line);
            case "choose" -> choose(line);
            case "together" -> together(line);
            case "accept" ->
                keep(Decisions.accept(desk.session(desk.bench(job).orElseThrow(), line.part(0)), line.part(1))
                        .orElseThrow());
            default -> story(line);
        }
    }

    private void check(Step step, String id, String text) {
        Check check = unit().holdPoint(step.hold()).checks().stream()
                .filter(c -> c.id().equals(id))
                .findFirst()
                .orElseThrow();
        Kind kind = check.kind().quantity();
        List<Double> values = values(text, check.bareUnit());
        Checks.Judged judged = Checks.judge(check, values, UnitSystem.METRIC).orElseThrow();
        keep(new Entry.CheckRead(
                step.id(), step.hold(), id, values, kind, false, judged.verdict(), judged.say(), judged.working()));
    }

    /** What can only be said yes to is said yes to; a measured check that the script leaves out stops the play. */
    private void attest(Step step) {
        if (step.hold().isBlank()) {
            return;
        }
        for (Check check : unit().holdPoint(step.hold()).checks()) {
            boolean read = desk.bench(job)
                    .orElseThrow()
                    .job()
                    .check(step.id(), check.id())
                    .isPresent();
            if (!read && check.kind() == CheckKind.NONE && check.clearance().isBlank()) {
                keep(new Entry.CheckRead(
                        step.id(), step.hold(), check.id(), List.of(), Kind.NUMBER, true, Verdict.IN, "", List.of()));
            }
        }
    }

    private Map<String, List<PieceIn>> pieces(String text) {
        Map<String, List<PieceIn>> pieces = new LinkedHashMap<>();
        Shop shop = desk.shop();
        for (String place : text.split("\\s+")) {
            String[] sides = place.split("=");
            List<PieceIn> in = new ArrayList<>();
            for (String tag : sides[1].split("\\+")) {
                Shop.Piece piece = shop.pieces().get(tag);
                if (piece == null) {
                    throw new IllegalStateException("no piece " + tag);
                }
                in.add(new PieceIn(tag, piece.thickness(), piece.u()));
            }
            pieces.put(sides[0], in);
        }
        return pieces;
    }

    private void round(Line line) {
        String gauge = unit().clearance(line.part(0)).gauge();
        Phase phase = Phase.valueOf(line.part(1).toUpperCase(Locale.ROOT));
        keep(new Entry.RoundRead(line.part(0), phase, gauge, values(line.part(2), Units.MM), line.part(2)));
    }

    private void strike(Line line) {
        Phase phase = Phase.valueOf(line.part(1).toUpperCase(Locale.ROOT));
        List<?> rounds = desk.bench(job).orElseThrow().job().roundsOf(line.part(0), phase);
        String id = desk.bench(job)
                .orElseThrow()
                .job()
                .roundsOf(line.part(0), phase)
                .get(rounds.size() - 1)
                .id();
        keep(new Entry.RoundStruck(id, line.part(2)));
    }

    private void choose(Line line) {
        Desk.OnBench bench = desk.bench(job).orElseThrow();
        List<PieceIn> pack = pieces(line.part(1)).values().iterator().next();
        keep(Decisions.choose(desk.session(bench, line.part(0)), pack, line.part(2))
                .orElseThrow());
    }

    private void together(Line line) {
        Desk.OnBench bench = desk.bench(job).orElseThrow();
        List<String> group = SharedShims.groups(bench.unit()).get(0);
        SharedShims.choose(bench.unit(), bench.job(), desk.shop(), group, pieces(line.part(0)), line.part(1))
                .orElseThrow()
                .forEach(this::keep);
    }
}
