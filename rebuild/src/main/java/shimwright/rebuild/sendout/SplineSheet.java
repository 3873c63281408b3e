package shimwright.rebuild.sendout;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.Range;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.mechanics.tooth.SplineRework;
import shimwright.mechanics.working.Line;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.rebuild.job.Entry.Accept;

/**
 * The sheet that goes out with a worn spline: what is asked for, from the measured mate, and by which numbers it is accepted.
 *
 * @param work sentences of the sheet, by what they are about, in order
 * @param numbers for the drawing, SI
 * @param accept by what the return is accepted
 * @param working of size and going home
 */
public record SplineSheet(
        Map<String, String> work, Map<String, Double> numbers, List<Accept> accept, List<Line> working) {
    /** What is said of it beside the inputs of the worksheet {@code spline-rework}; all but the last two are needed. */
    public static final List<String> MORE = List.of(
            "length",
            "hubOutside",
            "shaftBore",
            "spare",
            "ceiling",
            "runOut",
            "keepCool",
            "cracks",
            "hardLeast",
            "hardMost");

    private static final Range METRES = new Range(0, 2);

    /** What was typed beside the worksheet, in SI. */
    private record More(
            double length,
            double hubOutside,
            double shaftBore,
            double spare,
            double ceiling,
            double runOut,
            OptionalDouble hardLeast,
            OptionalDouble hardMost) {}

    /**
     * The sheet of a case.
     *
     * @param in inputs of the worksheet as typed
     * @param more what is said beside it, by the names of {@link #MORE}
     * @return refused with every fault of both at once
     */
    public static Outcome<SplineSheet> of(Map<String, String> in, Map<String, String> more, UnitSystem system) {
        List<Refusal> refusals = new ArrayList<>();
        Map<String, Object> typed = new LinkedHashMap<>();
        in.forEach((name, text) -> {
            if (!text.isBlank()) {
                typed.put(name, text);
            }
        });
        Outcome<SplineRework.Case> read = SplineRework.SHEET.read(typed, system).map(bound -> bound.value());
        Outcome<Worked<SplineRework.Result>> worked = read.flatMap(SplineRework::work);
        Optional<SplineRework.Case> known =
                read.isOk() ? Optional.of(read.orElseThrow()) : SplineFaults.filled(typed, read.refusals(), system);
        worked.refusals().forEach(refusal -> refusals.add(inTheSheet(refusal)));
        known.filter(filled -> !read.isOk())
                .map(filled -> SplineFaults.beside(filled, read.refusals()))
                .orElse(List.of())
                .forEach(refusal -> refusals.add(inTheSheet(refusal)));
        More said = more(more, system, refusals);
        known.ifPresent(c -> beside(c, read.refusals(), said, refusals));
        return refusals.isEmpty()
                ? written(read.orElseThrow(), worked.orElseThrow(), said, more)
                : Outcome.refused(refusals);
    }

    private static Refusal inTheSheet(Refusal refusal) {
        return refusal.placed("in." + refusal.key(), refusal.place());
    }

    /** What hangs on both, the worksheet and what is said beside it, as far as either could be read. */
    private static void beside(SplineRework.Case c, List<Refusal> unread, More said, List<Refusal> refusals) {
        boolean asked = refusals.stream().anyMatch(one -> one.key().startsWith("more.hard"));
        if (!asked
                && SplineFaults.known(unread, "flanks")
                && hardened(c)
                && said.hardLeast().isEmpty()) {
            refusals.add(new Refusal(
                    "more.hardLeast",
                    "hardness after the work",
                    "the flanks were hardened and no hardness is asked for",
                    "Say the least hardness in HRC that it must come back with"));
        }
        if (said.hardMost().orElse(99) < said.hardLeast().orElse(0)) {
            refusals.add(
                    new Refusal("more.hardMost", "hardness", "the most is below the least", "Look which is which"));
        }
        boolean home = SplineFaults.known(
                        unread, "teeth", "module", "diametralPitch", "pressureAngle", "clearance", "tolerance")
                && refusals.stream().noneMatch(one -> SplineFaults.GOES_HOME.contains(one.key()));
        if (home) {
            SplineHome.of(fit(c, said), new Working()).refusals().stream()
                    .map(SplineFaults::ofHome)
                    .forEach(refusals::add);
        }
    }

    private static double module(SplineRework.Case c) {
        return Optional.ofNullable(c.module())
                .orElseGet(
                        () -> 0.0254 / Optional.ofNullable(c.diametralPitch()).orElse(1.0));
    }

    private static SplineHome.Fit fit(SplineRework.Case c, More said) {
        return new SplineHome.Fit(
                c.teeth() * module(c),
                c.pressureAngle(),
                c.clearance(),
                c.clearance() + c.tolerance(),
                said.length(),
                said.hubOutside(),
                said.shaftBore(),
                said.spare(),
                said.ceiling());
    }

    private static boolean hardened(SplineRework.Case c) {
        return c.flanks() == SplineRework.Flanks.CASE_HARDENED || c.flanks() == SplineRework.Flanks.INDUCTION_HARDENED;
    }

    private static More more(Map<String, String> more, UnitSystem system, List<Refusal> refusals) {
        for (String text : List.of("keepCool", "cracks")) {
            if (more.getOrDefault(text, "").isBlank()) {
                boolean cool = text.equals("keepCool");
                refusals.add(new Refusal(
                        "more." + text,
                        cool ? "what must not get hot" : "crack check",
                        "nothing typed",
                        cool
                                ? "Say what must stay cool, and how hot it may get"
                                : "Say how it is looked at for cracks, before and after"));
            }
        }
        return new More(
                length(more, "length", "length of engagement", system, refusals),
                length(more, "hubOutside", "outside of the hub", system, refusals),
                length(more, "shaftBore", "bore of the shaft, 0 where it is solid", system, refusals),
                length(more, "spare", "clearance wanted while it goes on", system, refusals),
                read(
                        more,
                        "ceiling",
                        "hottest that the hub may get",
                        Kind.TEMPERATURE,
                        new Range(273, 700),
                        system,
                        refusals),
                length(more, "runOut", "run-out that is allowed after the work", system, refusals),
                hardness(more, "hardLeast", system, refusals),
                hardness(more, "hardMost", system, refusals));
    }

    private static OptionalDouble hardness(
            Map<String, String> more, String name, UnitSystem system, List<Refusal> refusals) {
        return more.getOrDefault(name, "").isBlank()
                ? OptionalDouble.empty()
                : OptionalDouble.of(
                        read(more, name, "hardness in HRC", Kind.NUMBER, new Range(15, 70), system, refusals));
    }

    private static double length(
            Map<String, String> more, String name, String place, UnitSystem system, List<Refusal> refusals) {
        return read(more, name, place, Kind.LENGTH, METRES, system, refusals);
    }

    private static double read(
            Map<String, String> more,
            String name,
            String place,
            Kind kind,
            Range range,
            UnitSystem system,
            List<Refusal> refusals) {
        Outcome<Double> read = Quantities.parse(
                        more.getOrDefault(name, ""), kind, system.display(kind).unit(), place, range)
                .map(parsed -> parsed.si());
        read.refusals().forEach(refusal -> refusals.add(refusal.placed("more." + name, place)));
        return read.isOk() ? read.orElseThrow() : 0;
    }

    private static Outcome<SplineSheet> written(
            SplineRework.Case c, Worked<SplineRework.Result> worked, More said, Map<String, String> more) {
        SplineRework.Result result = worked.result();
        Working working = new Working();
        boolean shaft = c.part() == SplineRework.Part.SHAFT;
        return SplineHome.of(fit(c, said), working).map(home -> {
            List<Line> lines = new ArrayList<>(worked.working());
            lines.addAll(working.worked("").working());
            Map<String, Double> numbers = new LinkedHashMap<>();
            numbers.put("teeth", (double) c.teeth());
            numbers.put("module", module(c));
            numbers.put("angle", c.pressureAngle());
            numbers.put("pin", shaft ? c.shaftPin() : c.hubPin());
            numbers.put("arc", result.target());
            numbers.put("shaft", shaft ? 1.0 : 0.0);
            return new SplineSheet(
                    words(c, result, said, more, home, worked.cautions()),
                    numbers,
                    accept(c, result, said, more),
                    lines);
        });
    }

    private static Map<String, String> words(
            SplineRework.Case c,
            SplineRework.Result r,
            More said,
            Map<String, String> more,
            SplineHome home,
            List<String> cautions) {
        boolean shaft = c.part() == SplineRework.Part.SHAFT;
        String over = shaft ? "over two pins of " + mm(c.shaftPin()) : "between two pins of " + mm(c.hubPin());
        Map<String, String> words = new LinkedHashMap<>();
        words.put(
                "Asked for",
                "Build up the worn flanks of the " + (shaft ? "shaft" : "hub")
                        + " by welding, cut and finish the spline to its mate.");
        words.put(
                "Measured mate",
                shaft
                        ? "Hub between two pins of " + mm(c.hubPin()) + ": " + mm(c.betweenPins()) + ", space "
                                + mm(r.space()) + " on the pitch circle"
                        : "Shaft over two pins of " + mm(c.shaftPin()) + ": " + mm(c.overPins()) + ", tooth "
                                + mm(r.thickness()) + " on the pitch circle");
        words.put("As worn", (shaft ? mm(c.overPins()) + " " : mm(c.betweenPins()) + " ") + over);
        words.put(
                "Finished size",
                mm(Math.min(r.finished(), r.finishedLoose())) + " to " + mm(Math.max(r.finished(), r.finishedLoose()))
                        + " " + over);
        words.put("Stock", mm(r.perFlank()) + " to put back on each flank, and what the finish takes off on top");
        words.put("Keep cool", more.getOrDefault("keepCool", ""));
        words.put("Hardness", hardness(c, said));
        words.put("Straight", "Run-out up to " + mm(said.runOut()) + " between its bearing seats after all work");
        words.put("Cracks", more.getOrDefault("cracks", ""));
        words.put("Going home", home.say());
        words.put("Mind", String.join(" ", cautions));
        return words;
    }

    private static String hardness(SplineRework.Case c, More said) {
        String range = said.hardLeast().isEmpty()
                ? "as it is, no hardness is asked for"
                : said.hardMost().isEmpty()
                        ? "at least " + Math.round(said.hardLeast().getAsDouble()) + " HRC"
                        : Math.round(said.hardLeast().getAsDouble()) + " to "
                                + Math.round(said.hardMost().getAsDouble()) + " HRC";
        return c.hardnessPlan().isBlank() ? range : range + "; " + c.hardnessPlan();
    }

    private static List<Accept> accept(
            SplineRework.Case c, SplineRework.Result r, More said, Map<String, String> more) {
        boolean shaft = c.part() == SplineRework.Part.SHAFT;
        List<Accept> accept = new ArrayList<>();
        accept.add(new Accept(
                "pins",
                shaft ? "over two pins of " + mm(c.shaftPin()) : "between two pins of " + mm(c.hubPin()),
                Kind.LENGTH,
                Map.of(
                        "lower", Math.min(r.finished(), r.finishedLoose()),
                        "upper", Math.max(r.finished(), r.finishedLoose())),
                "at 20 °C, three places round and both ends; each reading counts"));
        accept.add(new Accept(
                "runout",
                "run-out",
                Kind.LENGTH,
                Map.of("upper", said.runOut()),
                "between its bearing seats, largest reading less smallest"));
        if (said.hardLeast().isPresent()) {
            Map<String, Double> limits = new LinkedHashMap<>();
            limits.put("lower", said.hardLeast().getAsDouble());
            said.hardMost().ifPresent(most -> limits.put("upper", most));
            accept.add(new Accept(
                    "hardness", "hardness in HRC", Kind.NUMBER, limits, "on the flank or beside it, three places"));
        }
        accept.add(new Accept("cracks", "no cracks", Kind.NUMBER, Map.of(), more.getOrDefault("cracks", "")));
        if (c.clearance() >= 0) {
            accept.add(new Accept(
                    "mate", "its mate goes on by hand in every place", Kind.NUMBER, Map.of(), "turn by turn"));
        }
        return List.copyOf(accept);
    }

    private static String mm(double metres) {
        return Quantities.print(metres, Kind.LENGTH, UnitSystem.METRIC);
    }
}
