package shimwright.bench.web.api;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import shimwright.bench.desk.JobOnBench;
import shimwright.bench.desk.JobSummary;
import shimwright.mechanics.axial.shim.Drawer;
import shimwright.mechanics.axial.shim.PackOffer;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.clearance.Session;
import shimwright.rebuild.clearance.Session.Advice;
import shimwright.rebuild.clearance.Session.Closing;
import shimwright.rebuild.clearance.SharedShims;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.Shop;
import shimwright.rebuild.plan.Plan;
import shimwright.rebuild.record.Standings;
import shimwright.rebuild.rules.HoldPoints;
import shimwright.rebuild.supply.OrderList;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.Measurable;
import shimwright.rebuild.unit.model.Quantity;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Unit;
import shimwright.rebuild.unit.model.UnitType.Check;
import shimwright.rebuild.unit.model.WearLimit;

/** A job and the shop as programs see them: what is done, what is next, how each clearance stands. Lengths are in metres. */
final class JobJson {
    private JobJson() {}

    static Map<String, Object> shop(Shop shop) {
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("facts", shop.facts());
        all.put("gauges", shop.gauges().values().stream().map(JobJson::gauge).toList());
        all.put("pieces", shop.pieces().values().stream().map(JobJson::piece).toList());
        return all;
    }

    private static Map<String, Object> gauge(Shop.Gauge gauge) {
        Map<String, Object> one = new LinkedHashMap<>();
        one.put("gauge", gauge.id());
        one.put("name", gauge.name());
        one.put("step", gauge.step());
        one.put("errorLimit", gauge.errorLimit());
        one.put("range", gauge.range());
        one.put("calibrated", gauge.calibrated());
        return one;
    }

    private static Map<String, Object> piece(Shop.Piece piece) {
        Map<String, Object> one = new LinkedHashMap<>();
        one.put("piece", piece.id());
        one.put("family", piece.family());
        one.put("thickness", piece.thickness());
        one.put("inDrawer", piece.inDrawer());
        one.put("in", piece.takenBy() == null ? "" : piece.takenBy());
        return one;
    }

    static Map<String, Object> card(JobSummary job) {
        Map<String, Object> one = new LinkedHashMap<>();
        one.put("job", job.job());
        one.put("number", job.number());
        one.put("owner", job.owner());
        one.put("unit", job.unitType());
        one.put("variant", job.variant());
        one.put("unitFile", job.unitFile());
        one.put("head", Map.of("count", job.head().count(), "hash", job.head().hash()));
        one.put("handedBack", job.closed());
        return one;
    }

    /**
     * How a job stands.
     *
     * @param shims the choice for a group of clearances; empty while it is still looked for
     */
    static Map<String, Object> bench(JobOnBench bench, Function<List<String>, Optional<SharedShims>> shims) {
        Job job = bench.job();
        Map<String, Object> all = card(JobSummary.of(job));
        all.put("done", List.copyOf(job.stepsDone()));
        all.put("built", bench.built());
        all.put("now", bench.bench().now().toString());
        Outcome<Plan> plan = bench.plan();
        all.put(
                "plan",
                plan.isOk() ? plan.orElseThrow().ahead().stream().map(Step::id).toList() : List.of());
        all.put("hindrances", plan.refusals().stream().map(Refusal::sentence).toList());
        bench.next().ifPresent(step -> all.put("next", step(bench, step)));
        all.put(
                "clearances",
                bench.unit().type().settingOrder().stream()
                        .map(id -> session(bench, bench.session(id)))
                        .toList());
        all.put(
                "together",
                SharedShims.groups(bench.unit()).stream()
                        .map(group -> together(group, shims.apply(group)))
                        .toList());
        all.put("togetherDue", SharedShims.due(bench.unit(), bench::session));
        all.put(
                "limits",
                bench.unit().type().wearLimits().stream()
                        .map(wear -> limit(bench.unit(), job, wear))
                        .toList());
        all.put("clocks", bench.timers().stream().map(JobJson::clock).toList());
        all.put(
                "awaited",
                job.awaited().stream()
                        .map(said ->
                                Map.of("order", said.id(), "what", said.what().what()))
                        .toList());
        return all;
    }

    private static Map<String, Object> clock(shimwright.rebuild.plan.Timers.Timer timer) {
        Map<String, Object> one = new LinkedHashMap<>();
        one.put("name", timer.name());
        one.put("until", timer.until().toString());
        one.put("mustEnd", timer.mustEnd());
        one.put("closes", timer.closes());
        return one;
    }

