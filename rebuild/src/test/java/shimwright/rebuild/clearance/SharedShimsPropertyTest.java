package shimwright.rebuild.clearance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import shimwright.mechanics.axial.shim.ShimPack;
import shimwright.mechanics.quantity.Kind;
import shimwright.rebuild.clearance.Session.Advice;
import shimwright.rebuild.clearance.Session.Forecast;
import shimwright.rebuild.clearance.Session.Stage;
import shimwright.rebuild.demo.EntryStream;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Entry.PieceIn;
import shimwright.rebuild.job.FittedPieces;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.JobLog;
import shimwright.rebuild.job.Shop;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.Clearance.Position;
import shimwright.rebuild.unit.model.Step.Phase;

/**
 * Coupled clearances by chance with a hidden truth, set by a person who names wrong pieces and corrects them, chooses in any
 * order, undoes steps and changes a choice after all is accepted: every forecast is the truth of the pieces that are in, and
 * every clearance ends accepted and truly within its limits.
 */
class SharedShimsPropertyTest {
    private static final String NUMBER = "R-1";
    private static final double MM = RandomClearances.MM;

    private RandomClearances box = new RandomClearances(0);
    private Random random = new Random(0);
    private EntryStream shopLog = new EntryStream(JobLog.SHOP);
    private EntryStream log = new EntryStream("job-r-1");
    /** What is physically in, by place. */
    private final Map<String, List<String>> in = new LinkedHashMap<>();

    @Property(tries = 60)
    void everyClearanceEndsAcceptedAndTrulyWithin(@ForAll long seed) {
        begin(seed);
        List<String> trials = ids().stream().filter(id -> hasTrial(id)).toList();
        if (!box.interleaved) {
            trials.forEach(this::trial);
            choose(trials);
            ids().forEach(this::finish);
        } else {
            for (String id : ids()) {
                if (hasTrial(id)) {
                    trial(id);
                    choose(List.of(id));
                }
                finish(id);
            }
        }
        settled();
        if (random.nextInt(3) == 0) {
            changeTheFirst();
            settled();
        }
    }

    private void begin(long seed) {
        box = new RandomClearances(seed);
        random = new Random(seed ^ 77);
        shopLog = new EntryStream(JobLog.SHOP);
        log = new EntryStream("job-r-1");
        in.clear();
        shopLog.add(new Entry.GaugeAdded("my own", "indicator", Kind.LENGTH, 1e-6, 5e-7, 0, 0, 0.2));
        box.drawer.forEach(
                (tag, mm) -> shopLog.add(new Entry.ShimAdded(tag, tag.substring(0, 2), tag, List.of(mm * MM), 1e-6)));
        log.add(new Entry.JobOpened(NUMBER, "random", "A", "", List.of(), Map.of(), "", ""));
    }

    private List<String> ids() {
        return box.unit.type().settingOrder();
    }

    private boolean hasTrial(String id) {
        return !box.unit.stepsReading(id, Phase.TRIAL).isEmpty();
    }

    private Job job() {
        return log.job();
    }

    private Shop shop() {
        return Shop.of(shopLog.entries(), List.of(job()));
    }

    private Session session(String id) {
        return Sessions.of(box.unit, job(), shop(), id);
    }

    private List<PieceIn> pieces(List<String> tags) {
        Shop shop = shop();
        return tags.stream()
                .map(tag -> Objects.requireNonNull(shop.pieces().get(tag)))
                .map(p -> new PieceIn(p.id(), p.thickness(), p.u()))
                .toList();
    }

    private void read(String id, Phase phase) {
        Session session = session(id);
        String gauge = Objects.requireNonNull(session.gauge()).id();
        double value = box.truth(id, in) * MM;
        for (int i = 0; i < session.clearance().rounds(); i++) {
            log.add(Decisions.round(session, phase, List.of(gauge), shop(), List.of(value), "")
                    .orElseThrow());
        }
    }

