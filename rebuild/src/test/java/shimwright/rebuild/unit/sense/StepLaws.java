package shimwright.rebuild.unit.sense;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import shimwright.rebuild.plan.Order;
import shimwright.rebuild.unit.model.Bearing;
import shimwright.rebuild.unit.model.Consumable;
import shimwright.rebuild.unit.model.Fastener;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Item.Shape;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Step.Danger;
import shimwright.rebuild.unit.model.Unit;
import shimwright.rebuild.unit.model.UnitType;
import shimwright.rebuild.unit.model.UnitType.Check;
import shimwright.rebuild.unit.model.UnitType.CheckKind;
import shimwright.rebuild.unit.model.UnitType.Window;

/** What a mechanic would trip over in the steps of a unit file; each law gives one sentence an offence. */
final class StepLaws {
    /** Words of an order that need stuff, and what the stuff is called. */
    private static final Map<String, String> STUFF = Map.of(
            "\\blocker\\b", "locker",
            "\\bsealant\\b", "sealant",
            "\\bsilicone\\b", "silicone",
            "\\bgrease\\b", "grease",
            "\\b[Oo]il (the|both|all)\\b|\\boiled\\b|\\b[Ff]ill \\d", "oil",
            "\\b[Mm]arking compound\\b", "marking",
            "\\bfreezer\\b", "freezer");

    private static final Map<CheckKind, String> GAUGES = Map.of(
            CheckKind.LENGTH, "micrometer|gauge|indicator|feeler|caliper|\\brule\\b",
            CheckKind.TORQUE, "beam|torque",
            CheckKind.FORCE, "balance|spring tester",
            CheckKind.PRESSURE, "air test|pressure");

    private static final List<String> COUNTS = List.of(
            "no",
            "one",
            "two",
            "three",
            "four",
            "five",
            "six",
            "seven",
            "eight",
            "nine",
            "ten",
            "eleven",
            "twelve",
            "thirteen",
            "fourteen",
            "fifteen",
            "sixteen");

    private final Unit unit;
    private final UnitType whole;
    private final Order order;

    /** The laws for one variant of a unit type. */
    StepLaws(UnitType whole, String variant) {
        this.whole = whole;
        this.unit = whole.resolve(variant);
        this.order = Order.of(unit, Map.of());
    }

    private List<Step> steps() {
        return unit.type().steps();
    }

    private List<Check> checks(Step step) {
        return step.hold().isEmpty() ? List.of() : unit.holdPoint(step.hold()).checks();
    }

    private List<Item> items(Step step) {
        return unit.itemsFor(step.id());
    }

    private List<Window> windows(Step step) {
        return step.windows().stream().map(unit::window).toList();
    }

    private static boolean found(String regex, String text) {
        return Pattern.compile(regex).matcher(text).find();
    }

    /** What the order or its readings name must be among the stuff laid out; a locked bolt needs its locker there. */
    List<String> stuff() {
        List<String> odd = new ArrayList<>();
        for (Step step : steps()) {
            List<Consumable> laid =
                    step.consumables().stream().map(unit::consumable).toList();
            String text =
                    step.todo() + " " + checks(step).stream().map(Check::what).collect(Collectors.joining(" "));
            STUFF.forEach((word, name) -> {
                if (found(word, text) && laid.stream().noneMatch(c -> c.name().contains(name))) {
                    odd.add(step.id() + " names " + name + " and lays none out");
                }
            });
            for (String id : step.fasteners()) {
                String locker = unit.fastener(id).locker();
                if (!locker.isEmpty() && !step.consumables().contains(locker)) {
                    odd.add(step.id() + " shows " + id + " with " + locker + " and lays none out");
                }
            }
        }
        return odd;
    }

    /** What a hold point names belongs to every step that stands in it. */
    List<String> holds() {
        List<String> odd = new ArrayList<>();
        for (Step step : steps()) {
            Set<String> before = order.leadingTo(step.id());
            for (Check check : checks(step)) {
                Matcher other = Pattern.compile("\\b[A-Z]\\d{2}[AB]?\\b").matcher(check.what());
                while (other.find()) {
                    String id = other.group();
                    boolean read = before.contains(id)
                            || before.stream().anyMatch(s -> unit.step(s).hold().equals(id));
                    if (unit.findStep(id).isPresent()
                                    == unit.type().holdPoints().stream().anyMatch(h -> h.id().equals(id))
                            || !read) {
                        odd.add(step.id() + " is held against " + id + ", which does not come before it");
                    }
                }
                for (String ordinal : List.of("first", "second", "third")) {
                    if (found("\\b" + ordinal + " (split|trial|reading)", check.what())
                            && !step.todo().contains(ordinal)) {
                        odd.add(step.id() + " is asked about the " + ordinal);
                    }
                }
                Matcher seal = Pattern.compile("(\\d+) on \\d+\\.\\d\\d").matcher(check.what());
                while (seal.find()) {
                    String size = seal.group(1);
                    if (items(step).stream().noneMatch(item -> found("\\b" + size + "x", item.name()))) {
                        odd.add(step.id() + " is asked about a lip of " + size + " and fits none");
                    }
                }
            }
        }
        return odd;
    }