    private static Map<String, Object> step(JobOnBench bench, Step step) {
        Map<String, Object> one = new LinkedHashMap<>();
        one.put("step", step.id());
        one.put("todo", step.todo());
        one.put("at", step.at());
        one.put("seconds", step.duration());
        one.put("installs", step.installs());
        one.put(
                "missing",
                bench.bench().heldUp().containsKey(step.id())
                        ? OrderList.of(bench.unit(), bench.job(), bench.shop()).linesFor(step).stream()
                                .map(line -> Map.of("line", line.key(), "what", line.what()))
                                .toList()
                        : List.of());
        one.put("fasteners", step.fasteners());
        one.put("clearance", step.clearance());
        one.put("reading", step.phase().name().toLowerCase(java.util.Locale.ROOT));
        one.put("hold", step.hold());
        List<Object> checks = new ArrayList<>();
        for (HoldPoints.CheckStanding standing : HoldPoints.of(bench.bench(), step)) {
            Map<String, Object> check = check(standing.check());
            check.put("standing", standing.standing().name().toLowerCase(java.util.Locale.ROOT));
            checks.add(check);
        }
        one.put("checks", checks);
        return one;
    }

    private static Map<String, Object> check(Check check) {
        Map<String, Object> one = measurable(check);
        one.put("check", check.id());
        one.put("clearance", check.clearance());
        one.put("asked", check.asked());
        check.lower().ifPresent(limit -> one.put("lower", limit.si()));
        check.upper().ifPresent(limit -> one.put("upper", limit.si()));
        check.spread().ifPresent(limit -> one.put("spread", limit.si()));
        one.put("nominal", check.nominal().stream().map(Quantity::si).toList());
        one.put("relativeTo", check.relativeTo());
        return one;
    }

    private static Map<String, Object> measurable(Measurable of) {
        Map<String, Object> one = new LinkedHashMap<>();
        one.put("what", of.what());
        one.put("kind", of.kind().name().toLowerCase(java.util.Locale.ROOT));
        one.put("readings", of.readingsEach() * of.fields().size());
        one.put("pieces", of.pieces());
        one.put("judgedOn", of.judgedOn().name().toLowerCase(java.util.Locale.ROOT));
        one.put("factor", of.readingFactor());
        one.put("offset", of.readingOffset().map(Quantity::si).orElse(0.0));
        one.put("unit", of.bareUnit().symbol());
        one.put("stated", of.stated().stream().map(Quantity::si).toList());
        return one;
    }

    private static Map<String, Object> limit(Unit unit, Job job, WearLimit wear) {
        Map<String, Object> one = measurable(wear);
        one.put("limit", wear.id());
        one.put("direction", wear.direction().name().toLowerCase(java.util.Locale.ROOT));
        wear.limit().ifPresent(limit -> one.put("service", limit.si()));
        one.put("asNew", wear.asNew().stream().map(Quantity::si).toList());
        one.put(
                "found",
                job.found().stream().anyMatch(said -> said.what().limit().equals(wear.id())));
        one.put("decided", Standings.worst(unit, job, wear).isPresent());
        one.put(
                "judges",
                Standings.of(unit, job, wear).stream().map(JobJson::standing).toList());
        return one;
    }

    private static Map<String, Object> standing(Standings.Standing standing) {
        Map<String, Object> one = new LinkedHashMap<>();
        one.put("piece", standing.piece().id());
        one.put("name", standing.piece().name());
        one.put("parts", standing.piece().parts());
        one.put("state", standing.state().name().toLowerCase(java.util.Locale.ROOT));
        return one;
    }

