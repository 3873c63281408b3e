package shimwright.rebuild.plan.blocking;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import shimwright.rebuild.plan.Order;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Item.Shape;
import shimwright.rebuild.unit.model.Section.Shaft;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Unit;

/**
 * What must go in before what, by the section drawing alone, compared with the steps of the unit file.
 *
 * <p>An item moves along its axis, from either end. One that is in already stops it where radii overlap on the same axis, or
 * where they are more together than the distance of two parallel axes and the play that the moving one has in its bore; a
 * wall of a casting stops what is larger than the largest thing drawn in it on that axis. Where an item that is in stops
 * every end that the shaft and the casting begun with leave open, the moving one must have gone in first. What lies in a
 * bore of a shaft goes in by the ends to which the bore is open, and with the shaft where one step puts both in. A wall in which
 * nothing but a shaft is drawn on an axis may have any hole there: it bears the file out or says nothing. What is not drawn and
 * what goes in sideways or askew is not seen, so the drawing proves an order that must be and never that one may be left out.
 */
public final class Blocking {
    private static final double TOUCH = 2e-5;

    private final RoundBodies bodies;
    private final Order order;
    private final Map<String, Set<String>> leading = new HashMap<>();
    private final Map<String, Step> fitted = new LinkedHashMap<>();
    private final Map<String, Step> built = new LinkedHashMap<>();
    private final Map<String, String> assembly;
    private final Set<String> base = new LinkedHashSet<>();
    private final Map<String, Item> items = new HashMap<>();
    /** Answers that hold for an item whatever else is in, once they were asked for. */
    private final Map<String, Boolean> fromHigh = new HashMap<>();

    private final Map<String, Boolean> fromLow = new HashMap<>();
    private final Map<String, List<Ring>> together = new HashMap<>();

    private Blocking(Unit unit) {
        this.bodies = RoundBodies.of(unit);
        this.order = Order.of(unit, Map.of());
        unit.type().items().forEach(item -> items.put(item.id(), item));
        for (Step step : order.steps().values()) {
            step.installs().forEach(item -> fitted.put(item, step));
            step.builds().forEach(item -> built.put(item, step));
            leading.put(step.id(), order.leadingTo(step.id()));
        }
        this.assembly = assemblies();
        order.steps().values().stream()
                .filter(step -> step.installs().stream().anyMatch(bodies.walls()::containsKey))
                .findFirst()
                .ifPresent(step -> base.addAll(step.installs()));
    }

    /**
     * Every pair of steps of which the drawing says which comes first, once, in the order of the file; none where it is a scheme.
     *
     * @param unit resolved unit; its usual sides of choices are taken
     */
    public static List<Finding> of(Unit unit) {
        return unit.type().section().scheme() ? List.of() : new Blocking(unit).findings();
    }

    /**
     * The same without comparing: pairs of items of which the first must go in before the second, for a unit without steps;
     * none where the drawing is a scheme. An item stands for itself, no sub-assembly is known.
     *
     * @param unit resolved unit
     * @param base items that are there from the start: the main case and what is cast with it
     */
    public static Map<String, Set<String>> items(Unit unit, Set<String> base) {
        if (unit.type().section().scheme()) {
            return Map.of();
        }
        Blocking blocking = new Blocking(unit);
        blocking.base.clear();
        blocking.base.addAll(base);
        Map<String, Set<String>> first = new LinkedHashMap<>();
        Set<String> drawn = blocking.obstacles();
        for (String moving : drawn) {
            for (String standing : drawn) {
                if (!moving.equals(standing)
                        && !blocking.item(moving).sideways()
                        && blocking.shutOut(moving, standing).isPresent()
                        && blocking.shutOut(standing, moving).isEmpty()) {
                    first.computeIfAbsent(moving, k -> new LinkedHashSet<>()).add(standing);
                }
            }
        }
        return first;
    }

    private Set<String> obstacles() {
        Set<String> drawn = new LinkedHashSet<>(bodies.rings().keySet());
        drawn.addAll(bodies.walls().keySet());
        return drawn;
    }