    /** Rings that are read together have a field each, and a sentence about both has two answers. */
    List<String> fields() {
        List<String> odd = new ArrayList<>();
        Set<Shape> rings = Set.of(Shape.TAPER_CONE, Shape.TAPER_CUP, Shape.ROLLER_INNER, Shape.ROLLER_OUTER);
        for (Step step : steps()) {
            List<Check> seated = checks(step).stream()
                    .filter(c -> found("\\brim\\b|\\bdepth of\\b|(feeler|blade) enters", c.what()))
                    .toList();
            long fitted = items(step).stream()
                    .filter(item -> rings.contains(item.shape()) && !item.trial())
                    .count();
            if (!seated.isEmpty() && seated.size() < fitted) {
                odd.add(step.id() + " fits " + fitted + " rings and has " + seated.size() + " fields");
            }
            boolean several = Stream.of(step.todo().split("\\. "))
                    .anyMatch(s -> found("^(Prove|Check|Gauge|Read) (that )?(both|all three|all)\\b", s));
            boolean each = checks(step).stream().allMatch(c -> found("\\bboth\\b|\\ball\\b|worst", c.what()));
            if (several && checks(step).size() < 2 && !each) {
                odd.add(step.id() + " reads several and has one field");
            }
        }
        return odd;
    }

    /** What an item is called that a reading names, is in the hand or in the unit by then. */
    List<String> atHand() {
        List<String> odd = new ArrayList<>();
        for (Step step : steps()) {
            Set<String> there = new LinkedHashSet<>();
            Stream.concat(Stream.of(step.id()), order.leadingTo(step.id()).stream())
                    .map(unit::step)
                    .forEach(s -> {
                        there.addAll(s.builds());
                        there.addAll(s.installs());
                    });
            for (Check check : checks(step)) {
                unit.type().items().stream()
                        .filter(item -> found(Pattern.quote(item.name()) + "(?! seat)", check.what()))
                        .filter(item -> !there.contains(item.id()))
                        .filter(item -> there.stream()
                                .noneMatch(in ->
                                        check.what().contains(unit.item(in).name())
                                                && unit.item(in).name().contains(item.name())))
                        .forEach(item -> odd.add(step.id() + " reads " + item.name() + ", which nobody has in hand"));
            }
        }
        return odd;
    }

    /** The count and the torque that an order says are those of its bolts; a group of bolts sits in one place. */
    List<String> bolts() {
        List<String> odd = new ArrayList<>();
        for (Fastener fastener : unit.type().fasteners()) {
            if (found("[a-z] \\d+(,|$)", fastener.where())) {
                odd.add(fastener.id() + " counts bolts of several places: " + fastener.where());
            }
        }
        Set<Double> known =
                unit.type().fasteners().stream().map(Fastener::torque).collect(Collectors.toSet());
        for (Step step : steps()) {
            List<Fastener> tightened =
                    step.fasteners().stream().map(unit::fastener).toList();
            Matcher counted = Pattern.compile("\\b([a-z]+) (?:dry )?(?:bolts?|screws?)\\b")
                    .matcher(step.todo().toLowerCase(Locale.ROOT));
            while (counted.find()) {
                int count = COUNTS.indexOf(counted.group(1));
                if (count > 0 && tightened.size() > 0 && tightened.stream().noneMatch(f -> f.quantity() == count)) {
                    odd.add(step.id() + " says " + counted.group() + ", its groups have others");
                }
            }
            Matcher torque =
                    Pattern.compile("(?<!\\d )(\\d+(?:\\.\\d+)?) N\\.m").matcher(step.todo());
            while (torque.find()) {
                double said = Double.parseDouble(torque.group(1));
                boolean right = tightened.isEmpty()
                        ? known.contains(said) || step.undo() == Step.Undo.HEAT
                        : tightened.stream()
                                .anyMatch(
                                        f -> f.torque() == said || found("\\b" + torque.group(1) + "\\b", f.pattern()));
                if (!right) {
                    odd.add(step.id() + " says " + torque.group() + ", which is none of its bolts'");
                }
            }
            String words = (step.todo() + " "
                            + items(step).stream().map(Item::name).collect(Collectors.joining(" ")))
                    .toLowerCase(Locale.ROOT);
            for (Fastener fastener : tightened) {
                boolean here = Stream.of(
                                fastener.where().toLowerCase(Locale.ROOT).split("[^a-z]+"))
                        .anyMatch(word -> word.length() > 2 && words.contains(word));
                if (!here) {
                    odd.add(step.id() + " tightens " + fastener.id() + " (" + fastener.where()
                            + ") and never names it");
                }
            }
        }
        return odd;
    }