    /** Trial pieces go in, are named, perhaps wrongly at first, and the clearance is read; perhaps the step is undone. */
    private void trial(String id) {
        Clearance c = box.unit.clearance(id);
        Map<String, List<String>> named = new LinkedHashMap<>();
        for (Position p : c.positions()) {
            boolean fitted = box.interleaved && !p.equals(c.positions().get(0));
            if (!fitted && !in.containsKey(p.id())) {
                in.put(p.id(), p.fewest() == 0 && random.nextBoolean() ? List.of() : List.of(any(p)));
            }
            if (!fitted) {
                named.put(p.id(), Objects.requireNonNull(in.get(p.id())));
            }
        }
        if (random.nextInt(3) == 0) {
            Map<String, List<String>> wrong = new LinkedHashMap<>(named);
            Position own = c.positions().get(0);
            wrong.put(own.id(), List.of(any(own)));
            name(id, Phase.TRIAL, wrong);
            read(id, Phase.TRIAL);
        }
        name(id, Phase.TRIAL, named);
        read(id, Phase.TRIAL);
        String step = "T" + id.substring(1);
        log.add(new Entry.StepDone(step, ""));
        if (random.nextInt(5) == 0) {
            log.add(new Entry.StepUndone(step, "again"));
            assertThat(session(id).stage()).isEqualTo(Stage.READ_TRIAL);
            read(id, Phase.TRIAL);
            log.add(new Entry.StepDone(step, ""));
        }
        assertThat(session(id).stage()).isEqualTo(Stage.CHOOSE);
    }

    private void name(String id, Phase phase, Map<String, List<String>> tags) {
        Map<String, List<PieceIn>> pieces = new LinkedHashMap<>();
        tags.forEach((place, list) -> pieces.put(place, pieces(list)));
        log.add(Decisions.packIn(session(id), phase, pieces, shop(), NUMBER).orElseThrow());
    }

    /** A loose piece that is nowhere in. */
    private String any(Position place) {
        Shop shop = shop();
        List<String> free = shop.pieces().values().stream()
                .filter(p -> p.inDrawer() && p.family().equals(place.family()))
                .map(Shop.Piece::id)
                .filter(tag -> in.values().stream().noneMatch(list -> list.contains(tag)))
                .toList();
        return free.get(random.nextInt(free.size()));
    }

    /** Chooses in any order, again and again while a choice overtakes another; where that leads nowhere, together. */
    private void choose(List<String> clearances) {
        List<String> order = new ArrayList<>(clearances);
        Collections.shuffle(order, random);
        for (int pass = 0; pass < 4; pass++) {
            for (String id : order) {
                chooseAlone(id);
                forecastsAreTrue();
            }
        }
        for (List<String> group : SharedShims.groups(box.unit)) {
            if (group.stream().anyMatch(id -> session(id).stage() == Stage.CHOOSE)) {
                chooseTogether(group);
                forecastsAreTrue();
            }
        }
        clearances.forEach(id -> assertThat(session(id).stage()).as(id).isEqualTo(Stage.READ_LAST));
    }

    private void chooseAlone(String id) {
        Session session = session(id);
        if (session.stage() != Stage.CHOOSE) {
            return;
        }
        Advice advice = Objects.requireNonNull(session.advice());
        ShimPack.Result result = advice.result();
        if (result != null && !result.offers().isEmpty()) {
            log.add(Decisions.choose(session, pieces(result.offers().get(0).pieces()), "as good as it gets")
                    .orElseThrow());
        } else if (result == null && random.nextInt(3) == 0) {
            assertThat(Decisions.choose(session, pieces(List.of(any(advice.position()))), "")
                            .isOk())
                    .isFalse();
            log.add(Decisions.choose(session, pieces(List.of(any(advice.position()))), "the other will follow")
                    .orElseThrow());
        }
    }

    private void chooseTogether(List<String> group) {
        SharedShims together = SharedShims.asked(box.unit, job(), shop(), group).worked();
        assertThat(together.refusals()).isEmpty();
        List<String> way =
                Objects.requireNonNull(together.result()).offers().get(0).pieces();
        Map<String, List<PieceIn>> pieces = new LinkedHashMap<>();
        way.forEach(place -> {
            String tags = place.substring(place.indexOf('=') + 1);
            pieces.put(
                    place.substring(0, place.indexOf('=')),
                    pieces(tags.isEmpty() ? List.of() : List.of(tags.split("\\+"))));
        });
        SharedShims.choose(box.unit, job(), shop(), group, pieces, "as good as it gets")
                .orElseThrow()
                .forEach(log::add);
    }

    /** What a session foretells is what the pieces chosen give, places without a choice counted as they were read. */
    private void forecastsAreTrue() {
        Map<String, List<PieceIn>> chosen = FittedPieces.now(job());
        Map<String, List<String>> would = new LinkedHashMap<>(in);
        chosen.forEach((place, list) ->
                would.put(place, list.stream().map(PieceIn::piece).toList()));
        for (String id : ids()) {
            Forecast forecast = session(id).forecast();
            if (forecast != null) {
                assertThat(forecast.value()).as(id).isCloseTo(box.truth(id, would) * MM, within(1e-9));
            }
        }
    }

