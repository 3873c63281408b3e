package shimwright.rebuild.sheet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import shimwright.mechanics.fit.HeatToFit;
import shimwright.mechanics.fit.HousingGrip;
import shimwright.mechanics.fit.Interference;
import shimwright.mechanics.fit.LimitsAndFits;
import shimwright.mechanics.fit.TimeToGrab;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.ParsedQuantity;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.Range;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.worksheet.Worksheet;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.Job.Said;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Joint;
import shimwright.rebuild.unit.model.Section;
import shimwright.rebuild.unit.model.Unit;
import shimwright.rebuild.unit.model.UnitType.Material;

/**
 * What is known of a joint, under names of its own: what a person typed into one of its sheets is known to the others. The
 * interference of the parts as measured leads to the heat, and the heat to the time.
 */
final class JointFacts {
    static final String ABOUT = "joint ";
    private static final String FILE = "unit file";
    private static final String DRAWN = "unit file, as drawn";
    private static final double ROOM = 293.15;

    /** Which fact each input of a sheet is. */
    private static final Map<Worksheet<?, ?>, Map<String, String>> INPUTS = inputs();

    private static final Map<Worksheet<?, ?>, List<String>> TELLS = Map.of(
            LimitsAndFits.SHEET, List.of("kind", "tightest", "loosest"),
            Interference.SHEET, List.of("pressForceHigh", "stopForce"),
            HeatToFit.SHEET, List.of("outerTemperature", "innerTemperature"),
            TimeToGrab.SHEET, List.of("timeInAir"),
            HousingGrip.SHEET, List.of("hotLoosest", "verdict"));

    private final Job job;
    private final Unit unit;
    private final Joint joint;
    private final UnitSystem units;
    private final Map<String, Fact> known = new LinkedHashMap<>();

    private JointFacts(Job job, Unit unit, Joint joint, UnitSystem units) {
        this.job = job;
        this.unit = unit;
        this.joint = joint;
        this.units = units;
    }

    private static Map<Worksheet<?, ?>, Map<String, String>> inputs() {
        Map<Worksheet<?, ?>, Map<String, String>> all = new LinkedHashMap<>();
        all.put(LimitsAndFits.SHEET, Map.of("nominal", "nominal", "hole", "hole", "shaft", "shaft"));
        all.put(
                Interference.SHEET,
                Map.of(
                        "bore", "bore",
                        "diameter", "diameter",
                        "hubOutside", "around",
                        "shaftBore", "through",
                        "length", "length",
                        "hub.material", "outer material",
                        "hub.expansion", "outer expansion",
                        "shaft.material", "inner material",
                        "shaft.expansion", "inner expansion"));
        all.put(
                HeatToFit.SHEET,
                Map.of(
                        "diameter", "nominal",
                        "interference", "interference",
                        "clearance", "slip",
                        "outer.material", "outer material",
                        "outer.expansion", "outer expansion",
                        "inner.material", "inner material",
                        "inner.expansion", "inner expansion",
                        "heated", "heated",
                        "cold", "cold",
                        "innerHardened", "hardened"));
        all.put(
                TimeToGrab.SHEET,
                Map.of(
                        "outer", "around",
                        "bore", "nominal",
                        "width", "length",
                        "joint", "nominal",
                        "part.material", "outer material",
                        "part.expansion", "outer expansion",
                        "start", "start",
                        "needed", "needed"));
        all.put(
                HousingGrip.SHEET,
                Map.of(
                        "seat", "bore",
                        "cup", "diameter",
                        "cupBore", "through",
                        "boss", "around",
                        "housing.material", "outer material",
                        "housing.expansion", "outer expansion",
                        "race.material", "inner material",
                        "race.expansion", "inner expansion",
                        "housingTemperature", "outer at work",
                        "raceTemperature", "inner at work"));
        return Collections.unmodifiableMap(all);
    }

