package shimwright.rebuild.clearance;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.DoubleStream;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.axial.shim.Drawer;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.working.Line;
import shimwright.mechanics.working.Worked;
import shimwright.rebuild.clearance.Reading.Measured;
import shimwright.rebuild.clearance.Session.Advice;
import shimwright.rebuild.clearance.Session.Stage;
import shimwright.rebuild.job.Entry.PackChosen;
import shimwright.rebuild.job.Entry.PieceIn;
import shimwright.rebuild.job.FittedPieces;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.Shop;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.Clearance.Position;
import shimwright.rebuild.unit.model.Unit;

/**
 * Clearances that share shim positions are chosen together, from one drawer.
 *
 * @param clearances the clearances, in setting order
 * @param places every shim position of theirs once
 * @param result ways to serve them all, best first; null where they cannot be chosen yet
 * @param working the lines of the calculation
 * @param refusals why they cannot be chosen yet, all reasons
 */
public record SharedShims(
        List<String> clearances,
        List<Position> places,
        Drawer.@Nullable Result result,
        List<Line> working,
        List<Refusal> refusals) {

    private static final int OFFERS = 3;
    /** What of a micrometer's uncertainty is reading its step of 1 µm twice, and new with every piece; common practice, no source. */
    private static final double STEP = 0.000001 / Math.sqrt(6);

    /** Parts of a reading's budget that the indicator itself brings to every reading alike. */
    private static final Set<String> INDICATOR = Set.of("error limit", "retrace");

    /** Family of the pieces that a one-way step has closed over: they stay where they are. */
    private static final String CLOSED = "closed ";

    /** Groups of clearances that share positions; one that shares none is not in any. */
    public static List<List<String>> groups(Unit unit) {
        List<List<String>> groups = new ArrayList<>();
        Set<String> seen = new LinkedHashSet<>();
        for (String id : unit.type().settingOrder()) {
            if (seen.contains(id)) {
                continue;
            }
            Set<String> group = new LinkedHashSet<>(Set.of(id));
            boolean grown = true;
            while (grown) {
                grown = unit.type().settingOrder().stream()
                        .filter(other ->
                                !group.contains(other) && group.stream().anyMatch(g -> share(unit, g, other)))
                        .map(group::add)
                        .reduce(false, (a, b) -> a || b);
            }
            seen.addAll(group);
            if (group.size() > 1) {
                groups.add(unit.type().settingOrder().stream()
                        .filter(group::contains)
                        .toList());
            }
        }
        return List.copyOf(groups);
    }

    private static boolean share(Unit unit, String a, String b) {
        Set<String> of = new LinkedHashSet<>();
        unit.clearance(a).positions().forEach(p -> of.add(p.id()));
        return unit.clearance(b).positions().stream().anyMatch(p -> of.contains(p.id()));
    }

    /**
     * True where a whole group is read and its packs are not all chosen, or one of them is no longer proven.
     *
     * @param unit as the job builds it
     * @param session how each of its clearances stands
     */
    public static boolean due(Unit unit, Function<String, Session> session) {
        for (List<String> group : groups(unit)) {
            List<Session> sessions = group.stream().map(session).toList();
            boolean read = sessions.stream().allMatch(one -> one.advice() != null);
            if (read && sessions.stream().anyMatch(one -> one.chosen().isEmpty() || one.stage() == Stage.CHOOSE)) {
                return true;
            }
        }
        return false;
    }

    /**
     * The choice for one group, not yet made: all that it depends on.
     *
     * @param clearances the clearances, in setting order
     * @param places every shim position of theirs once
     * @param drawer what is to be chosen from; null where they cannot be chosen yet
     * @param refusals why they cannot be chosen yet, all reasons
     */
    public record Asked(
            List<String> clearances, List<Position> places, Drawer.@Nullable Case drawer, List<Refusal> refusals) {
        /** The choice; of a full drawer it takes seconds. */
        public SharedShims worked() {
            if (drawer == null) {
                return new SharedShims(clearances, places, null, List.of(), refusals);
            }
            Outcome<Worked<Drawer.Result>> outcome = Drawer.work(drawer);
            if (outcome instanceof Outcome.Ok<Worked<Drawer.Result>> ok) {
                return new SharedShims(
                        clearances, places, ok.value().result(), ok.value().working(), List.of());
            }
            return new SharedShims(clearances, places, null, List.of(), outcome.refusals());
        }
    }

    /** What there is to choose for one group as it stands; quickly told. */
    public static Asked asked(Unit unit, Job job, Shop shop, List<String> group) {
        return asked(unit, job, shop, group, id -> Sessions.of(unit, job, shop, id));
    }

    /** The same, of sessions that are at hand. */
    public static Asked asked(Unit unit, Job job, Shop shop, List<String> group, Function<String, Session> standing) {
        List<Refusal> refusals = new ArrayList<>();
        Map<String, Position> places = new LinkedHashMap<>();
        List<Drawer.Case.Need> needs = new ArrayList<>();
        List<Drawer.Case.Effect> effects = new ArrayList<>();
        List<Drawer.Case.ReadWith> readWith = new ArrayList<>();
        Map<String, List<PieceIn>> fitted = FittedPieces.now(job);
        Set<String> closed = new LinkedHashSet<>();
        List<Session> sessions = group.stream().map(standing).toList();
        String common = common(sessions);
        for (Session session : sessions) {
            String id = session.clearance().id();
            String own = session.clearance().positions().get(0).id();
            if (!session.change().open() && fitted.containsKey(own)) {
                closed.add(own);
            }
            session.clearance().positions().forEach(p -> places.putIfAbsent(p.id(), p));
            need(session, common, refusals, readWith).ifPresent(needs::add);
            session.clearance().positions().forEach(p -> effects.add(new Drawer.Case.Effect(id, p.id(), p.effect())));
        }
        List<Position> at = List.copyOf(places.values());
        if (!refusals.isEmpty()) {
            return new Asked(group, at, null, List.copyOf(refusals));
        }
        List<Drawer.Case.Seat> seats =
                at.stream().map(p -> seat(p, closed, fitted)).toList();
        List<Drawer.Case.Loose> pieces = new ArrayList<>(loose(unit, job, shop, at, closed));
        closed.forEach(place -> fitted.getOrDefault(place, List.of())
                .forEach(p -> pieces.add(new Drawer.Case.Loose(p.piece(), CLOSED + place, p.thickness(), p.u()))));
        double micrometer = micrometer(pieces, readWith);
        Drawer.Case drawer = new Drawer.Case(
                needs,
                seats,
                effects,
                pieces.stream().map(p -> own(p, micrometer)).toList(),
                PackAdviser.RULE,
                OFFERS,
                micrometer,
                readWith.stream().map(p -> own(p, micrometer)).toList());
        return new Asked(group, at, drawer, List.of());
    }

    /** A place; one that a one-way step has closed over keeps what is in it. */
    private static Drawer.Case.Seat seat(Position p, Set<String> closed, Map<String, List<PieceIn>> fitted) {
        int in = fitted.getOrDefault(p.id(), List.of()).size();
        return closed.contains(p.id())
                ? new Drawer.Case.Seat(p.id(), CLOSED + p.id(), 0, in, Math.max(1, in), 0)
                : new Drawer.Case.Seat(p.id(), p.family(), 0, p.fewest(), p.most(), 0);
    }

    private static List<Drawer.Case.Loose> loose(Unit unit, Job job, Shop shop, List<Position> at, Set<String> closed) {
        Set<String> open = new LinkedHashSet<>();
        at.stream().map(Position::id).filter(id -> !closed.contains(id)).forEach(open::add);
        List<String> free = PackAdviser.in(job, open);
        return at.stream()
                .filter(p -> open.contains(p.id()))
                .map(Position::family)
                .distinct()
                .flatMap(family -> shop.usable(family, unit.shimFamily(family).spread(), free).stream())
                .map(p -> new Drawer.Case.Loose(p.id(), p.family(), p.thickness(), p.u()))
                .toList();
    }

    /** What the one micrometer may be off by for all pieces alike: no more than the least that any of them may. */
    private static double micrometer(List<Drawer.Case.Loose> pieces, List<Drawer.Case.ReadWith> readWith) {
        double least = DoubleStream.concat(
                        pieces.stream().mapToDouble(Drawer.Case.Loose::u),
                        readWith.stream().mapToDouble(Drawer.Case.ReadWith::u))
                .min()
                .orElse(0);
        return less(least, STEP);
    }

    private static double less(double whole, double part) {
        return Math.sqrt(Math.max(0, whole * whole - part * part));
    }

    private static Drawer.Case.Loose own(Drawer.Case.Loose p, double micrometer) {
        return new Drawer.Case.Loose(p.id(), p.family(), p.thickness(), less(p.u(), micrometer));
    }

    private static Drawer.Case.ReadWith own(Drawer.Case.ReadWith p, double micrometer) {
        return new Drawer.Case.ReadWith(p.need(), p.place(), p.piece(), p.thickness(), less(p.u(), micrometer));
    }

    /** The clearance as read, and the pieces it was read with. */
    private static Optional<Drawer.Case.Need> need(
            Session session, String common, List<Refusal> refusals, List<Drawer.Case.ReadWith> readWith) {
        Clearance clearance = session.clearance();
        Advice advice = session.advice();
        if (advice == null) {
            refusals.add(Refusal.at(
                    clearance.id() + " " + clearance.name(),
                    session.trial().measured() == null
                            ? "it is not read with trial pieces yet"
                            : "its trial reading is not settled",
                    "Read it first: they are chosen together"));
            return Optional.empty();
        }
        Reading from = advice.from();
        Measured measured = Objects.requireNonNull(from.measured());
        for (Position position : clearance.positions()) {
            from.pack()
                    .getOrDefault(position.id(), List.of())
                    .forEach(piece -> readWith.add(new Drawer.Case.ReadWith(
                            clearance.id(), position.id(), piece.piece(), piece.thickness(), piece.u())));
        }
        return Optional.of(new Drawer.Case.Need(
                clearance.id(),
                measured.value(),
                measured.u(),
                clearance.lower(),
                clearance.upper(),
                clearance.aim(),
                gauge(session).equals(common) ? Math.min(measured.u(), indicator(measured)) : 0));
    }

    /** The gauge that most of them are read with; empty where none is. */
    private static String common(List<Session> sessions) {
        List<String> gauges = sessions.stream().map(SharedShims::gauge).toList();
        return gauges.stream()
                .max(Comparator.comparingInt(gauge -> Collections.frequency(gauges, gauge)))
                .orElse("");
    }

    private static String gauge(Session session) {
        return session.gauge() == null ? "" : session.gauge().id();
    }

    /** What the indicator brings to every reading alike. */
    private static double indicator(Measured measured) {
        return Math.sqrt(measured.budget().contributions().stream()
                .filter(part -> INDICATOR.contains(part.name()))
                .mapToDouble(part -> part.part() * part.part())
                .sum());
    }

    /**
     * The entries that choose packs for a whole group: each clearance is predicted with all the packs chosen.
     *
     * @param pieces the pieces by position, every position of the group
     * @param because why, where one of them is not proven to come out in
     * @return refused with a place left empty, with one piece in two places, or as {@link Decisions#choose} refuses
     */
    public static Outcome<List<PackChosen>> choose(
            Unit unit, Job job, Shop shop, List<String> group, Map<String, List<PieceIn>> pieces, String because) {
        List<Refusal> faults = faults(unit, group, pieces);
        if (!faults.isEmpty()) {
            return Outcome.refused(faults);
        }
        List<Outcome<PackChosen>> chosen = new ArrayList<>();
        for (String id : group) {
            Session session = Sessions.with(unit, job, shop, id, pieces);
            String own = session.clearance().positions().get(0).id();
            chosen.add(Decisions.choose(session, pieces.getOrDefault(own, List.of()), because)
                    .reworded(no -> no.within("pack") ? no.placed("at." + own, no.place()) : no));
        }
        return Outcome.all(chosen);
    }

    private static List<Refusal> faults(Unit unit, List<String> group, Map<String, List<PieceIn>> pieces) {
        Map<String, Refusal> faults = new LinkedHashMap<>();
        Map<String, String> taken = new LinkedHashMap<>();
        for (String id : group) {
            for (Position place : unit.clearance(id).positions()) {
                List<PieceIn> pack = pieces.getOrDefault(place.id(), List.of());
                if (pack.isEmpty() && place.fewest() > 0) {
                    faults.put(
                            place.id(),
                            new Refusal(
                                    "at." + place.id(),
                                    place.where(),
                                    "no piece chosen",
                                    "Choose one for every place"));
                }
                for (PieceIn piece : pack) {
                    String other = taken.putIfAbsent(piece.piece(), place.id());
                    if (other != null && !other.equals(place.id())) {
                        faults.put(
                                piece.piece(),
                                new Refusal(
                                        "at." + place.id(),
                                        "piece " + piece.piece(),
                                        "it is chosen for two places",
                                        "Take another for one of them"));
                    }
                }
            }
        }
        return List.copyOf(faults.values());
    }
}
