package shimwright.rebuild.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import shimwright.mechanics.bearing.BearingFrequencies;
import shimwright.mechanics.fit.NeedleFit;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.mechanics.tooth.MeshFrequencies;
import shimwright.mechanics.tooth.OverPins;
import shimwright.mechanics.tooth.SplineRework;
import shimwright.mechanics.tooth.ToothStrength;
import shimwright.mechanics.worksheet.Worksheet;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.unit.model.Bearing;
import shimwright.rebuild.unit.model.GearPair;
import shimwright.rebuild.unit.model.Spline;
import shimwright.rebuild.unit.model.Unit;

/** What the unit file knows of splines, gear pairs and bearings, for their sheets. */
record TurningFacts(Job job, Unit unit, UnitSystem units) {
    static final String SPLINE = "spline ";
    static final String GEARS = "gears ";
    static final String BEARING = "bearing ";
    private static final String FILE = "unit file";
    private static final double MM = 1e-3;
    private static final Pattern RING =
            Pattern.compile("([0-9]+(?:\\.[0-9]+)?)\\s*[x×]\\s*([0-9]+(?:\\.[0-9]+)?)\\s*[x×]");
    private static final Pattern DRAWN_CUP = Pattern.compile("(?i)\\b[HB]K\\s?[0-9]|needle");

    /** Size over pins and rework of a spline. */
    List<JobSheet> of(Spline spline) {
        Map<String, Fact> pins = new LinkedHashMap<>();
        Map<String, Fact> rework = new LinkedHashMap<>();
        for (Map<String, Fact> facts : List.of(pins, rework)) {
            count(facts, "teeth", spline.teeth());
            length(facts, "module", spline.module());
        }
        length(pins, "pin", spline.pin());
        length(rework, "shaftPin", spline.pin());
        String about = SPLINE + spline.id();
        String name = "spline, " + spline.where();
        return List.of(
                sheet(about, name, OverPins.SHEET, pins, "thickness", "overPins"),
                sheet(about, name, SplineRework.SHEET, rework, "finished", "perFlank"));
    }

    /** The splines that stand where the item does, by the words of the unit file. */
    List<JobSheet> splines(String item) {
        String name = unit.item(item).name();
        List<JobSheet> all = new ArrayList<>();
        Pattern named = Pattern.compile("(?i)\\b" + Pattern.quote(name) + "\\b");
        unit.type().splines().stream()
                .filter(spline -> named.matcher(spline.where()).find())
                .forEach(spline -> all.addAll(of(spline)));
        return all;
    }

    /** Strength and noise of a pair of gears; none of one that is straight through. */
    List<JobSheet> of(GearPair pair) {
        if (pair.straight()) {
            return List.of();
        }
        Map<String, Fact> strength = new LinkedHashMap<>();
        count(strength, "pinionTeeth", Math.min(pair.driver(), pair.driven()));
        count(strength, "gearTeeth", Math.max(pair.driver(), pair.driven()));
        length(strength, "module", pair.module());
        length(strength, "face", pair.face());
        if (pair.module() > 0) {
            strength.put("helix", Fact.of(pair.helix(), Kind.ANGLE, units, FILE));
        }
        Map<String, Fact> noise = new LinkedHashMap<>();
        count(noise, "driving", pair.driver());
        count(noise, "driven", pair.driven());
        String about = GEARS + pair.id();
        String name = pair.name() + ", " + pair.driver() + " and " + pair.driven() + " teeth";
        return List.of(
                sheet(about, name, MeshFrequencies.SHEET, noise, "mesh", "sameTeeth"),
                sheet(about, name, ToothStrength.SHEET, strength, "pinion", "gear", "contact"));
    }

    /** Noise of a bearing, and the fits of one that is pressed in with its needles. */
    List<JobSheet> of(Bearing bearing) {
        Matcher ring = RING.matcher(bearing.size() + "x");
        boolean sized = ring.find();
        double bore = sized ? Double.parseDouble(ring.group(1)) * MM : 0;
        double outside = sized ? Double.parseDouble(ring.group(2)) * MM : 0;
        String about = BEARING + bearing.id();
        String name = bearing.size() + ", " + bearing.where();
        List<JobSheet> sheets = new ArrayList<>();
        if (DRAWN_CUP.matcher(bearing.size()).find()) {
            Map<String, Fact> fit = new LinkedHashMap<>();
            length(fit, "needles", bore);
            length(fit, "outside", outside);
            sheets.add(sheet(about, name, NeedleFit.SHEET, fit, "boreMin", "boreMax", "shaftMin", "shaftMax"));
        }
        Map<String, Fact> noise = new LinkedHashMap<>();
        length(noise, "bore", bore);
        length(noise, "outside", outside);
        sheets.add(sheet(about, name, BearingFrequencies.SHEET, noise, "outer.frequency", "inner.frequency"));
        return List.copyOf(sheets);
    }

    private static void count(Map<String, Fact> facts, String input, int count) {
        if (count > 0) {
            facts.put(input, new Fact(Integer.toString(count), FILE));
        }
    }

    private void length(Map<String, Fact> facts, String input, double value) {
        if (value > 0) {
            facts.put(input, Fact.of(value, Kind.LENGTH, units, FILE));
        }
    }

    private JobSheet sheet(String about, String name, Worksheet<?, ?> sheet, Map<String, Fact> facts, String... tells) {
        KeptFacts.of(job, about, sheet.name()).forEach(facts::putIfAbsent);
        return new JobSheet(about, name, sheet, facts, List.of(tells));
    }
}
