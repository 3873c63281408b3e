package shimwright.rebuild.sendout;

import static shimwright.rebuild.sendout.SentFacts.mm;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.mechanics.quantity.Units;
import shimwright.mechanics.working.Line;
import shimwright.mechanics.working.Working;
import shimwright.rebuild.job.Entry.Accept;

/**
 * The sheet that goes out with work other than on a spline: what is asked for, from its measured mate where it has one, and by which
 * numbers it is accepted.
 *
 * @param work sentences of the sheet, by what they are about, in order
 * @param numbers for the drawing, SI
 * @param accept by what the return is accepted
 * @param working of the finished size
 */
public record PlainSheet(
        Map<String, String> work, Map<String, Double> numbers, List<Accept> accept, List<Line> working) {
    /** Roughness of a lip seal's track, µm: makers' guides, as the sheet of the seal seat has it. */
    private static final double SMOOTHEST = 0.2;

    private static final double ROUGHEST = 0.8;

    /**
     * The sheet of a case.
     *
     * @param typed what is said, by the names of {@link OtherWork#facts}
     * @param readings what was read of those that are typed as readings, by name, SI
     * @return refused with every fault at once
     */
    public static Outcome<PlainSheet> of(
            OtherWork work, Map<String, String> typed, Map<String, List<Double>> readings, UnitSystem system) {
        List<Refusal> refusals = new ArrayList<>();
        SentFacts facts = SentFacts.of(work, typed, readings, system, refusals);
        if (!facts.read("mate").isEmpty()
                && facts.maybe("mateU").isEmpty()
                && refusals.stream().noneMatch(one -> one.key().equals("more.mateU"))) {
            refusals.add(new Refusal(
                    "more.mateU", "the mate", "its uncertainty is not known", "Say what a reading may be off by"));
        }
        if (facts.maybe("hardMost").orElse(99) < facts.maybe("hardLeast").orElse(0)) {
            refusals.add(
                    new Refusal("more.hardMost", "hardness", "the most is below the least", "Look which is which"));
        }
        Working working = new Working();
        Optional<FinishedSize> size = Optional.empty();
        if (work.round() && FinishedSize.asks(work).stream().allMatch(facts::has)) {
            Outcome<FinishedSize> found = FinishedSize.of(work, facts, working);
            refusals.addAll(found.refusals());
            size = found.isOk() ? Optional.of(found.orElseThrow()) : Optional.empty();
        } else if (work.round() && refusals.isEmpty()) {
            refusals.add(new Refusal("more.mate", "the mate", "its readings cannot be read", "Type them again"));
        }
        return refusals.isEmpty()
                ? Outcome.ok(new PlainSheet(
                        words(work, facts, size),
                        numbers(work, facts, size),
                        accept(work, facts, size),
                        working.worked("").working()))
                : Outcome.refused(refusals);
    }

    private static Map<String, Double> numbers(OtherWork work, SentFacts facts, Optional<FinishedSize> size) {
        Map<String, Double> numbers = new LinkedHashMap<>();
        numbers.put(work.shape().name().toLowerCase(java.util.Locale.ROOT), 1.0);
        size.ifPresent(found -> {
            numbers.put("lower", found.lower());
            numbers.put("upper", found.upper());
        });
        for (String name : List.of("length", "round", "runOut", "flat", "thick", "roughMost")) {
            facts.maybe(name).ifPresent(value -> numbers.put(name, value));
        }
        return numbers;
    }

    private static Map<String, String> words(OtherWork work, SentFacts facts, Optional<FinishedSize> size) {
        Map<String, String> words = new LinkedHashMap<>();
        words.put("Asked for", asked(work) + (facts.said("how").isEmpty() ? "" : " " + facts.said("how")));
        if (!facts.read("mate").isEmpty()) {
            words.put(
                    "Measured mate",
                    listed(facts.read("mate")) + ", each known to " + mm(facts.number("mateU"))
                            + " (standard uncertainty)");
        }
        size.ifPresent(found -> sized(work, facts, found, words));
        facts.maybe("flat").ifPresent(flat -> words.put("Flat", "within " + mm(flat)));
        facts.maybe("thick")
                .ifPresent(thick -> words.put("Height", "at least " + mm(thick) + " left, " + facts.said("datum")));
        surface(work, facts).ifPresent(surface -> words.put("Surface", surface));
        if (!facts.said("where").isEmpty()) {
            words.put("Where", facts.said("where"));
        }
        if (!facts.said("keepCool").isEmpty()) {
            words.put("Keep cool", facts.said("keepCool"));
        }
        if (work.shape() == OtherWork.Shape.SHAFT) {
            words.put("Hardness", hardness(facts));
        }
        if (!facts.said("cracks").isEmpty()) {
            words.put("Cracks", facts.said("cracks"));
        }
        words.put("Mind", mind(work));
        return words;
    }

    private static void sized(OtherWork work, SentFacts facts, FinishedSize size, Map<String, String> words) {
        List<Double> worn = facts.read("worn");
        if (!worn.isEmpty()) {
            words.put("As worn", listed(worn));
        }
        words.put(
                "Finished size",
                "diameter " + mm(size.lower()) + " to " + mm(size.upper()) + " over " + mm(facts.number("length")));
        if (!worn.isEmpty()) {
            double put = work.shape() == OtherWork.Shape.SHAFT
                    ? size.upper() - Collections.min(worn)
                    : Collections.max(worn) - size.lower();
            words.put(
                    "Stock",
                    put > 0
                            ? "up to " + mm(put / 2) + " to put back on each side, and what the finish takes off on top"
                            : mm(-put / 2) + " or more to take off each side");
        }
        if (!facts.read("mate").isEmpty()) {
            words.put("Going home", size.play(work, facts.read("mate")));
        }
        words.put("Round", "Out of round up to " + mm(facts.number("round")));
        words.put("Straight", "Run-out up to " + mm(facts.number("runOut")) + " against " + facts.said("datum"));
    }

    private static Optional<String> surface(OtherWork work, SentFacts facts) {
        if (work == OtherWork.SEAL_TRACK) {
            return Optional.of("Ra " + SMOOTHEST + " to " + roughest(facts) + " µm, plunge ground, no lead");
        }
        return facts.maybe("roughMost").isPresent()
                ? Optional.of("Ra up to " + roughest(facts) + " µm")
                : Optional.empty();
    }

    private static String roughest(SentFacts facts) {
        return Quantities.brief(facts.maybe("roughMost").orElse(ROUGHEST), Units.ONE);
    }

    private static String hardness(SentFacts facts) {
        if (facts.maybe("hardLeast").isEmpty()) {
            return "as it is, no hardness is asked for";
        }
        String least = Long.toString(Math.round(facts.number("hardLeast")));
        return facts.maybe("hardMost").isEmpty()
                ? "at least " + least + " HRC"
                : least + " to " + Math.round(facts.number("hardMost")) + " HRC";
    }

    private static String asked(OtherWork work) {
        return switch (work) {
            case GROUND_SEAT -> "Build up or sleeve the worn seat and grind it to the bore that it goes into.";
            case SLEEVED_BORE -> "Bore out the worn seat, sleeve it and finish it to what goes into it.";
            case REGROUND_SHAFT -> "Grind the cylinder to the finished size.";
            case REGROUND_BORE -> "Grind or hone the bore to the finished size.";
            case SEAL_TRACK -> "Build up or sleeve the worn track of the seal and grind it without lead.";
            case FLAT_FACE -> "Make the face flat, and take off no more than that takes.";
            case CRACK_CHECK -> "Look at it for cracks. Nothing else is to be done to it.";
        };
    }

    /** Usual cautions; common practice, no source. */
    private static String mind(OtherWork work) {
        return switch (work) {
            case GROUND_SEAT, SEAL_TRACK ->
                "Earth the part itself, never through a bearing; cover splines, teeth and threads from spatter and grit; wash it before it comes back.";
            case SLEEVED_BORE ->
                "Set it up by the bores that run with it and not by the worn one; the sleeve must not come out hot.";
            case REGROUND_SHAFT, REGROUND_BORE ->
                "Grind cool: a burnt surface cracks later. Wash it before it comes back.";
            case FLAT_FACE ->
                "Clamp it so that it is not bent flat and springs back; pins and studs out; mind what the height sets behind it.";
            case CRACK_CHECK ->
                "Clean and dry first; demagnetise it after magnetic powder; oil it before it comes back.";
        };
    }

    private static List<Accept> accept(OtherWork work, SentFacts facts, Optional<FinishedSize> size) {
        List<Accept> accept = new ArrayList<>();
        size.ifPresent(found -> {
            accept.add(new Accept(
                    "size",
                    "diameter",
                    Kind.LENGTH,
                    Map.of("lower", found.lower(), "upper", found.upper()),
                    "at 20 °C, three places round and both ends; each reading counts"));
            accept.add(most("round", "out of round", facts, "largest less smallest of one section"));
            accept.add(most("runOut", "run-out", facts, "against " + facts.said("datum")));
        });
        if (facts.maybe("flat").isPresent()) {
            accept.add(most("flat", "out of flat", facts, "on the surface plate, lying free"));
            accept.add(new Accept(
                    "thick", "height", Kind.LENGTH, Map.of("lower", facts.number("thick")), facts.said("datum")));
        }
        if (work == OtherWork.SEAL_TRACK || facts.maybe("roughMost").isPresent()) {
            Map<String, Double> limits = new LinkedHashMap<>();
            if (work == OtherWork.SEAL_TRACK) {
                limits.put("lower", SMOOTHEST);
            }
            limits.put("upper", facts.maybe("roughMost").orElse(ROUGHEST));
            accept.add(new Accept("rough", "roughness Ra in µm", Kind.NUMBER, limits, "across the lay, three places"));
        }
        if (facts.maybe("hardLeast").isPresent()) {
            Map<String, Double> limits = new LinkedHashMap<>();
            limits.put("lower", facts.number("hardLeast"));
            facts.maybe("hardMost").ifPresent(hard -> limits.put("upper", hard));
            accept.add(new Accept("hardness", "hardness in HRC", Kind.NUMBER, limits, "beside it, three places"));
        }
        if (work == OtherWork.SEAL_TRACK) {
            accept.add(new Accept(
                    "lead",
                    "no lead",
                    Kind.NUMBER,
                    Map.of(),
                    "a loaded thread laid round the turning shaft stays where it is, both ways round"));
        }
        if (!facts.said("cracks").isEmpty()) {
            accept.add(new Accept("cracks", "no cracks", Kind.NUMBER, Map.of(), facts.said("cracks")));
        }
        return List.copyOf(accept);
    }

    private static Accept most(String name, String what, SentFacts facts, String how) {
        return new Accept(name, what, Kind.LENGTH, Map.of("upper", facts.number(name)), how);
    }

    private static String listed(List<Double> metres) {
        return metres.stream().map(SentFacts::mm).collect(Collectors.joining(", "));
    }
}
