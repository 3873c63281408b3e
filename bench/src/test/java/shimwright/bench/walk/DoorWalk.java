// size: one walk from an empty shop to the hand-back, every kind of step and slip in turn
package shimwright.bench.walk;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import shimwright.bench.ClockedBench;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.Clearance.Position;
import shimwright.rebuild.unit.model.Unit;
import tools.jackson.databind.JsonNode;

/**
 * Somebody at the bench who knows what the door says and what the gauges show, from an empty shop to the hand-back, with
 * wrong taps on the way.
 */
final class DoorWalk {
    private static final double ETCHED = 4;
    private static final int MOST_ACTS = 1500;
    private static final Map<String, String> GAUGES = Map.of(
            "TRAVEL", "clock 1", "PLACES", "clock 1", "SERIES", "rod 7", "FEELER", "leaves", "DIFFERENCE", "rod 7");

    private final ClockedBench bench;
    private final HttpDoor door;
    private final Unit unit;
    private final TrueSizes truth;
    private final CheckReadings readings;
    private final boolean early;
    private final Map<String, List<String>> in = new HashMap<>();
    private final Map<String, Double> thickness = new HashMap<>();
    private final Set<String> slips = new HashSet<>();
    private final Set<String> wrongRing = new HashSet<>();
    private final Set<String> named = new HashSet<>();
    private final Set<String> shared = new HashSet<>();
    private String job = "";
    private String number = "K-0001";
    private String lastRound = "";
    private int acts;

    /**
     * A walk to be taken.
     *
     * @param early true where the first pack of a group is chosen before the others are read, so that it lies in their loops
     */
    DoorWalk(ClockedBench bench, Unit unit, long seed, boolean early) {
        this.bench = bench;
        this.door = new HttpDoor(bench);
        this.unit = unit;
        this.truth = new TrueSizes(unit, seed, ETCHED);
        this.early = early;
        Map<String, Double> fixed = new HashMap<>();
        unit.type().clearances().stream()
                .filter(c -> !c.etchedBy().isEmpty())
                .forEach(c -> fixed.put(c.etchedBy(), ETCHED));
        this.readings = new CheckReadings(fixed);
    }

    /** A job that is only begun, and on which nothing is done. */
    String begun(String another) {
        number = another;
        open();
        return job;
    }

    String job() {
        return job;
    }

    Set<String> slips() {
        return slips;
    }

    /** From the empty shop to the job opened, stripped and inspected. */
    void takeIn() {
        thickness.putAll(FurnishedShop.furnish(door, unit, truth));
        open();
        strip();
        inspect();
    }

    /** The next one, in the shop of a walk before it. */
    void takeInAfter(DoorWalk before, String another) {
        number = another;
        thickness.putAll(before.thickness);
        truth.sameDrawer(before.truth);
        open();
        strip();
        inspect();
    }

    private void open() {
        Map<String, String> seen = new LinkedHashMap<>();
        JsonNode shelf = door.get("/units")
                .get("units")
                .valueStream()
                .filter(one -> one.get("type").asString().equals(unit.type().id()))
                .findFirst()
                .orElseThrow();
        shelf.get("tellTales")
                .valueStream()
                .filter(tale -> tale.get("weight").asString().equals("strong"))
                .forEach(tale -> seen.put(
                        tale.get("tale").asString(),
                        tale.get("shows").get(unit.variant()).asString()));
        JsonNode opened = door.inShop(
                "open-job",
                Map.of(
                        "type",
                        unit.type().id(),
                        "number",
                        number,
                        "owner",
                        "somebody",
                        "tale",
                        seen,
                        "said",
                        "it whines in second\nit jumps out of fifth"));
        job = opened.get("job").asString();
        look().get("together").forEach(group -> shared.addAll(texts(group.get("clearances"))));
        act("correct-intake", Map.of("owner", "somebody else", "reason", "misheard"));
    }

    private void strip() {
        for (String gone : List.of("drain plug, oil caught", "cover", "both shafts")) {
            act("take-off", Map.of("gone", gone));
        }
        act("make-note", Map.of("text", "a chip of brass on the magnet"));
        act("observe", Map.of("what", "breather", "words", "clogged with mud"));
    }

    private void inspect() {
        boolean worn = false;
        for (JsonNode limit : look().get("limits")) {
            String id = limit.get("limit").asString();
            if (limit.get("direction").asString().equals("attest")) {
                act("inspect", Map.of("limit", id, "attest", "good"));
                continue;
            }
            boolean wears = !worn
                    && limit.get("service").asDouble() > 0
                    && limit.get("readings").asInt() == 1;
            List<Double> values = wears ? CheckReadings.worn(limit) : CheckReadings.asNew(limit);
            act("inspect", Map.of("limit", id, "values", CheckReadings.typed(limit, values)));
            if (wears) {
                worn = true;
                act(
                        "decide",
                        Map.of(
                                "limit", id,
                                "what", limit.get("what").asString(),
                                "decision", "replace",
                                "reason", "worn beyond its limit",
                                "consent", "by telephone"));
            }
        }
        assertThat(worn).isEqualTo(!look().get("limits").isEmpty());
        assertThat(look().get("limits").valueStream())
                .allMatch(l -> l.get("found").asBoolean());
    }