    private List<Finding> findings() {
        Map<String, Finding> byPair = new LinkedHashMap<>();
        for (String moving : bodies.rings().keySet()) {
            for (String standing : item(moving).sideways() ? Set.<String>of() : obstacles()) {
                steps(moving, standing)
                        .ifPresent(pair -> shutOut(moving, standing).ifPresent(why -> {
                            Finding found = finding(moving, standing, pair, why);
                            if (why.equals(Ring.NO_HOLE) && found.differs()) {
                                return;
                            }
                            byPair.merge(found.key(), found, (a, b) -> b.kind().compareTo(a.kind()) < 0 ? b : a);
                        }));
            }
        }
        List<String> file = List.copyOf(order.steps().keySet());
        List<Finding> sorted = new ArrayList<>(byPair.values());
        sorted.sort(Comparator.<Finding>comparingInt(f -> file.indexOf(f.then().id()))
                .thenComparingInt(f -> file.indexOf(f.first().id())));
        return List.copyOf(sorted);
    }

    /** The steps that put the two items where they are; none where one step does, or where only a sub-assembly knows. */
    private Optional<Pair> steps(String moving, String standing) {
        Step one = fitted.get(moving);
        Step two = fitted.get(standing);
        if (one == null || two == null) {
            return Optional.empty();
        }
        if (!one.equals(two)) {
            return Optional.of(new Pair(one, two));
        }
        Step built1 = built.getOrDefault(moving, one);
        Step built2 = built.getOrDefault(standing, two);
        return onOne(built1, built2) ? Optional.of(new Pair(built1, built2)) : Optional.empty();
    }

    /** For each building step the first of its sub-assembly: those that wait for one another, one by one. */
    private Map<String, String> assemblies() {
        Map<String, String> of = new HashMap<>();
        built.values().forEach(step -> of.put(step.id(), step.id()));
        for (Step step : Set.copyOf(built.values())) {
            for (String before :
                    order.before().getOrDefault(step.id(), Map.of()).keySet()) {
                String earlier = of.get(before);
                String later = of.get(step.id());
                if (earlier != null && later != null) {
                    of.replaceAll((id, first) -> first.equals(later) ? earlier : first);
                }
            }
        }
        return of;
    }

    /** True where two building steps make one sub-assembly. */
    private boolean onOne(Step one, Step two) {
        String first = assembly.get(one.id());
        return !one.equals(two) && first != null && first.equals(assembly.get(two.id()));
    }

    private record Pair(Step moving, Step standing) {}

    private boolean leads(Step earlier, Step later) {
        return leading.getOrDefault(later.id(), Set.of()).contains(earlier.id());
    }

    private Finding finding(String moving, String standing, Pair pair, String why) {
        boolean both = !item(standing).sideways() && shutOut(standing, moving).isPresent();
        boolean inOrder = leads(pair.moving(), pair.standing());
        boolean contrary = leads(pair.standing(), pair.moving());
        Finding.Kind kind;
        if (both) {
            Step later = contrary ? pair.moving() : pair.standing();
            boolean told = (inOrder || contrary) && !later.route().isBlank();
            kind = told ? Finding.Kind.AGREES : Finding.Kind.NEITHER;
            return contrary
                    ? new Finding(kind, pair.standing(), pair.moving(), name(standing), name(moving), why)
                    : new Finding(kind, pair.moving(), pair.standing(), name(moving), name(standing), why);
        }
        boolean routed = contrary && !pair.moving().route().isBlank();
        kind = inOrder || routed ? Finding.Kind.AGREES : contrary ? Finding.Kind.CONTRADICTED : Finding.Kind.MISSING;
        return new Finding(kind, pair.moving(), pair.standing(), name(moving), name(standing), why);
    }

    private Item item(String id) {
        return Objects.requireNonNull(items.get(id), id);
    }

    private String name(String item) {
        return item(item).name();
    }

    /** Why an item cannot go in once another is there; empty where it can, or where no end was open to begin with. */
    private Optional<String> shutOut(String item, String there) {
        String reason = "";
        for (boolean fromHighEnd : new boolean[] {true, false}) {
            if (open(item, fromHighEnd)) {
                Optional<String> stop = stop(item, there, fromHighEnd);
                if (stop.isEmpty()) {
                    return Optional.empty();
                }
                boolean weakest = reason.isEmpty() || stop.get().equals(Ring.NO_HOLE);
                reason = weakest ? stop.get() : reason;
            }
        }
        return reason.isEmpty() ? Optional.empty() : Optional.of(reason);
    }