    /** The sheets of a joint, what each needs before it. */
    static List<JobSheet> sheets(Job job, Unit unit, Joint joint, UnitSystem units) {
        JointFacts facts = new JointFacts(job, unit, joint, units);
        facts.know();
        List<JobSheet> sheets = new ArrayList<>();
        INPUTS.keySet().forEach(sheet -> {
            if (!sheet.equals(HousingGrip.SHEET) || facts.inHousing()) {
                sheets.add(facts.sheet(sheet));
            }
        });
        return List.copyOf(sheets);
    }

    /** The measured sizes, where both are known. */
    static Optional<Gap> gap(Job job, Unit unit, Joint joint, UnitSystem units) {
        JointFacts facts = new JointFacts(job, unit, joint, units);
        facts.know();
        return facts.gap();
    }

    /**
     * Interference of the parts as measured; less than 0 is play.
     *
     * @param tightest largest in the smallest bore, m
     * @param loosest smallest in the largest bore, m
     */
    record Gap(double tightest, double loosest) {}

    private JobSheet sheet(Worksheet<?, ?> sheet) {
        Map<String, Fact> facts = new LinkedHashMap<>();
        INPUTS.getOrDefault(sheet, Map.of()).forEach((input, name) -> {
            Fact fact = known.get(name);
            if (fact != null) {
                facts.put(input, fact);
            }
        });
        KeptFacts.of(job, ABOUT + joint.id(), sheet.name()).forEach(facts::putIfAbsent);
        return new JobSheet(ABOUT + joint.id(), joint.where(), sheet, facts, TELLS.getOrDefault(sheet, List.of()));
    }

    private void know() {
        Item outer = unit.item(joint.outer());
        Item inner = unit.item(joint.inner());
        length("nominal", joint.nominal(), FILE);
        word("hole", joint.hole());
        word("shaft", joint.shaft());
        read("bore", joint.boreRead());
        read("diameter", joint.diameterRead());
        sizes(outer, inner);
        material("outer", outer);
        material("inner", inner);
        length("slip", joint.slip(), FILE);
        if (!joint.heated().isEmpty()) {
            word(
                    "heated",
                    String.join(
                            "; ", joint.heated().stream().map(JointFacts::words).toList()));
        }
        word("cold", words(joint.cold()));
        if (joint.hardened() != Joint.Hardened.NOT_SAID) {
            word("hardened", words(joint.hardened()));
        }
        typed();
        gap().filter(gap -> gap.tightest() > 0)
                .ifPresent(gap -> known.put(
                        "interference",
                        Fact.of(gap.tightest(), Kind.LENGTH, units, "largest of what goes in − smallest bore")));
        heat();
    }

    /** Sizes that the drawing knows, where it is no scheme. */
    private void sizes(Item outer, Item inner) {
        boolean measured = !unit.type().section().scheme();
        double along = drawnLength(inner) > 0 ? drawnLength(inner) : drawnLength(outer);
        length("length", joint.length() > 0 ? joint.length() : measured ? along : 0, joint.length() > 0 ? FILE : DRAWN);
        double around = joint.around();
        if (around == 0 && measured && outer.diameters().size() == 2) {
            around = outer.diameters().get(1);
        }
        length("around", around, joint.around() > 0 ? FILE : DRAWN);
        if (measured) {
            through(inner);
        }
    }

    private static double drawnLength(Item item) {
        return item.along().size() == 2
                ? Math.abs(item.along().get(1) - item.along().get(0))
                : 0;
    }

    /** What runs through the part that goes in: the bore of a ring, or of a shaft that is drawn; a shaft drawn without one is solid. */
    private void through(Item inner) {
        if (inner.diameters().size() == 2 && inner.diameters().get(0) > 0) {
            length("through", inner.diameters().get(0), DRAWN);
            return;
        }
        unit.type().section().shafts().stream()
                .filter(shaft -> shaft.item().equals(inner.id()))
                .findFirst()
                .ifPresent(shaft -> known.put("through", Fact.of(widestBore(shaft), Kind.LENGTH, units, DRAWN)));
    }