    private JsonNode look() {
        return door.job(job);
    }

    private JsonNode act(String act, Map<String, ?> typed) {
        assertThat(++acts).as("acts of a walk that goes on").isLessThan(MOST_ACTS);
        bench.later(Duration.ofSeconds(1));
        return door.onJob(job, act, typed);
    }

    private void slip(String act, Map<String, ?> typed, String saying) {
        door.refused(job, act, typed, saying);
        slips.add(act + ": " + saying);
    }

    /** Every step in the order that the door says, to the last. */
    void build() {
        for (JsonNode now = look(); !now.get("built").asBoolean(); now = look()) {
            if (now.get("togetherDue").asBoolean()) {
                chooseTogether(now);
                continue;
            }
            assertThat(now.has("next")).as("%s", now.get("hindrances")).isTrue();
            step(now, now.get("next"));
        }
    }

    private void step(JsonNode now, JsonNode step) {
        String id = step.get("step").asString();
        here(step);
        await(step);
        String clearance = step.get("clearance").asString();
        if (!clearance.isEmpty()) {
            set(step, clearance);
        }
        String hold = step.get("hold").asString();
        if (!hold.isEmpty()) {
            hold(id, hold, step);
        }
        bench.later(Duration.ofSeconds(Math.round(step.get("seconds").asDouble())));
        for (JsonNode clock : now.get("clocks")) {
            Instant until = Instant.parse(clock.get("until").asString());
            boolean wait = !clock.get("mustEnd").asBoolean()
                    && clock.get("closes").asString().equals(id);
            if (wait && bench.now().isBefore(until)) {
                slip("done", Map.of("step", id), "from now");
                bench.later(Duration.between(bench.now(), until).plusSeconds(1));
            }
        }
        act("done", Map.of("step", id));
        if (step.get("reading").asString().equals("final") && slips.add("taken back after it was accepted")) {
            act("undo", Map.of("step", id, "reason", "a screw was left over"));
            assertThat(session(clearance).get("accepted").asBoolean()).isFalse();
            return;
        }
        boolean undo = slips.stream().noneMatch(s -> s.startsWith("undone"))
                && now.get("done").size() > 20;
        if (undo && clearance.isEmpty() && hold.isEmpty()) {
            act("undo", Map.of("step", id, "reason", "tapped on the wrong line"));
            slips.add("undone");
            act("done", Map.of("step", id));
        }
    }

    /** What must be new for the step is looked at and lies here; before that the step is refused. */
    private void here(JsonNode step) {
        List<String> lines = step.get("missing").values().stream()
                .map(line -> line.get("line").asString())
                .toList();
        if (!lines.isEmpty()) {
            if (slips.add("without the new part")) {
                slip("done", Map.of("step", step.get("step").asString()), "neither ordered nor here");
            }
            act("have-here", Map.of("lines", lines, "measured", "beside the old one, the same"));
        }
    }

    /** A part of the first step that fits one is awaited, comes wrong, and comes right. */
    private void await(JsonNode step) {
        if (slips.contains("awaited") || step.get("installs").isEmpty()) {
            return;
        }
        slips.add("awaited");
        String item = step.get("installs").get(0).asString();
        String order = act(
                        "send-out",
                        Map.of(
                                "what", "the one that was missing",
                                "items", List.of(item),
                                "to", "a dealer",
                                "due", "2026-12-24",
                                "late", "3"))
                .get("entries")
                .get(0)
                .get("id")
                .asString();
        slip("done", Map.of("step", step.get("step").asString()), "is awaited");
        act("take-delivery", Map.of("sent", order, "good", "no", "measured", "another part in the box"));
        slip("done", Map.of("step", step.get("step").asString()), "is awaited");
        bench.later(Duration.ofDays(2));
        act("take-delivery", Map.of("sent", order, "good", "yes", "measured", "size as ordered"));
        assertThat(look().get("awaited")).isEmpty();
    }