    /** Fits what is chosen, reads and accepts; a ring is tried, perhaps named wrongly, and exchanged while it reads out. */
    private void finish(String id) {
        if (!hasTrial(id)) {
            Position own = box.unit.clearance(id).positions().get(0);
            in.put(own.id(), List.of(any(own)));
            if (random.nextBoolean()) {
                name(id, Phase.FINAL, Map.of(own.id(), List.of(any(own))));
                read(id, Phase.FINAL);
            }
            name(id, Phase.FINAL, Map.of(own.id(), Objects.requireNonNull(in.get(own.id()))));
            read(id, Phase.FINAL);
            while (Objects.requireNonNull(session(id).closing()).verdict()
                    != shimwright.mechanics.conformity.Verdict.IN) {
                Advice advice = Objects.requireNonNull(session(id).advice());
                List<String> better =
                        Objects.requireNonNull(advice.result()).offers().get(0).pieces();
                log.add(Decisions.choose(session(id), pieces(better), "near").orElseThrow());
                in.put(own.id(), better);
                read(id, Phase.FINAL);
            }
        } else {
            FittedPieces.now(job())
                    .forEach((place, list) ->
                            in.put(place, list.stream().map(PieceIn::piece).toList()));
            assertThat(session(id).stage()).as(id).isEqualTo(Stage.READ_LAST);
            read(id, Phase.FINAL);
        }
        assertThat(session(id).stage()).isEqualTo(Stage.ACCEPT);
        log.add(Decisions.accept(session(id), "").orElseThrow());
        log.add(new Entry.StepDone("F" + id.substring(1), ""));
        assertThat(session(id).stage()).isEqualTo(Stage.DONE);
    }

    private void settled() {
        for (String id : ids()) {
            Session session = session(id);
            assertThat(session.stage()).as(id).isEqualTo(Stage.DONE);
            assertThat(box.truth(id, in) * MM)
                    .isBetween(session.clearance().lower(), session.clearance().upper());
            assertThat(Objects.requireNonNull(session.accepted()).what().value())
                    .isCloseTo(box.truth(id, in) * MM, within(1e-9));
        }
    }

    /** All is accepted, then the first pack is changed: what shares its place is open again, and all is set once more. */
    private void changeTheFirst() {
        Session first = session("c0");
        Advice advice = Objects.requireNonNull(first.advice());
        List<String> now = Objects.requireNonNull(in.get("p0"));
        advice.drawer().stream()
                .map(Shop.Piece::id)
                .filter(tag -> !now.contains(tag))
                .findFirst()
                .ifPresent(tag -> log.add(
                        Decisions.choose(first, pieces(List.of(tag)), "to see").orElseThrow()));
        List<String> trials = ids().stream().filter(this::hasTrial).toList();
        for (String id : trials) {
            boolean shares = box.unit.clearance(id).positions().stream().anyMatch(p -> p.id().equals("p0"));
            assertThat(session(id).stage() != Stage.DONE).as(id).isEqualTo(shares || depends(id));
        }
        forecastsAreTrue();
        ShimPack.Result result = Objects.requireNonNull(
                Objects.requireNonNull(session("c0").advice()).result());
        if (!result.offers().isEmpty()) {
            log.add(Decisions.choose(
                            session("c0"), pieces(result.offers().get(0).pieces()), "back")
                    .orElseThrow());
        }
        for (int pass = 0; pass < 4; pass++) {
            trials.forEach(this::chooseAlone);
        }
        boolean nothing = result.offers().isEmpty();
        for (List<String> group : SharedShims.groups(box.unit)) {
            if ((nothing && group.contains("c0"))
                    || group.stream().anyMatch(id -> session(id).stage() == Stage.CHOOSE)) {
                chooseTogether(group);
            }
        }
        FittedPieces.now(job())
                .forEach((place, list) ->
                        in.put(place, list.stream().map(PieceIn::piece).toList()));
        for (String id : ids()) {
            if (session(id).stage() != Stage.DONE) {
                read(id, Phase.FINAL);
                log.add(Decisions.accept(session(id), "").orElseThrow());
            }
        }
    }

    private boolean depends(String id) {
        return box.unit.clearance(id).dependsOn().stream().anyMatch(on -> on.equals("c0") || depends(on));
    }
}
