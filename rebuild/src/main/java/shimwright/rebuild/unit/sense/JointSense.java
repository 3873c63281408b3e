package shimwright.rebuild.unit.sense;

import java.util.ArrayList;
import java.util.List;
import shimwright.mechanics.quantity.Kind;
import shimwright.rebuild.unit.fault.Spelling;
import shimwright.rebuild.unit.model.Joint;
import shimwright.rebuild.unit.model.UnitType;
import shimwright.rebuild.unit.model.UnitType.CheckKind;

/** Joints, what is screwed in and what is read first: sizes that such parts have, and readings that the file knows and that read a length. */
final class JointSense {
    private static final double MM = 1e-3;

    private final SenseContext context;

    JointSense(SenseContext context) {
        this.context = context;
    }

    void check() {
        UnitType type = context.type();
        List<String> known = lengths(type);
        type.joints().stream().filter(context::sound).forEach(joint -> {
            context.within(joint, "nominal", joint.nominal(), MM, 0.5, Kind.LENGTH);
            context.within(joint, "length", joint.length(), 0, 0.5, Kind.LENGTH);
            context.within(joint, "around", joint.around(), 0, 2, Kind.LENGTH);
            context.within(joint, "slip", joint.slip(), 0, MM, Kind.LENGTH);
            if (joint.around() != 0 && joint.around() <= joint.nominal()) {
                context.fault(joint, "around", "nothing is left around the bore", "Give the outside of the outer part");
            }
            if (joint.outer().equals(joint.inner())) {
                context.fault(joint, "inner", "a part does not sit in itself", "Name the other part");
            }
            read(joint, "bore_read", joint.boreRead(), known);
            read(joint, "diameter_read", joint.diameterRead(), known);
        });
        List<String> readings = new ArrayList<>();
        type.clearances().forEach(clearance -> readings.add(clearance.id()));
        type.wearLimits().forEach(wear -> readings.add(wear.id()));
        type.holdPoints().forEach(hold -> hold.checks().forEach(check -> readings.add(hold.id() + "/" + check.id())));
        type.firstReadings().stream()
                .filter(context::sound)
                .filter(first -> !first.again().isEmpty() && !readings.contains(first.again()))
                .forEach(first -> context.fault(
                        first,
                        "again",
                        "\"" + first.again() + "\" is no clearance, wear limit or check",
                        Spelling.hint(first.again(), readings, "readings")));
        type.fasteners().stream()
                .filter(context::sound)
                .forEach(bolt -> context.within(bolt, "engagement", bolt.engagement(), 0, 0.2, Kind.LENGTH));
    }

    private void read(Joint joint, String key, List<String> sources, List<String> known) {
        for (String source : sources) {
            if (!known.contains(source)) {
                context.fault(
                        joint,
                        key,
                        "\"" + source + "\" is no wear limit and no check that reads a length",
                        Spelling.hint(source, known, "readings"));
            }
        }
    }

    private static List<String> lengths(UnitType type) {
        List<String> known = new ArrayList<>();
        type.wearLimits().stream()
                .filter(wear -> wear.kind() == CheckKind.LENGTH)
                .forEach(wear -> known.add(wear.id()));
        type.holdPoints()
                .forEach(hold -> hold.checks().stream()
                        .filter(check -> check.kind() == CheckKind.LENGTH)
                        .forEach(check -> known.add(hold.id() + "/" + check.id())));
        return known;
    }
}