    private void hold(String step, String hold, JsonNode described) {
        JsonNode checks = described.get("checks");
        for (JsonNode check : checks) {
            if (!check.get("asked").asBoolean()) {
                continue;
            }
            String id = check.get("check").asString();
            if (slips.add("before its hold")) {
                slip("done", Map.of("step", step), "hold");
            }
            Map<String, String> at = Map.of("step", step, "hold", hold, "check", id);
            if (check.get("kind").asString().equals("none")) {
                act("read-check", with(at, "attest", "yes"));
                continue;
            }
            List<Double> sound = readings.sound(hold, check);
            if (check.get("kind").asString().equals("length") && !slips.contains("magnitude")) {
                List<Double> slipped = sound.stream().map(v -> 10 * v).toList();
                slipOfThePoint(step, at, CheckReadings.typed(check, slipped));
            }
            act("read-check", with(at, "values", CheckReadings.typed(check, sound)));
        }
    }

    /** A reading ten times too large is asked about; confirmed it stands against the step until it is struck. */
    private void slipOfThePoint(String step, Map<String, String> at, String wrong) {
        slips.add("magnitude");
        slip("read-check", with(at, "values", wrong), "Did you mean");
        Map<String, String> confirmed = new HashMap<>(with(at, "values", wrong));
        confirmed.put("confirmed", "it says so");
        String entry =
                act("read-check", confirmed).get("entries").get(0).get("id").asString();
        slip("done", Map.of("step", step), "hold");
        act("strike", Map.of("struck", entry, "reason", "the point slipped"));
    }

    private static Map<String, String> with(Map<String, String> some, String name, String value) {
        Map<String, String> all = new LinkedHashMap<>(some);
        all.put(name, value);
        return all;
    }

    private JsonNode session(String clearance) {
        return door.get("/jobs/" + job + "/clearances/" + clearance);
    }

    private void set(JsonNode step, String clearance) {
        boolean trial = step.get("reading").asString().equals("trial");
        if (trial) {
            nameTrial(session(clearance));
        }
        for (int tries = 0; tries < 40; tries++) {
            JsonNode s = session(clearance);
            switch (s.get("stage").asString()) {
                case "trial_pack" -> throw new AssertionError("pieces are named, and are asked for again: " + s);
                case "read_trial", "read_last", "read_again" -> read(s);
                case "last_pack" -> nameRing(s);
                case "accept", "accept_again" -> accept(s);
                case "choose" -> {
                    if (shared(clearance)) {
                        return;
                    }
                    choose(s);
                }
                default -> {
                    return;
                }
            }
            if (trial && !session(clearance).get("stage").asString().equals("read_trial")) {
                if (early && shared(clearance)) {
                    chooseEarly(session(clearance));
                }
                return;
            }
        }
        throw new AssertionError("no end of setting " + session(clearance));
    }

    /** The pack of a clearance that shares places, where it can be chosen alone; the others are read with it chosen. */
    private void chooseEarly(JsonNode s) {
        if (!s.get("offers").isEmpty() && named.add("early")) {
            choose(s);
            slips.add("chosen early");
        }
    }

    private boolean shared(String clearance) {
        return shared.contains(clearance);
    }

    private String gauge(String clearance) {
        return java.util.Objects.requireNonNull(
                GAUGES.get(unit.clearance(clearance).method().name()));
    }

    private void read(JsonNode s) {
        String id = s.get("clearance").asString();
        Map<String, List<String>> lies = new HashMap<>(in);
        boolean trial = s.get("reading").asString().equals("trial");
        if (!trial) {
            lies.putAll(chosen());
        }
        List<String> shown = truth.round(id, lies).stream()
                .map(v -> String.format(Locale.ROOT, "%.2f", v))
                .toList();
        lastRound = act("read-round", Map.of("clearance", id, "gauge", gauge(id), "second", "clock 1", "v", shown))
                .get("entries")
                .get(0)
                .get("id")
                .asString();
    }

    /** What is chosen for every place, as the door says it. */
    private Map<String, List<String>> chosen() {
        Map<String, List<String>> all = new HashMap<>();
        for (Clearance c : unit.type().clearances()) {
            session(c.id())
                    .get("chosen")
                    .properties()
                    .forEach(chosen -> all.put(chosen.getKey(), texts(chosen.getValue())));
        }
        return all;
    }

    private static List<String> texts(JsonNode list) {
        return list.valueStream().map(JsonNode::asString).toList();
    }

