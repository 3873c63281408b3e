package shimwright.rebuild.sheet;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.mechanics.registry.Registry;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.unit.model.Bearing;
import shimwright.rebuild.unit.model.Consumable;
import shimwright.rebuild.unit.model.Fastener;
import shimwright.rebuild.unit.model.GearPair;
import shimwright.rebuild.unit.model.Joint;
import shimwright.rebuild.unit.model.Seal;
import shimwright.rebuild.unit.model.Spline;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Unit;
import shimwright.rebuild.unit.model.UnitType.Check;
import shimwright.rebuild.unit.model.UnitType.HoldPoint;
import shimwright.rebuild.workbench.Workbench;

/** The worksheets of a job, by step, by item and by what they are about. */
public record JobSheets(Job job, Unit unit, UnitSystem units) {
    private static final String STEP = "step ";

    /** The sheets of a job in the units of a person. */
    public static JobSheets of(Workbench bench, UnitSystem units) {
        return new JobSheets(bench.job(), bench.unit(), units);
    }

    /** Whether the unit has what a sheet is about. */
    public static boolean has(Workbench bench, String about) {
        return !about(bench.unit(), about).isEmpty();
    }

    /** All there are, in the order of the unit file. */
    public List<JobSheet> all() {
        List<JobSheet> all = new ArrayList<>();
        unit.type().joints().forEach(joint -> all.addAll(of(joint)));
        unit.type().fasteners().forEach(fastener -> all.addAll(parts().of(fastener)));
        unit.type().seals().forEach(seal -> all.addAll(parts().of(seal)));
        unit.type().gears().forEach(pair -> all.addAll(turning().of(pair)));
        unit.type().bearings().forEach(bearing -> all.addAll(turning().of(bearing)));
        unit.type().splines().forEach(spline -> all.addAll(turning().of(spline)));
        unit.type().holdPoints().forEach(hold -> hold.checks().forEach(check -> all.addAll(checks().of(hold, check))));
        all.addAll(parts().oil());
        return List.copyOf(all);
    }

    /** Those of a step: its joints, what it tightens, seals and springs, its proofs, the oil. */
    public List<JobSheet> at(Step step) {
        List<JobSheet> all = new ArrayList<>();
        joints(step).forEach(joint -> all.addAll(of(joint)));
        step.fasteners().forEach(id -> all.addAll(parts().of(unit.fastener(id))));
        Set<String> items = new LinkedHashSet<>(step.builds());
        items.addAll(step.installs());
        for (Seal seal : unit.type().seals()) {
            if (seal.items().stream().anyMatch(items::contains) && freshly(step, seal)) {
                all.addAll(parts().of(seal));
            }
        }
        if (!step.hold().isEmpty()) {
            HoldPoint hold = unit.holdPoint(step.hold());
            hold.checks().forEach(check -> all.addAll(checks().of(hold, check)));
        }
        if (fills(step)) {
            all.addAll(parts().oil());
        }
        return List.copyOf(all);
    }

    /** True where the step is the first of the unit that has the seal in it: it is driven in there. */
    private boolean freshly(Step step, Seal seal) {
        return unit.type().steps().stream()
                .filter(other -> seal.items().stream()
                        .anyMatch(item -> other.builds().contains(item)
                                || other.installs().contains(item)))
                .findFirst()
                .map(step::equals)
                .orElse(false);
    }

    private boolean fills(Step step) {
        String spec = unit.type().fluid().spec();
        return !spec.isBlank()
                && step.consumables().stream()
                        .map(unit::consumable)
                        .map(Consumable::name)
                        .anyMatch(name -> name.contains(spec));
    }

    /** Those of an item: its joints, what is screwed into it, its seals, gears, bearing and splines. */
    public List<JobSheet> ofItem(String item) {
        List<JobSheet> all = new ArrayList<>();
        unit.type().joints().stream().filter(joint -> joint.joins(item)).forEach(joint -> all.addAll(of(joint)));
        for (Fastener fastener : unit.type().fasteners()) {
            if (fastener.into().equals(item)) {
                all.addAll(parts().of(fastener));
            }
        }
        for (Seal seal : unit.type().seals()) {
            if (seal.items().contains(item)) {
                all.addAll(parts().of(seal));
            }
        }
        unit.type().gears().stream()
                .filter(pair ->
                        pair.driverItem().equals(item) || pair.drivenItem().equals(item))
                .forEach(pair -> all.addAll(turning().of(pair)));
        unit.type().bearings().stream()
                .filter(bearing -> bearing.items().contains(item))
                .forEach(bearing -> all.addAll(turning().of(bearing)));
        all.addAll(turning().splines(item));
        return List.copyOf(all);
    }

