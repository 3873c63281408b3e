package shimwright.rebuild.sheet;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import shimwright.mechanics.fit.Material;
import shimwright.mechanics.oil.OilFills;
import shimwright.mechanics.oil.OilViscosity;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.mechanics.seal.SealSeats;
import shimwright.mechanics.thread.ThreadStrips;
import shimwright.mechanics.thread.Tightening;
import shimwright.mechanics.worksheet.Worksheet;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.unit.begin.FirstUnit;
import shimwright.rebuild.unit.edit.BoltText;
import shimwright.rebuild.unit.model.Fastener;
import shimwright.rebuild.unit.model.Seal;
import shimwright.rebuild.unit.model.Unit;

/** What the unit file knows of fasteners, seals and the oil, for their sheets. */
record PartFacts(Job job, Unit unit, UnitSystem units) {
    static final String FASTENER = "fastener ";
    static final String SEAL = "seal ";
    static final String OIL = "oil";
    private static final String FILE = "unit file";
    private static final double INCH = 25.4e-3;
    private static final double MM = 1e-3;
    private static final Pattern LIP_SEAL =
            Pattern.compile("([0-9]+(?:\\.[0-9]+)?)\\s*[x×]\\s*([0-9]+(?:\\.[0-9]+)?)\\s*[x×]\\s*[0-9]+(?:\\.[0-9]+)?");
    private static final Pattern GRADE = Pattern.compile("SAE\\s*([0-9]+W?(?:-[0-9]+)?)|(ISO VG [0-9]+)");

    /** Tightening and strip of a fastener. */
    List<JobSheet> of(Fastener fastener) {
        String name = fastener.thread() + ", " + fastener.where();
        Map<String, Fact> tightening = thread(fastener);
        Map<String, Fact> strip = thread(fastener);
        quantity(tightening, "torque", fastener.torque(), Kind.TORQUE);
        quantity(strip, "torque", fastener.torque(), Kind.TORQUE);
        quantity(strip, "engagement", fastener.engagement(), Kind.LENGTH);
        if (fastener.nutFactor() > 0) {
            Fact nutFactor = new Fact(Double.toString(fastener.nutFactor()), FILE);
            tightening.put("nutFactor", nutFactor);
            strip.put("nutFactor", nutFactor);
        }
        if (!fastener.locker().isBlank()) {
            tightening.put("threadlocker", new Fact("yes", FILE));
        }
        into(fastener).ifPresent(material -> {
            boolean aluminum = material.name().startsWith("ALUMINUM");
            tightening.put("intoAluminium", new Fact(aluminum ? "yes" : "no", FILE));
            if (aluminum) {
                strip.put("parent", new Fact(material.name().replace("ALUMINUM_", ""), FILE));
            }
        });
        return List.of(
                sheet(FASTENER + fastener.id(), name, Tightening.SHEET, tightening, "preload", "proofShare"),
                sheet(FASTENER + fastener.id(), name, ThreadStrips.SHEET, strip, "safeTorque", "verdict"));
    }

    private Optional<Material> into(Fastener fastener) {
        String item = fastener.into();
        String material = item.isBlank() ? "" : unit.item(item).material();
        return material.isBlank() ? Optional.empty() : unit.material(material).like();
    }

    /** Diameter, pitch and mark; of a pipe thread, which is none of the sheets', nothing. */
    private Map<String, Fact> thread(Fastener fastener) {
        Map<String, Fact> facts = new LinkedHashMap<>();
        String text = fastener.thread() + " " + fastener.propertyClass();
        if (text.toUpperCase(Locale.ROOT).contains("NPT")) {
            return facts;
        }
        for (BoltText bolt : BoltText.of(text)) {
            quantity(facts, "diameter", bolt.diameter(), Kind.LENGTH);
            if (text.startsWith("M")) {
                quantity(facts, "pitch", bolt.pitch(), Kind.LENGTH);
            } else if (bolt.pitch() > 0) {
                facts.put("perInch", new Fact(Long.toString(Math.round(INCH / bolt.pitch())), FILE));
            }
        }
        if (!fastener.propertyClass().isBlank()) {
            facts.put("strengthClass", new Fact(fastener.propertyClass(), FILE));
        }
        return facts;
    }

    /** The seat of a lip seal; none for a ring of other form. */
    List<JobSheet> of(Seal seal) {
        Matcher size = LIP_SEAL.matcher(seal.size());
        if (!size.find()) {
            return List.of();
        }
        Map<String, Fact> facts = new LinkedHashMap<>();
        quantity(facts, "shaft", Double.parseDouble(size.group(1)) * MM, Kind.LENGTH);
        quantity(facts, "bore", Double.parseDouble(size.group(2)) * MM, Kind.LENGTH);
        return List.of(sheet(
                SEAL + seal.id(), seal.size() + ", " + seal.where(), SealSeats.SHEET, facts, "boreMax", "shaftMin"));
    }

    /** How much to fill, and how thick it is. */
    List<JobSheet> oil() {
        Map<String, Fact> fill = new LinkedHashMap<>();
        quantity(fill, "volume", unit.type().fluid().volume(), Kind.VOLUME);
        Map<String, Fact> viscosity = new LinkedHashMap<>();
        Matcher grade = GRADE.matcher(unit.type().fluid().spec());
        if (grade.find()) {
            String vg = grade.group(2);
            viscosity.put("grade", new Fact(vg == null ? "gear SAE " + grade.group(1) : vg, FILE));
        }
        String spec = unit.type().fluid().spec();
        String name = spec.equals(FirstUnit.UNKNOWN) ? "oil, which the unit file does not name yet" : spec;
        return List.of(
                sheet(OIL, name, OilFills.SHEET, fill, "volume", "levelShift"),
                sheet(OIL, name, OilViscosity.SHEET, viscosity, "viscosity", "index"));
    }

    private void quantity(Map<String, Fact> facts, String input, double value, Kind kind) {
        if (value > 0) {
            facts.put(input, Fact.of(value, kind, units, FILE));
        }
    }

    private JobSheet sheet(String about, String name, Worksheet<?, ?> sheet, Map<String, Fact> facts, String... tells) {
        KeptFacts.of(job, about, sheet.name()).forEach(facts::putIfAbsent);
        return new JobSheet(about, name, sheet, facts, List.of(tells));
    }
}
