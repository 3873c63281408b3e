package shimwright.rebuild.act;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.ParsedQuantity;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.Range;
import shimwright.rebuild.inspect.Identification;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.JobLog;
import shimwright.rebuild.unit.model.UnitType;
import shimwright.rebuild.workbench.PinnedUnit;

/** The shop: a job is opened, the drawer is filled, gauges are told, the shop says what it is. */
public final class ShopActs {
    /** A shim or spacer is thinner than this; more is a slip of the point. */
    private static final Range THICKNESS = new Range(0.00001, 0.1);

    /** Standard uncertainty of a shim where nobody says with what it was measured: a micrometer of 1 µm steps. */
    private static final double MICROMETER = 0.000002;

    /** Where a piece is measured round it, so that one that is not even is found. */
    private static final int PLACES = 3;

    private ShopActs() {}

    private static Outcome<ActResult> kept(Entry entry, String said) {
        return Outcome.ok(new ActResult(JobLog.SHOP, List.of(entry), said));
    }

    /** A unit comes in. */
    @MakesEntries(Entry.JobOpened.class)
    public record OpenJob(
            @ActInput(value = "unit", missing = "Choose the unit")
            String type,

            @ActInput(value = "job number", missing = "Give the job a number, such as V-0094")
            String number,

            @ActInput(value = "owner", missing = "Say whose unit it is")
            String owner,

            @ActInput("variant") String variant,
            @ActInput("what was seen, by tell-tale") Map<String, String> tale,
            @ActInput("reason") String because,
            @ActInput("what the owner said, a line each") String said,
            @ActInput("remark") String remark)
            implements Act.OfShop {
        @Override
        public Outcome<ActResult> on(ActContext around) {
            Optional<PinnedUnit> file = around.floor().unit(type);
            if (file.isEmpty()) {
                return Outcome.refused(
                        new Refusal("type", "unit", "this shop has no unit file of " + type, "Choose another"));
            }
            UnitType of = file.get().type();
            Map<String, String> seen = seen(of, tale);
            Identification told = Identification.of(of, seen);
            List<Refusal> refusals = new ArrayList<>();
            String taken = variant(of, told, refusals);
            String stream = JobIds.of(number);
            if (around.floor().jobs().contains(stream)) {
                refusals.add(new Refusal(
                        "number", "job number", "job " + number + " is already open", "Give this one another number"));
            }
            if (!refusals.isEmpty()) {
                return Outcome.refused(refusals);
            }
            Entry.JobOpened opened = new Entry.JobOpened(
                    number,
                    of.id(),
                    taken,
                    owner,
                    IntakeActs.lines(said),
                    seen,
                    told.variant() == null ? because : "",
                    remark,
                    file.get().hash());
            return Outcome.ok(new ActResult(stream, List.of(opened), "Job " + number + " is open"));
        }

        private String variant(UnitType of, Identification told, List<Refusal> refusals) {
            String chosen = variant.strip();
            String settled = told.variant();
            if (settled != null) {
                if (!chosen.isEmpty() && !chosen.equals(settled)) {
                    refusals.add(Refusal.of(
                            "variant", "the tell-tales say " + settled + ", " + chosen + " was chosen", "Look again"));
                }
                return settled;
            }
            if (chosen.isEmpty() && of.variants().size() == 1) {
                return of.variants().keySet().iterator().next();
            }
            if (chosen.isEmpty() || (because.isBlank() && of.variants().size() > 1)) {
                refusals.add(Refusal.of(
                        "variant",
                        told.say(),
                        "Read another tell-tale, or choose the variant yourself and say why you are sure"));
            } else if (!of.variants().containsKey(chosen)) {
                refusals.add(Refusal.of(
                        "variant",
                        "this unit has no variant " + chosen,
                        "Choose one of " + String.join(", ", of.variants().keySet())));
            }
            return chosen;
        }
    }