    /** Those of a fastener. */
    public List<JobSheet> ofFastener(Fastener fastener) {
        return parts().of(fastener);
    }

    /** The joints that go together at a step. */
    public List<Joint> joints(Step step) {
        return unit.type().joints().stream()
                .filter(joint -> joint.steps().contains(step.id()))
                .toList();
    }

    /** What the joints of a step say in a line each. */
    public List<JointAdvice> advice(Step step) {
        return joints(step).stream()
                .map(joint -> JointAdvice.of(job, unit, joint, units))
                .toList();
    }

    /** The sheet of that name about that thing; of a step any sheet there is, with what was typed into it before. */
    public Optional<JobSheet> find(String about, String sheet) {
        if (about.startsWith(STEP)
                && unit.findStep(about.substring(STEP.length())).isPresent()) {
            String name = unit.step(about.substring(STEP.length())).todo();
            return Registry.find(sheet)
                    .map(one -> new JobSheet(about, name, one, KeptFacts.of(job, about, sheet), List.of()));
        }
        return about(unit, about)
                .flatMap(one -> sheets(one).stream()
                        .filter(made -> made.sheet().name().equals(sheet))
                        .findFirst());
    }

    private List<JobSheet> sheets(Object thing) {
        if (thing instanceof Joint joint) {
            return of(joint);
        }
        if (thing instanceof Fastener fastener) {
            return parts().of(fastener);
        }
        if (thing instanceof Seal seal) {
            return parts().of(seal);
        }
        if (thing instanceof GearPair pair) {
            return turning().of(pair);
        }
        if (thing instanceof Bearing bearing) {
            return turning().of(bearing);
        }
        if (thing instanceof Spline spline) {
            return turning().of(spline);
        }
        if (thing instanceof Map.Entry<?, ?> read
                && read.getKey() instanceof HoldPoint hold
                && read.getValue() instanceof Check check) {
            return checks().of(hold, check);
        }
        return parts().oil();
    }

    /** The joint, fastener, seal, pair, bearing, spline, check or step of that name; the unit itself for its oil. */
    private static Optional<?> about(Unit unit, String about) {
        String id = about.substring(about.indexOf(' ') + 1);
        if (about.startsWith(JointFacts.ABOUT)) {
            return unit.type().joints().stream()
                    .filter(one -> one.id().equals(id))
                    .findFirst();
        }
        if (about.startsWith(PartFacts.FASTENER)) {
            return unit.type().fasteners().stream()
                    .filter(one -> one.id().equals(id))
                    .findFirst();
        }
        if (about.startsWith(PartFacts.SEAL)) {
            return unit.type().seals().stream()
                    .filter(one -> one.id().equals(id))
                    .findFirst();
        }
        if (about.startsWith(TurningFacts.GEARS)) {
            return unit.type().gears().stream()
                    .filter(one -> one.id().equals(id))
                    .findFirst();
        }
        if (about.startsWith(TurningFacts.BEARING)) {
            return unit.type().bearings().stream()
                    .filter(one -> one.id().equals(id))
                    .findFirst();
        }
        if (about.startsWith(TurningFacts.SPLINE)) {
            return unit.type().splines().stream()
                    .filter(one -> one.id().equals(id))
                    .findFirst();
        }
        if (about.startsWith(STEP)) {
            return unit.findStep(id);
        }
        if (about.startsWith(CheckFacts.CHECK)) {
            return unit.type().holdPoints().stream()
                    .flatMap(hold -> hold.checks().stream().map(check -> Map.entry(hold, check)))
                    .filter(read ->
                            id.equals(read.getKey().id() + "/" + read.getValue().id()))
                    .findFirst();
        }
        return about.equals(PartFacts.OIL) ? Optional.of(unit) : Optional.empty();
    }

    private List<JobSheet> of(Joint joint) {
        return JointFacts.sheets(job, unit, joint, units);
    }

    private PartFacts parts() {
        return new PartFacts(job, unit, units);
    }

    private TurningFacts turning() {
        return new TurningFacts(job, unit, units);
    }

    private CheckFacts checks() {
        return new CheckFacts(job, unit, units);
    }
}
