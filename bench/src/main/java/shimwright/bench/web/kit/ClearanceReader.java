package shimwright.bench.web.kit;

import java.util.Arrays;
import java.util.List;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.Range;
import shimwright.rebuild.unit.edit.AddClearance;
import shimwright.rebuild.unit.model.Clearance.Sense;

/** A clearance in its short form, as it was typed: of the unit's page and of the strip-down alike. */
public final class ClearanceReader {
    private static final Range PLAY = new Range(0, 5e-3);
    private static final Range LONG = new Range(0, 1);
    private static final Range SIZE = new Range(1e-3, 1);
    private static final Range THICK = new Range(0.01e-3, 0.05);
    private static final Range DRAG = new Range(0, 200);

    private ClearanceReader() {}

    /**
     * What was typed. A preload is typed as the book prints it, 0.02 to 0.06, and kept below 0.
     *
     * @param form to which what is missing or cannot be is added; what is read is then not to be used
     */
    public static AddClearance read(Form form) {
        Sense sense = Arrays.stream(Sense.values())
                .filter(one -> one.name().equals(form.raw("sense")))
                .findFirst()
                .orElse(Sense.END_PLAY);
        if (!form.raw("sense").equals(sense.name())) {
            form.fault(
                    "sense",
                    "what it is",
                    "nothing chosen",
                    "Choose end play, backlash, ring play, preload or distance");
        }
        if (form.raw("acts").isEmpty()) {
            form.fault("acts", "which way a thicker shim acts", "nothing chosen", "Say whether it closes or opens");
        }
        Range limits = sense == Sense.DISTANCE ? LONG : PLAY;
        double least = form.quantity("lower", Kind.LENGTH, "lower limit", limits);
        double most = form.quantity("upper", Kind.LENGTH, "upper limit", limits);
        boolean preload = sense == Sense.PRELOAD;
        return new AddClearance(
                needed(form, "name", "name", "Name it, such as input end play"),
                sense,
                preload ? -most : least,
                preload ? -least : most,
                needed(
                        form,
                        "origin",
                        "where the limits come from",
                        "Say book and page, told, common practice or guess"),
                needed(form, "where", "where the shims go", "Say behind or under what"),
                new AddClearance.Shims(
                        form.quantity("inner", Kind.LENGTH, "inside of the shims", SIZE),
                        form.quantity("outer", Kind.LENGTH, "outside of the shims", SIZE),
                        form.quantity("thinnest", Kind.LENGTH, "thinnest shim", THICK),
                        form.quantity("thickest", Kind.LENGTH, "thickest shim", THICK),
                        form.raw("item")),
                form.raw("acts").equals("closes"),
                needed(form, "gauge", "gauge", "Say what it is read with"),
                form.raw("after"),
                proof(form, sense));
    }

    private static AddClearance.Proof proof(Form form, Sense sense) {
        double offset = sense == Sense.DISTANCE && !form.raw("offset").isBlank()
                ? form.quantity("offset", Kind.LENGTH, "added to each reading", LONG)
                : 0;
        boolean least = !form.raw("dragLeast").isBlank();
        boolean most = !form.raw("dragMost").isBlank();
        if (sense != Sense.PRELOAD || !(least || most)) {
            return new AddClearance.Proof(offset, List.of());
        }
        if (!(least && most)) {
            form.fault(
                    least ? "dragMost" : "dragLeast",
                    "turning torque",
                    "one of the two limits is missing",
                    "Type both, or none where nobody knows");
        }
        return new AddClearance.Proof(
                offset,
                List.of(
                        form.quantity("dragLeast", Kind.TORQUE, "least turning torque", DRAG),
                        form.quantity("dragMost", Kind.TORQUE, "most turning torque", DRAG)));
    }

    private static String needed(Form form, String name, String place, String hint) {
        String text = form.raw(name).strip();
        if (text.isEmpty()) {
            form.fault(name, place, "nothing typed", hint);
        }
        return text;
    }
}