    private static double widestBore(Section.Shaft shaft) {
        return shaft.bores().stream().mapToDouble(bore -> bore.get(2)).max().orElse(0);
    }

    private void material(String part, Item item) {
        if (item.material().isBlank()) {
            return;
        }
        Material material = unit.material(item.material());
        material.like().ifPresent(like -> word(part + " material", words(like)));
        known.put(part + " expansion", Fact.of(material.expansion(), Kind.EXPANSION, units, FILE));
        known.put(part + " at work", Fact.of(ROOM + material.hotRise(), Kind.TEMPERATURE, units, FILE));
    }

    private boolean inHousing() {
        Item.Shape shape = unit.item(joint.inner()).shape();
        return shape == Item.Shape.TAPER_CUP || shape == Item.Shape.ROLLER_OUTER;
    }

    private void read(String name, List<String> sources) {
        SizeRead.of(job, unit, sources)
                .ifPresent(read -> known.put(name, Fact.of(read.values(), Kind.LENGTH, units, read.from())));
    }

    private void length(String name, double size, String from) {
        if (size > 0) {
            known.put(name, Fact.of(size, Kind.LENGTH, units, from));
        }
    }

    private void word(String name, String word) {
        if (!word.isBlank()) {
            known.put(name, new Fact(word, FILE));
        }
    }

    /** What was typed into any of its sheets, where unit and readings do not say it. */
    private void typed() {
        INPUTS.forEach((sheet, inputs) -> {
            Said<Entry.SheetWorked> said = job.worked().get(ABOUT + joint.id() + "/" + sheet.name());
            if (said != null) {
                KeptFacts.typed(said).forEach((input, fact) -> {
                    String name = inputs.get(input);
                    if (name != null) {
                        known.putIfAbsent(name, fact);
                    }
                });
            }
        });
    }

    private Optional<Gap> gap() {
        List<Double> bore = lengths("bore");
        List<Double> diameter = lengths("diameter");
        return bore.isEmpty() || diameter.isEmpty()
                ? Optional.empty()
                : Optional.of(new Gap(
                        Collections.max(diameter) - Collections.min(bore),
                        Collections.min(diameter) - Collections.max(bore)));
    }

    /** Sizes as they stand in a field, each with its unit or all with that of the last. */
    private List<Double> lengths(String name) {
        Fact fact = known.get(name);
        List<Double> lengths = new ArrayList<>();
        if (fact == null) {
            return lengths;
        }
        String last = fact.text().replaceAll("(?s).*\\d\\s*", "");
        for (String part : fact.text().split("[;\\n]|,\\s")) {
            String text = part.strip().matches(".*\\d") ? part.strip() + " " + last : part.strip();
            Quantities.parse(text, Kind.LENGTH, units.display(Kind.LENGTH).unit(), name, new Range(0, 2))
                    .map(ParsedQuantity::si)
                    .map(lengths::add);
        }
        return lengths;
    }

    /** What the heat leaves for the time: how hot it starts, and how much of the growth must still be there. */
    private void heat() {
        Optional<Gap> gap = gap();
        if (gap.isEmpty()) {
            return;
        }
        Outcome<Worked<HeatToFit.Result>> heat = HeatToFit.SHEET
                .read(sheet(HeatToFit.SHEET).typed(), units)
                .flatMap(bound -> HeatToFit.SHEET.compute().apply(bound.value()));
        if (heat instanceof Outcome.Ok<Worked<HeatToFit.Result>> ok) {
            HeatToFit.Result result = ok.value().result();
            String from = "sheet heat to fit";
            known.put("start", Fact.of(result.outerTemperature(), Kind.TEMPERATURE, units, from));
            double needed = gap.get().tightest() - result.innerShrink();
            if (needed > 0) {
                known.put("needed", Fact.of(needed, Kind.LENGTH, units, from));
            }
        }
    }

    private static String words(Enum<?> word) {
        return word.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
