package shimwright.mechanics.fit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.Units;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.worksheet.Group;
import shimwright.mechanics.worksheet.Input;
import shimwright.mechanics.worksheet.Output;
import shimwright.mechanics.worksheet.Worksheet;

/** The worksheet {@code interference}. */
public final class Interference {
    /** More than this share of the diameter is a misread number, not a fit. */
    private static final double LARGEST_SHARE = 0.01;

    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
                    "interference",
                    "Interference fit",
                    "Pressure, stress, torque held and press force of a hub on a shaft, from the two measured diameters.",
                    List.of(
                            "Lamé's thick-walled cylinder: Boresi and Schmidt ch. 11; Ugural and Fenster ch. 8",
                            "Shigley's Mechanical Engineering Design, 9th ed., eqs. 7-48 and 7-49: force and torque",
                            "DIN 7190: loss by smoothing 0.8 (Rz + Rz), friction; from memory"),
                    Case.class,
                    Result.class,
                    Interference::work)
            .drawn(FitPictures::press);

    private Interference() {}

    /**
     * Case of {@code interference}; lengths in metres, temperatures in kelvin.
     *
     * @param bore readings of the hub bore at 20 °C, or its two limits
     * @param diameter readings of the shaft at 20 °C, or its two limits
     * @param hubOutside outside diameter of the hub; for a gear the root diameter
     * @param shaftBore inside diameter of the shaft, 0 when solid
     * @param length length of the seat
     * @param hub what the hub is made of
     * @param shaft what the shaft is made of
     * @param hubRoughness Rz of the bore; null when not known
     * @param shaftRoughness Rz of the shaft; null when not known
     * @param hubTemperature of the hub at work
     * @param shaftTemperature of the shaft at work
     * @param speed at work, rad/s
     * @param frictionLow for what is held
     * @param frictionHigh for sizing the press
     * @param slipFactor safety against slip
     * @param yieldFactor safety against yield
     * @param criterion how stress is compared with yield
     */
    public record Case(
            @Input(
                    kind = Kind.LENGTH,
                    meaning = "hub bore, all readings or the two limits",
                    min = 1e-3,
                    max = 2,
                    most = 100,
                    example = "35.000, 35.004 mm")
            List<Double> bore,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "shaft diameter, all readings or the two limits",
                    min = 1e-3,
                    max = 2,
                    most = 100,
                    example = "35.030, 35.034 mm")
            List<Double> diameter,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "hub outside diameter, root diameter for a gear",
                    min = 1e-3,
                    max = 10,
                    example = "60 mm")
            double hubOutside,

            @Input(kind = Kind.LENGTH, meaning = "bore of the shaft", min = 0, max = 2, orElse = "0 mm")
            double shaftBore,

            @Input(kind = Kind.LENGTH, meaning = "length of the seat", min = 1e-4, max = 2, example = "22 mm")
            double length,

            @Input(meaning = "hub, what it is made of") PartMaterial hub,
            @Input(meaning = "shaft, what it is made of") PartMaterial shaft,

            @Input(kind = Kind.LENGTH, unit = "µm", meaning = "roughness Rz of the bore", min = 0, max = 1e-4) @Nullable
            Double hubRoughness,

            @Input(kind = Kind.LENGTH, unit = "µm", meaning = "roughness Rz of the shaft", min = 0, max = 1e-4)
            @Nullable
            Double shaftRoughness,

            @Input(
                    kind = Kind.TEMPERATURE,
                    meaning = "hub temperature at work",
                    min = 173.15,
                    max = 573.15,
                    orElse = "20 °C")
            double hubTemperature,

            @Input(
                    kind = Kind.TEMPERATURE,
                    meaning = "shaft temperature at work",
                    min = 173.15,
                    max = 573.15,
                    orElse = "20 °C")
            double shaftTemperature,

            @Input(kind = Kind.ROTATION, meaning = "speed at work", min = 0, max = 10000, orElse = "0 rpm")
            double speed,

            @Input(meaning = "low friction, for what is held", min = 0.01, max = 1, orElse = "0.08")
            double frictionLow,

            @Input(meaning = "high friction, for the press", min = 0.01, max = 1, orElse = "0.20")
            double frictionHigh,

            @Input(meaning = "safety against slip", min = 1, max = 5, orElse = "1.5")
            double slipFactor,

            @Input(meaning = "safety against yield", min = 1, max = 3, orElse = "1.2")
            double yieldFactor,

            @Input(meaning = "yield criterion", orElse = "von mises")
            Criterion criterion) {}

    /**
     * Result of {@code interference}. "Tightest" pairs the largest shaft with the smallest bore, "loosest" the other way.
     * Lengths in metres, diametral, interference positive; pressures, stresses in Pa, tension positive.
     *
     * @param sizes interference by size
     * @param losses what is lost of it on the way to work
     * @param left what is left of it at work
     * @param pressure of the joint
     * @param hub stresses of the hub at the highest pressure
     * @param shaft stresses of the shaft at the highest pressure
     * @param held torque and axial force
     * @param press what the press will need
     * @param changes of the sizes around the joint
     * @param curve force over travel
     */
    public record Result(
            @Group BySize sizes,
            @Group Losses losses,
            @Group AtWork left,
            @Group JointPressure pressure,
            @Output(meaning = "hub at the highest pressure") Hub hub,

            @Output(meaning = "shaft at the highest pressure")
            Shaft shaft,

            @Group Held held,
            @Group PressForce press,
            @Group Changes changes,
            @Output(meaning = "press force over travel") List<Point> curve) {
        /**
         * Interference by size at 20 °C.
         *
         * @param measuredTightest interference by size at 20 °C
         * @param measuredLoosest the same of the loosest pair; may be negative
         * @param perDiameter tightest interference over joint diameter
         */
        public record BySize(
                @Output(kind = Kind.LENGTH, decimals = 4, meaning = "interference by size, tightest")
                double measuredTightest,

                @Output(kind = Kind.LENGTH, decimals = 4, meaning = "interference by size, loosest")
                double measuredLoosest,

                @Output(decimals = 6, meaning = "tightest interference per diameter")
                double perDiameter) {}

        /**
         * What is lost of it.
         *
         * @param smoothing lost as the roughness is pressed flat
         * @param heatLoss lost between 20 °C and work; negative when gained
         * @param speedLoss lost by turning
         */
        public record Losses(
                @Output(kind = Kind.LENGTH, decimals = 4, meaning = "lost to roughness")
                double smoothing,

                @Output(kind = Kind.LENGTH, decimals = 4, meaning = "lost to heat at work")
                double heatLoss,

                @Output(kind = Kind.LENGTH, decimals = 4, meaning = "lost to speed")
                double speedLoss) {}

        /**
         * What is left of it at work.
         *
         * @param tightest what is left at work of the tightest
         * @param loosest what is left at work of the loosest
         */
        public record AtWork(
                @Output(kind = Kind.LENGTH, decimals = 4, meaning = "interference at work, tightest")
                double tightest,

                @Output(kind = Kind.LENGTH, decimals = 4, meaning = "interference at work, loosest")
                double loosest) {}

        /**
         * Pressure in the joint.
         *
         * @param highestPressure joint pressure of the tightest, the greater of as fitted at 20 °C and at work
         * @param lowestPressure joint pressure of the loosest, the smaller of the two
         */
        public record JointPressure(
                @Output(kind = Kind.PRESSURE, meaning = "highest joint pressure")
                double highestPressure,

                @Output(kind = Kind.PRESSURE, meaning = "lowest joint pressure")
                double lowestPressure) {}

        /**
         * What the joint surely holds.
         *
         * @param torque held at the lowest pressure with low friction and the slip factor, N·m
         * @param axialForce held likewise, N
         */
        public record Held(
                @Output(kind = Kind.TORQUE, meaning = "torque surely held")
                double torque,

                @Output(kind = Kind.FORCE, meaning = "axial force surely held")
                double axialForce) {}

        /**
         * Force of the press over the whole travel.
         *
         * @param pressForceLow least to expect at full travel: loosest pair at 20 °C, low friction, N
         * @param pressForceHigh most to expect at full travel: tightest pair at 20 °C, high friction, N
         * @param stopForce force at which even high friction says the hub is at its limit, N
         */
        public record PressForce(
                @Output(kind = Kind.FORCE, unit = "kN", decimals = 2, meaning = "press force to expect, least")
                double pressForceLow,

                @Output(kind = Kind.FORCE, unit = "kN", decimals = 2, meaning = "press force to expect, most")
                double pressForceHigh,

                @Output(kind = Kind.FORCE, unit = "kN", decimals = 2, meaning = "stop and look at")
                double stopForce) {}

        /**
         * How the sizes around it change.
         *
         * @param hubGrowth by which the outside of the hub grows
         * @param shaftBoreShrink by which the bore of the shaft closes
         */
        public record Changes(
                @Output(kind = Kind.LENGTH, decimals = 4, meaning = "hub outside grows by")
                double hubGrowth,

                @Output(kind = Kind.LENGTH, decimals = 4, meaning = "shaft bore closes by")
                double shaftBoreShrink) {}

        public Result {
            curve = List.copyOf(curve);
        }

        /** How a part stands against its yield strength. */
        public enum Strength {
            HOLDS,
            WITHOUT_MARGIN,
            YIELDS
        }

        /**
         * The hub.
         *
         * @param hoop hoop stress at the joint
         * @param hoopOutside hoop stress at the outside
         * @param equivalent equivalent stress at the joint by the criterion
         * @param elasticPressure joint pressure at which it begins to yield
         * @param strength against yield with the yield factor
         */
        public record Hub(
                @Output(kind = Kind.PRESSURE, decimals = 1, meaning = "hoop stress at the joint")
                double hoop,

                @Output(kind = Kind.PRESSURE, decimals = 1, meaning = "hoop stress at the outside")
                double hoopOutside,

                @Output(kind = Kind.PRESSURE, decimals = 1, meaning = "equivalent stress at the joint")
                double equivalent,

                @Output(kind = Kind.PRESSURE, decimals = 1, meaning = "joint pressure at which it yields")
                double elasticPressure,

                @Output(meaning = "against yield") Strength strength) {}

        /**
         * The shaft.
         *
         * @param hoop hoop stress at the joint
         * @param hoopBore hoop stress at the bore; null when solid
         * @param equivalent greatest equivalent stress by the criterion
         * @param strength against yield with the yield factor
         */
        public record Shaft(
                @Output(kind = Kind.PRESSURE, decimals = 1, meaning = "hoop stress at the joint")
                double hoop,

                @Output(kind = Kind.PRESSURE, decimals = 1, meaning = "hoop stress at the bore") @Nullable
                Double hoopBore,

                @Output(kind = Kind.PRESSURE, decimals = 1, meaning = "equivalent stress")
                double equivalent,

                @Output(meaning = "against yield") Strength strength) {}

        /**
         * One point of the press card.
         *
         * @param travel length in engagement
         * @param low least force to expect, N
         * @param high most force to expect, N
         */
        public record Point(
                @Output(kind = Kind.LENGTH, decimals = 1, meaning = "travel")
                double travel,

                @Output(kind = Kind.FORCE, unit = "kN", decimals = 2, meaning = "least")
                double low,

                @Output(kind = Kind.FORCE, unit = "kN", decimals = 2, meaning = "most")
                double high) {}
    }

    /**
     * An elastic press or shrink fit, contact all round, hub and shaft of even section.
     *
     * <p>Refused: a hub or a hollow shaft without a wall, no interference even at the tightest, more than 1 % of the
     * diameter, low friction above the high one. A fit that yields, or slips at the loosest, is answered with a caution.
     */
    static Outcome<Worked<Result>> work(Case c) {
        List<Refusal> refusals = new ArrayList<>();
        double largestBore = Collections.max(c.bore());
        double smallestShaft = Collections.min(c.diameter());
        double smallestJoint = Math.min(smallestShaft, Collections.min(c.bore()));
        if (c.hubOutside() <= largestBore) {
            refusals.add(Refusal.of(
                    "hubOutside",
                    mm(c.hubOutside()) + " leaves no hub around a bore of " + mm(largestBore),
                    "Measure the outside of the hub, for a gear at the root of the teeth"));
        }
        if (c.shaftBore() >= smallestJoint) {
            refusals.add(Refusal.of(
                    "shaftBore",
                    mm(c.shaftBore()) + " leaves no wall in a shaft of "
                            + mm(c.shaftBore() >= smallestShaft ? smallestShaft : smallestJoint),
                    "Measure the bore of the shaft, 0 when it is solid"));
        }
        double tightest = Collections.max(c.diameter()) - Collections.min(c.bore());
        if (tightest <= 0) {
            refusals.add(Refusal.of(
                    "diameter",
                    "the largest shaft reading is not larger than the smallest bore: no interference",
                    "Look whether bore and shaft are swapped; a loose pair needs another way to hold"));
        } else if (tightest > LARGEST_SHARE * Collections.min(c.bore())) {
            refusals.add(Refusal.of(
                    "diameter",
                    "an interference of " + mm(tightest) + " is more than 1 % of the diameter",
                    "Look for a misread digit"));
        }
        if (c.frictionLow() > c.frictionHigh()) {
            refusals.add(Refusal.of(
                    "frictionLow", "the low friction is above the high one", "Give the smaller value as frictionLow"));
        }
        return refusals.isEmpty() ? Outcome.ok(new PressFitSolution(c).worked()) : Outcome.refused(refusals);
    }

    static String mm(double metres) {
        return Quantities.brief(metres, Units.MM);
    }
}