    /** Pieces for a trial: those that are in already stay; a backlash is read with what the drawing says, then moved. */
    private void nameTrial(JsonNode s) {
        String id = s.get("clearance").asString();
        Clearance c = unit.clearance(id);
        Set<String> known = new HashSet<>(texts(s.get("known")));
        boolean again = !named.add(id);
        boolean split = c.sense() == Clearance.Sense.BACKLASH;
        Map<String, String> pieces = new LinkedHashMap<>();
        int number = 0;
        for (JsonNode place : s.get("places")) {
            String at = place.get("place").asString();
            Position position = unit.position(at);
            boolean moved = split && Math.abs(position.effect()) > 0 && number < 2;
            if (!known.contains(at) && (moved || !in.containsKey(at))) {
                in.remove(at);
                double wanted = split
                        ? truth.nominal(position) + (again ? (number == 0 ? 0.1e-3 : -0.1e-3) : 0)
                        : place.get("effect").asDouble() < 0 ? 0 : 1;
                in.put(at, List.of(nearest(texts(place.get("usable")), wanted)));
            }
            if (!known.contains(at)) {
                pieces.put(at, String.join(" ", in.get(at)));
            }
            number++;
        }
        if (slips.add("misnamed")) {
            Map<String, String> wrong = new LinkedHashMap<>(pieces);
            String first = wrong.keySet().iterator().next();
            JsonNode place = s.get("places")
                    .valueStream()
                    .filter(p -> p.get("place").asString().equals(first))
                    .findFirst()
                    .orElseThrow();
            wrong.put(first, nearest(texts(place.get("usable")), truth.nominal(unit.position(first))));
            act("name-pieces", Map.of("clearance", id, "phase", "trial", "in", wrong));
            read(session(id));
        }
        act("name-pieces", Map.of("clearance", id, "phase", "trial", "in", pieces));
    }

    private String nearest(List<String> usable, double wanted) {
        Set<String> taken = new HashSet<>();
        in.values().forEach(taken::addAll);
        return usable.stream()
                .filter(tag -> !taken.contains(tag))
                .min(Comparator.comparingDouble(tag -> Math.abs(thickness.getOrDefault(tag, 99.0) - wanted)))
                .orElseThrow();
    }

    /** A ring that is tried: the first is far too thin, as somebody takes it who looked at the stamp alone. */
    private void nameRing(JsonNode s) {
        JsonNode place = s.get("places").get(0);
        String at = place.get("place").asString();
        String first = s.get("tryFirst").get(0).asString();
        double wanted = thickness.getOrDefault(first, 0.0) - 0.12e-3;
        in.put(at, List.of(nearest(texts(place.get("usable")), wanted)));
        wrongRing.add(at);
        act(
                "name-pieces",
                Map.of(
                        "clearance", s.get("clearance").asString(),
                        "phase", "final",
                        "in", Map.of(at, String.join(" ", in.get(at)))));
    }

    private void accept(JsonNode s) {
        String id = s.get("clearance").asString();
        if (s.get("closing").get("verdict").asString().equals("IN")) {
            act("accept-clearance", Map.of("clearance", id));
            if (slips.add("struck after it was accepted")) {
                act("strike", Map.of("struck", lastRound, "reason", "the plunger hung"));
                assertThat(session(id).get("stage").asString()).isEqualTo("read_last");
            }
            return;
        }
        assertThat(wrongRing).as("a pack that was advised is not in: %s", s).isNotEmpty();
        slip("accept-clearance", Map.of("clearance", id), "Find the cause");
        wrongRing.clear();
        slips.add("wrong ring");
        choose(s);
    }

    private void choose(JsonNode s) {
        JsonNode offers = s.get("offers");
        assertThat(offers).as("%s", s).isNotEmpty();
        List<String> pieces = texts(offers.get(0).get("pieces"));
        act("choose-pack", Map.of("clearance", s.get("clearance").asString(), "pack", String.join(" ", pieces)));
        if (!early || !shared(s.get("clearance").asString())) {
            in.put(s.get("places").get(0).get("place").asString(), pieces);
        }
    }

    private void chooseTogether(JsonNode now) {
        for (JsonNode group : now.get("together")) {
            JsonNode ways = group.get("ways");
            assertThat(ways).as("%s", group).isNotEmpty();
            Map<String, String> at = new LinkedHashMap<>();
            ways.get(0)
                    .get("at")
                    .properties()
                    .forEach(p -> at.put(p.getKey(), p.getValue().asString()));
            act(
                    "choose-together",
                    Map.of("clearance", group.get("clearances").get(0).asString(), "at", at));
        }
    }

    /** The hand-back, and what is said after it. */
    void handBack() {
        act("hand-back", Map.of("warranty", "12 months", "advice", "change the oil after 1000 km", "remark", "quiet"));
        act("follow-up", Map.of("said", "no noise after 500 km"));
        slip("take-off", Map.of("gone", "something else"), "handed back");
    }

    /** True clearances with what is chosen, by clearance. */
    Map<String, Double> truths() {
        Map<String, List<String>> lies = new HashMap<>(in);
        lies.putAll(chosen());
        Map<String, Double> truths = new LinkedHashMap<>();
        unit.type().clearances().forEach(c -> truths.put(c.id(), truth.clearance(c.id(), lies)));
        return truths;
    }

    /** Limits of a clearance of this very part, m. */
    List<Double> limits(Clearance c) {
        double moved = c.etchedStep() * ETCHED;
        return Stream.of(c.lower() + moved, c.upper() + moved).toList();
    }
}