    static Map<String, Object> session(JobOnBench bench, Session session) {
        Clearance clearance = session.clearance();
        Map<String, Object> one = new LinkedHashMap<>();
        one.put("clearance", clearance.id());
        one.put("name", clearance.name());
        one.put("lower", clearance.lower());
        one.put("upper", clearance.upper());
        one.put("stage", session.stage().name().toLowerCase(java.util.Locale.ROOT));
        one.put("say", session.say());
        one.put("method", clearance.method().name().toLowerCase(java.util.Locale.ROOT));
        one.put("numbers", clearance.numbers());
        one.put("rounds", session.current().rounds().size());
        one.put("wanted", clearance.rounds());
        one.put("reading", session.current().phase().name().toLowerCase(java.util.Locale.ROOT));
        one.put("gauge", session.gauge() == null ? "" : session.gauge().id());
        one.put("inHand", session.inHand().stream().map(Shop.Gauge::id).toList());
        one.put("gauges", session.gauges().stream().map(Shop.Gauge::id).toList());
        one.put(
                "places",
                clearance.positions().stream().map(p -> place(bench, p)).toList());
        one.put("known", session.known().keySet());
        one.put("toName", session.toName());
        one.put("tryFirst", session.tryFirst().stream().map(p -> p.piece()).toList());
        one.put(
                "refusals",
                session.current().refusals().stream().map(Refusal::sentence).toList());
        one.put("offers", offers(session.advice()));
        one.put(
                "chosen",
                session.chosen().entrySet().stream()
                        .collect(Collectors.toMap(
                                Map.Entry::getKey,
                                e -> e.getValue().pieces().stream()
                                        .map(p -> p.piece())
                                        .toList())));
        one.put("closing", closing(session.closing()));
        one.put("accepted", session.accepted() != null);
        one.put("reopened", session.reopened());
        return one;
    }

    private static Map<String, Object> place(JobOnBench bench, Clearance.Position position) {
        Map<String, Object> one = new LinkedHashMap<>();
        one.put("place", position.id());
        one.put("where", position.where());
        one.put("family", position.family());
        one.put("fewest", position.fewest());
        one.put("most", position.most());
        one.put("effect", position.effect());
        one.put(
                "usable",
                bench
                        .shop()
                        .usable(
                                position.family(),
                                bench.unit().shimFamily(position.family()).spread())
                        .stream()
                        .map(Shop.Piece::id)
                        .toList());
        return one;
    }

    private static List<Object> offers(@Nullable Advice advice) {
        if (advice == null || advice.result() == null) {
            return List.of();
        }
        List<Object> offers = new ArrayList<>();
        for (PackOffer offer : advice.result().offers()) {
            Map<String, Object> one = new LinkedHashMap<>();
            one.put("place", advice.position().id());
            one.put("pieces", offer.pieces());
            one.put("predicted", offer.predicted());
            one.put("u", offer.u());
            one.put("probability", offer.probability());
            one.put("verdict", offer.verdict().name());
            offers.add(one);
        }
        return offers;
    }

    /** Ways to serve a group of clearances that share places: the tags by place, the best way first. */
    private static Map<String, Object> together(List<String> group, Optional<SharedShims> found) {
        Map<String, Object> one = new LinkedHashMap<>();
        if (found.isEmpty()) {
            one.put("clearances", group);
            one.put("advice", "The best way is still looked for: ask again in a moment.");
            one.put("ways", List.of());
            return one;
        }
        SharedShims shared = found.get();
        one.put("clearances", shared.clearances());
        one.put("places", shared.places().stream().map(Clearance.Position::id).toList());
        one.put("refusals", shared.refusals().stream().map(Refusal::sentence).toList());
        Drawer.Result result = shared.result();
        one.put("advice", result == null ? "" : result.advice());
        List<Object> ways = new ArrayList<>();
        for (Drawer.Result.Way way : result == null ? List.<Drawer.Result.Way>of() : result.offers()) {
            Map<String, Object> at = new LinkedHashMap<>();
            way.pieces().stream()
                    .map(place -> place.split("=", 2))
                    .forEach(pair -> at.put(pair[0], pair.length == 1 ? "" : pair[1].replace('+', ' ')));
            ways.add(Map.of("at", at, "predicted", way.predicted(), "probability", way.probability()));
        }
        one.put("ways", ways);
        one.put(
                "wishes",
                (result == null ? List.<Drawer.Result.Wish>of() : result.wishes())
                        .stream()
                                .map(wish -> Map.of(
                                        "place", wish.place(),
                                        "family", wish.family(),
                                        "thickness", wish.thickness(),
                                        "from", wish.from(),
                                        "to", wish.to(),
                                        "grind", wish.grind()))
                                .toList());
        return one;
    }

    private static Map<String, Object> closing(@Nullable Closing closing) {
        if (closing == null) {
            return Map.of();
        }
        Map<String, Object> one = new LinkedHashMap<>();
        one.put("value", closing.value());
        one.put("u", closing.u());
        one.put("verdict", closing.verdict().name());
        one.put("finding", closing.finding());
        one.put("advice", closing.advice());
        return one;
    }
}
