package shimwright.mechanics.fit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.Units;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.worksheet.Worksheet;

/** The worksheet {@code interference}. */
final class Interference {
    static final Worksheet<PressPair, PressFit> SHEET = new Worksheet<>(
                    "interference",
                    "Interference fit",
                    "Pressure, stress, torque held and press force of a hub on a shaft, from the two measured diameters.",
                    List.of(
                            "Lamé's thick-walled cylinder: Boresi and Schmidt ch. 11; Ugural and Fenster ch. 8",
                            "Shigley's Mechanical Engineering Design, 9th ed., eqs. 7-48 and 7-49: force and torque",
                            "DIN 7190: loss by smoothing 0.8 (Rz + Rz), friction; from memory"),
                    PressPair.class,
                    PressFit.class,
                    Interference::work)
            .drawn(FitPictures::press);

    /** More than this share of the diameter is a misread number, not a fit. */
    private static final double LARGEST_SHARE = 0.01;

    private Interference() {}

    /**
     * An elastic press or shrink fit, contact all round, hub and shaft of even section.
     *
     * <p>Refused: a hub or a hollow shaft without a wall, no interference even at the tightest, more than 1 % of the
     * diameter, low friction above the high one. A fit that yields, or slips at the loosest, is answered with a caution.
     */
    static Outcome<Worked<PressFit>> work(PressPair c) {
        List<Refusal> refusals = new ArrayList<>();
        double largestBore = Collections.max(c.bore());
        double smallestShaft = Collections.min(c.diameter());
        double smallestJoint = Math.min(smallestShaft, Collections.min(c.bore()));
        if (c.hubOutside() <= largestBore) {
            refusals.add(new Refusal(
                    "hubOutside",
                    mm(c.hubOutside()) + " leaves no hub around a bore of " + mm(largestBore),
                    "Measure the outside of the hub, for a gear at the root of the teeth"));
        }
        if (c.shaftBore() >= smallestJoint) {
            refusals.add(new Refusal(
                    "shaftBore",
                    mm(c.shaftBore()) + " leaves no wall in a shaft of "
                            + mm(c.shaftBore() >= smallestShaft ? smallestShaft : smallestJoint),
                    "Measure the bore of the shaft, 0 when it is solid"));
        }
        double tightest = Collections.max(c.diameter()) - Collections.min(c.bore());
        if (tightest <= 0) {
            refusals.add(new Refusal(
                    "diameter",
                    "the largest shaft reading is not larger than the smallest bore: no interference",
                    "Look whether bore and shaft are swapped; a loose pair needs another way to hold"));
        } else if (tightest > LARGEST_SHARE * Collections.min(c.bore())) {
            refusals.add(new Refusal(
                    "diameter",
                    "an interference of " + mm(tightest) + " is more than 1 % of the diameter",
                    "Look for a misread digit"));
        }
        if (c.frictionLow() > c.frictionHigh()) {
            refusals.add(new Refusal(
                    "frictionLow", "the low friction is above the high one", "Give the smaller value as frictionLow"));
        }
        return refusals.isEmpty() ? Outcome.ok(new Pressing(c).worked()) : Outcome.refused(refusals);
    }

    static String mm(double metres) {
        return Quantities.brief(metres, Units.MM);
    }
}