    /** True where neither its shaft nor what is there from the start stops the item from that end. */
    private boolean open(String moving, boolean fromHighEnd) {
        return (fromHighEnd ? fromHigh : fromLow).computeIfAbsent(moving, item -> opens(item, fromHighEnd));
    }

    private boolean opens(String moving, boolean fromHighEnd) {
        Optional<Shaft> around = bodies.around(moving);
        boolean leftBehind = around.isPresent() && !with(moving, around.get());
        if (leftBehind
                && !bodies.rings().getOrDefault(moving, List.of()).stream()
                        .allMatch(ring -> RoundBodies.leaves(around.get(), ring, fromHighEnd))) {
            return false;
        }
        for (String there : base) {
            if (!there.equals(moving) && stop(moving, there, fromHighEnd).isPresent()) {
                return false;
            }
        }
        for (Ring ring : around.isPresent() ? List.<Ring>of() : together(moving)) {
            double own = Math.max(ring.inner(), bodies.shaftRadius(ring.line(), ring.from(), ring.to()));
            boolean beyond = ring.inner() > 0
                    && (fromHighEnd
                                    ? bodies.shaftRadius(ring.line(), ring.to(), Double.POSITIVE_INFINITY)
                                    : bodies.shaftRadius(ring.line(), Double.NEGATIVE_INFINITY, ring.from()))
                            > own + TOUCH;
            if (beyond && !carries(ring.line(), moving)) {
                return false;
            }
        }
        return true;
    }

    private boolean carries(String line, String item) {
        return Optional.ofNullable(bodies.shafts().get(line))
                .map(shaft -> shaft.item().equals(item))
                .orElse(false);
    }

    /** True where one step puts the item and the shaft in whose bore it lies in, so that they go in as one. */
    private boolean with(String item, Shaft shaft) {
        Step step = fitted.get(item);
        return step != null && step.equals(fitted.get(shaft.item()));
    }

    /** The rings that move with an item: its own, and on a sub-assembly those of all that one step put on that shaft. */
    private List<Ring> together(String item) {
        return together.computeIfAbsent(item, this::moved);
    }

    private List<Ring> moved(String item) {
        List<Ring> own = bodies.rings().getOrDefault(item, List.of());
        Optional<Shaft> around = bodies.around(item).filter(shaft -> with(item, shaft));
        if (around.isPresent()) {
            List<Ring> both = new ArrayList<>(own);
            both.addAll(bodies.rings().getOrDefault(around.get().item(), List.of()));
            return both;
        }
        Step step = built.get(item);
        if (step == null || step.equals(fitted.get(item)) || own.isEmpty()) {
            return own;
        }
        return step.builds().stream()
                .filter(other -> Objects.equals(fitted.get(other), fitted.get(item)))
                .flatMap(other -> bodies.rings().getOrDefault(other, List.of()).stream())
                .filter(ring -> ring.line().equals(own.get(0).line()))
                .toList();
    }

    private Optional<String> stop(String moving, String standing, boolean fromHighEnd) {
        List<Ring> still = new ArrayList<>(bodies.rings().getOrDefault(standing, List.of()));
        still.addAll(bodies.walls().getOrDefault(standing, List.of()));
        for (Ring ring : together(moving)) {
            for (Ring other : still) {
                double apart = bodies.apart(ring.line(), other.line());
                boolean beyond =
                        fromHighEnd ? other.middle() > ring.middle() + TOUCH : other.middle() < ring.middle() - TOUCH;
                boolean judged = !Double.isNaN(apart) && (apart == 0 || (round(moving) && round(standing)));
                if (beyond && judged) {
                    String clash = ring.clash(other, apart, apart == 0 ? 0 : play(moving, ring, other), TOUCH);
                    if (clash != null) {
                        return Optional.of(clash);
                    }
                }
            }
        }
        return Optional.empty();
    }

    /** A plate is drawn as a ring and is none, so it is judged on its own axis alone. */
    private boolean round(String item) {
        return item(item).shape() != Shape.PLATE;
    }

    /** Sideways play of an item while one of its rings passes another: what its bore leaves on the shaft there. */
    private double play(String moving, Ring ring, Ring other) {
        double length = ring.to() - ring.from();
        double shaft = bodies.shaftRadius(ring.line(), other.from() - length, other.to() + length);
        double bore = together(moving).stream().mapToDouble(Ring::inner).min().orElse(0);
        return Math.max(0, bore - shaft);
    }
}