    /** What was seen, of the tell-tales that the unit has and that were answered. */
    public static Map<String, String> seen(UnitType type, Map<String, String> typed) {
        Map<String, String> seen = new LinkedHashMap<>();
        type.tellTales().forEach(tale -> {
            String saw = typed.getOrDefault(tale.id(), "").strip();
            if (!saw.isEmpty()) {
                seen.put(tale.id(), saw);
            }
        });
        return seen;
    }

    private static Outcome<List<Double>> thicknesses(List<String> typed, ActContext around) {
        List<Outcome<Double>> read = new ArrayList<>();
        for (int place = 0; place < Math.max(PLACES, typed.size()); place++) {
            read.add(Quantities.parse(
                            place < typed.size() ? typed.get(place) : "",
                            Kind.LENGTH,
                            around.units().display(Kind.LENGTH).unit(),
                            "",
                            THICKNESS)
                    .placed("t[" + read.size() + "]", "micrometer, place " + (read.size() + 1))
                    .map(ParsedQuantity::si));
        }
        return Outcome.all(read);
    }

    /** A piece goes into the drawer. */
    @MakesEntries(Entry.ShimAdded.class)
    public record AddShim(
            @ActInput(value = "tag", missing = "Give the piece a tag, such as d80-23")
            String piece,

            @ActInput(value = "family", missing = "Say which shims it goes with")
            String family,

            @ActInput("stamp") String stamp,

            @ActInput(value = "thickness", missing = "Measure it at three places round it")
            List<String> t)
            implements Act.OfShop {
        @Override
        public Outcome<ActResult> on(ActContext around) {
            return thicknesses(t, around)
                    .flatMap(read -> kept(
                            new Entry.ShimAdded(piece, family, stamp, read, MICROMETER), piece + " is in the drawer"));
        }
    }

    /** Many pieces at once, one a line: tag, family, thicknesses. */
    @MakesEntries(Entry.ShimAdded.class)
    public record AddShims(
            @ActInput("family of pieces that do not say theirs")
            String family,

            @ActInput(
                    value = "list",
                    missing = "Type or paste one piece a line: tag, family, thickness",
                    longest = 50_000)
            String list)
            implements Act.OfShop {
        @Override
        public Outcome<ActResult> on(ActContext around) {
            return DrawerList.read(list, family, around.units())
                    .map(shims -> new ActResult(
                            JobLog.SHOP,
                            List.copyOf(shims.stream()
                                    .map(s -> new Entry.ShimAdded(s.piece(), s.family(), "", s.readings(), s.u()))
                                    .toList()),
                            shims.size() + (shims.size() == 1 ? " piece is" : " pieces are") + " in the drawer"));
        }
    }

    /** A piece is measured again. */
    @MakesEntries(Entry.ShimMeasured.class)
    public record MeasureShim(
            @ActInput(value = "tag", missing = "Say which piece")
            String piece,

            @ActInput(value = "thickness", missing = "Measure it at three places round it")
            List<String> t)
            implements Act.OfShop {
        @Override
        public Outcome<ActResult> on(ActContext around) {
            return thicknesses(t, around)
                    .flatMap(read ->
                            kept(new Entry.ShimMeasured(piece, read, MICROMETER), piece + " is measured again"));
        }
    }

    /** A piece leaves the drawer for another reason than a job. */
    @MakesEntries(Entry.ShimRemoved.class)
    public record RemoveShim(
            @ActInput(value = "tag", missing = "Say which piece")
            String piece,

            @ActInput(value = "reason", missing = "Say why it leaves the drawer")
            String reason)
            implements Act.OfShop {
        @Override
        public Outcome<ActResult> on(ActContext around) {
            return kept(new Entry.ShimRemoved(piece, reason), piece + " is out of the drawer");
        }
    }