    /** Nothing of another variant stands in what is shown of this one; only a trap may warn of it. */
    List<String> otherVariants() {
        Set<String> other = new LinkedHashSet<>();
        whole.variants().keySet().stream()
                .filter(v -> !v.equals(unit.variant()))
                .forEach(v -> {
                    other.add("variant " + v);
                    for (Item item : whole.resolve(v).type().items()) {
                        other.add(item.part());
                        other.add(item.name());
                    }
                });
        unit.type().items().forEach(item -> {
            other.remove(item.part());
            other.remove(item.name());
        });
        other.remove("");
        List<String> shown = new ArrayList<>();
        for (Step step : steps()) {
            shown.add(step.todo());
            shown.add(step.route());
            step.because().values().forEach(r -> shown.add(unit.type().reasons().getOrDefault(r, "")));
            checks(step).forEach(c -> shown.add(c.what()));
            windows(step).forEach(w -> shown.add(w.name() + " " + w.why()));
        }
        unit.type().fasteners().forEach(f -> shown.add(f.where() + " " + f.note()));
        unit.type().symptoms().forEach(s -> shown.addAll(s.causes().keySet()));
        return shown.stream()
                .flatMap(
                        text -> other.stream().filter(text::contains).map(name -> "\"" + text + "\" speaks of " + name))
                .toList();
    }

    /** What is heated, chilled, glued or sealed is joined in the same step or in the one that closes its window. */
    List<String> hot() {
        List<String> odd = new ArrayList<>();
        for (Step step : steps()) {
            boolean hot = step.dangers().contains(Danger.HEAT)
                    || (found("\\b\\d+ degC\\b(?! again cold)", step.todo())
                            && found("[Hh]eat|oven|hot|at 1\\d\\d", step.todo()));
            boolean opens =
                    step.consumables().stream().anyMatch(c -> unit.consumable(c).open() > 0);
            if (!hot && !opens) {
                continue;
            }
            if (step.windows().isEmpty()) {
                odd.add(step.id() + " is hot or wet and in no window");
            }
            boolean joins = !step.installs().isEmpty()
                    || !step.builds().isEmpty()
                    || !step.fasteners().isEmpty();
            for (Window window : windows(step)) {
                boolean spans = !window.opens().isEmpty();
                if (spans && !Set.of(window.opens(), window.closes()).contains(step.id()) && !joins) {
                    odd.add(step.id() + " stands in " + window.id() + " which another opens");
                }
                if (!spans && !joins) {
                    odd.add(step.id() + " is hot or wet, joins nothing and opens no window");
                }
                if (!spans && opens && step.duration() > window.longest()) {
                    odd.add(step.id() + " takes longer than its window " + window.id());
                }
            }
            boolean locks = step.consumables().stream()
                    .anyMatch(c -> unit.consumable(c).name().contains("locker"));
            if (locks && hot) {
                odd.add(step.id() + " puts locker on what is hot");
            }
        }
        return odd;
    }

    /** A size in the words of a window is that of something fitted at the step. */
    List<String> windowSizes() {
        List<String> odd = new ArrayList<>();
        for (Step step : steps()) {
            String why = windows(step).stream().map(Window::why).collect(Collectors.joining(" "));
            Matcher size = Pattern.compile("(?:[Bb]ores?|hub|wheel) of (\\d+)(?: and (\\d+))?")
                    .matcher(why);
            while (size.find()) {
                for (int i = 1; i <= 2; i++) {
                    String one = size.group(i);
                    if (one != null && !sizes(step).contains(Integer.valueOf(one))) {
                        odd.add(step.id() + " shows a bore of " + one + " and fits none");
                    }
                }
            }
        }
        return odd;
    }

    private Set<Integer> sizes(Step step) {
        Set<Integer> sizes = new LinkedHashSet<>();
        Set<String> ids = items(step).stream().map(Item::id).collect(Collectors.toSet());
        for (Bearing bearing : unit.type().bearings()) {
            if (bearing.items().stream().anyMatch(ids::contains)) {
                Matcher number = Pattern.compile("(\\d+)x(\\d+)x").matcher(bearing.size());
                while (number.find()) {
                    sizes.add(Integer.valueOf(number.group(1)));
                    sizes.add(Integer.valueOf(number.group(2)));
                }
            }
        }
        items(step).stream()
                .flatMap(item -> item.diameters().stream())
                .forEach(d -> sizes.add((int) Math.round(d * 1000)));
        return sizes;
    }

    /** What is measured has a gauge laid out for it. */
    List<String> gauges() {
        List<String> odd = new ArrayList<>();
        for (Step step : steps()) {
            for (Check check : checks(step)) {
                String wanted = GAUGES.getOrDefault(check.kind(), "");
                if (!wanted.isEmpty() && step.tools().stream().noneMatch(t -> found(wanted, unit.tool(t)))) {
                    odd.add(step.id() + " reads \"" + check.what() + "\" with no gauge for it");
                }
            }
        }
        return odd;
    }
}