    /** A piece that left lies in the drawer again. */
    @MakesEntries(Entry.ShimReturned.class)
    public record ReturnShim(
            @ActInput(value = "tag", missing = "Say which piece")
            String piece,

            @ActInput(value = "reason", missing = "Say why it lies in the drawer again")
            String reason)
            implements Act.OfShop {
        @Override
        public Outcome<ActResult> on(ActContext around) {
            return kept(new Entry.ShimReturned(piece, reason), piece + " is in the drawer again");
        }
    }

    /** A gauge of the shop; one of the same mark replaces what was said of it before. */
    @MakesEntries(Entry.GaugeAdded.class)
    public record AddGauge(
            @ActInput(value = "gauge", missing = "Give the gauge a short mark, such as DI1")
            String gauge,

            @ActInput(value = "name", missing = "Say what gauge it is")
            String name,

            @ActInput(
                    value = "step",
                    missing = "Say what one step of its scale is",
                    kind = Kind.LENGTH,
                    least = 1e-7,
                    most = 0.01)
            double step,

            @ActInput(
                    value = "error limit",
                    missing = "It stands on the gauge's sheet or certificate, as plus or minus",
                    kind = Kind.LENGTH,
                    least = 0,
                    most = 0.01)
            double errorLimit,

            @ActInput(value = "retrace", kind = Kind.LENGTH, least = 0, most = 0.01)
            double retrace,

            @ActInput(value = "range", missing = "Say how far it reaches", kind = Kind.LENGTH, least = 1e-5, most = 5)
            double range,

            @ActInput("last calibration") String calibrated)
            implements Act.OfShop {
        @Override
        public Outcome<ActResult> on(ActContext around) {
            boolean there = around.floor().shop().gauges().containsKey(gauge);
            return kept(
                    new Entry.GaugeAdded(gauge, name, Kind.LENGTH, step, errorLimit, retrace, 0, range, calibrated),
                    there ? name + " is changed" : name + " is in the shop");
        }
    }

    /** A gauge is no longer used. */
    @MakesEntries(Entry.GaugeRetired.class)
    public record RetireGauge(
            @ActInput(value = "gauge", missing = "Say which gauge")
            String gauge,

            @ActInput(value = "reason", missing = "Say why it is no longer used")
            String reason)
            implements Act.OfShop {
        @Override
        public Outcome<ActResult> on(ActContext around) {
            return kept(new Entry.GaugeRetired(gauge, reason), "Kept: no longer used");
        }
    }

    /** Another part number takes the place of one. */
    @MakesEntries(Entry.NumberReplaced.class)
    public record ReplaceNumber(
            @ActInput(value = "old number", missing = "Write the number that was replaced")
            String part,

            @ActInput(value = "new number", missing = "Write the number that takes its place")
            String by,

            @ActInput(value = "who says so", missing = "Say the supplier, the list or the person")
            String who,

            @ActInput("remark") String words)
            implements Act.OfShop {
        @Override
        public Outcome<ActResult> on(ActContext around) {
            return kept(
                    new Entry.NumberReplaced(part.strip(), by.strip(), who, words),
                    by.strip() + " stands in the order lists in the place of " + part.strip());
        }
    }

    /** A part number stands after all. */
    @MakesEntries(Entry.NumberStands.class)
    public record KeepNumber(
            @ActInput(value = "number", missing = "Load the page again")
            String part,

            @ActInput(value = "reason", missing = "Say why it stands after all")
            String reason)
            implements Act.OfShop {
        @Override
        public Outcome<ActResult> on(ActContext around) {
            return kept(new Entry.NumberStands(part, reason), part + " stands after all");
        }
    }

    /** What the shop is and how it works. */
    @MakesEntries(Entry.ShopDescribed.class)
    public record DescribeShop(
            @ActInput(value = "facts", missing = "Type what is to be kept")
            Map<String, String> fact) implements Act.OfShop {
        @Override
        public Outcome<ActResult> on(ActContext around) {
            List<Refusal> refusals = ShopFacts.faults(fact);
            return refusals.isEmpty() ? kept(new Entry.ShopDescribed(fact), "Kept") : Outcome.refused(refusals);
        }
    }
}
