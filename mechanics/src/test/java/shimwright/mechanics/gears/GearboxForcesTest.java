package shimwright.mechanics.gears;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import shimwright.mechanics.worksheet.Answer;

/** The three shafts of a countershaft gearbox: a printed example, statics by hand, and balance in space. */
class GearboxForcesTest {
    /** Shigley's Mechanical Engineering Design, 9th ed., p. 375 (read): intermediate shaft of a spur gear train. */
    @Test
    void thePrintedIntermediateShaftIsMet() {
        Answer answer = SheetCalls.answer(
                "mesh-forces",
                "inputTorque=720 lbf·in | inputTeeth=16 | drivenTeeth=72 | diametralPitch=6 | helix=0°"
                        + " | position=2.75 in | gears=low: 16: 72: 8.5 in | bearingA=0.75 in | bearingB=10.75 in");
        double pound = 4.4482216152605;
        // the book goes on with a gear force of 2431 lbf where 3240 lbf·in on 16 teeth of 6 to the inch give 2430
        assertThat(Math.abs(SheetCalls.number(answer, "loads[0].across")) / pound)
                .isCloseTo(115.0, within(0.5));
        assertThat(Math.abs(SheetCalls.number(answer, "loads[0].along")) / pound)
                .isCloseTo(356.7, within(0.5));
        assertThat(Math.abs(SheetCalls.number(answer, "loads[1].across")) / pound)
                .isCloseTo(1776.0, within(0.8));
        assertThat(Math.abs(SheetCalls.number(answer, "loads[1].along")) / pound)
                .isCloseTo(725.3, within(0.8));
    }

    private static final String HAND = "inputTorque=100 N·m | inputTeeth=20 | drivenTeeth=40 | module=2.5 mm | helix=0°"
            + " | position=20 mm | gears=1st: 20: 40: 120 mm; top: 0: 0: 0 mm | bearingA=0 mm | bearingB=200 mm"
            + " | inputBearings=-180 mm, 0 mm | spigot=40 mm | outputBearings=200 mm | pull=";

    /**
     * Statics by hand. Teeth: 100 N·m / 25 mm = 4000 N and 200 N·m / 25 mm = 8000 N; away from the countershaft 4000 and
     * 8000 × tan 20°. The output gear stands midway between spigot and rear bearing, so each takes half. On the input
     * shaft the gear's 4000 N at 20 mm and the spigot's 4000 N at 40 mm are opposite.
     */
    @Test
    void spigotAndBearingsAsWorkedOutByHand() {
        Answer answer = SheetCalls.answer("mesh-forces", HAND + "drive");
        double half = 4000 * Math.tan(Math.PI / 9);
        is(answer, 0, "output bearing", -half, 4000);
        is(answer, 1, "spigot, on the output shaft", -half, 4000);
        is(answer, 2, "input bearing 1", half * (420 / 180.0 - 2), -80 / 0.18);
        is(answer, 3, "input bearing 2", -half * 420 / 180, 80 / 0.18);
        assertThat(SheetCalls.number(answer, "main[0].torque")).isCloseTo(400, within(1e-9));
        for (int i = 0; i < 4; i++) {
            assertThat(SheetCalls.number(answer, "loads[" + (8 + i) + "].radial"))
                    .isZero();
        }
        assertThat(SheetCalls.number(answer, "main[1].torque")).isEqualTo(100);
        Answer coast = SheetCalls.answer("mesh-forces", HAND + "coast");
        is(coast, 1, "spigot, on the output shaft", -half, -4000);
        assertThat(SheetCalls.number(coast, "main[0].torque")).isCloseTo(-400, within(1e-9));
        assertThat(answer.diagrams()).hasSize(6);
    }

    private static void is(Answer answer, int at, String name, double along, double across) {
        String path = "loads[" + (2 + at) + "].";
        assertThat(SheetCalls.at(answer, path + "bearing")).isEqualTo(name);
        assertThat(SheetCalls.number(answer, path + "along")).isCloseTo(along, within(1e-6));
        assertThat(SheetCalls.number(answer, path + "across")).isCloseTo(across, within(1e-6));
    }

    private record Vector(double x, double y, double z) {
        static final Vector ZERO = new Vector(0, 0, 0);

        Vector add(Vector more) {
            return new Vector(x + more.x, y + more.y, z + more.z);
        }

        Vector negate() {
            return new Vector(-x, -y, -z);
        }

        Vector cross(Vector by) {
            return new Vector(y * by.z - z * by.y, z * by.x - x * by.z, x * by.y - y * by.x);
        }

        double length() {
            return Math.hypot(x, Math.hypot(y, z));
        }
    }

    /** Forces and moments on one shaft, added up in space: x to the rear, y from the countershaft to the main line. */
    private static final class Sum {
        private Vector force = Vector.ZERO;
        private Vector moment = Vector.ZERO;
        private double size;

        void add(Vector at, Vector push) {
            force = force.add(push);
            moment = moment.add(at.cross(push));
            size += push.length();
        }

        void torque(double about) {
            moment = moment.add(new Vector(about, 0, 0));
        }

        void isBalanced() {
            assertThat(force.length()).isCloseTo(0, within(1e-9 * size));
            assertThat(moment.length()).isCloseTo(0, within(1e-9 * size));
        }
    }

    /** A force on a tooth, its point r away from an axis at y = height in a direction. */
    private static Vector at(double x, double height, double radius, double around) {
        return new Vector(x, height + radius * Math.cos(around), radius * Math.sin(around));
    }

    private static Vector push(double around, double tangential, double radial, double axial) {
        return new Vector(
                axial,
                -radial * Math.cos(around) - tangential * Math.sin(around),
                -radial * Math.sin(around) + tangential * Math.cos(around));
    }

    private static Vector load(Answer answer, String path) {
        return new Vector(0, SheetCalls.number(answer, path + ".along"), SheetCalls.number(answer, path + ".across"));
    }

    /** One unit as drawn by chance; lengths in m. */
    private record Box(double torque, int in, int driven, int driving, double helix, String hands, double place) {
        double radius(int teeth) {
            return teeth * 0.0025 / (2 * Math.cos(helix));
        }

        int out() {
            return in + driven - driving;
        }

        Answer ask(String gear, String bearings, String pull) {
            return SheetCalls.answer(
                    "mesh-forces",
                    String.format(
                            Locale.ROOT,
                            "inputTorque=%s N·m | inputTeeth=%d | drivenTeeth=%d | module=2.5 mm | helix=%s rad | hand=%s"
                                    + " | position=25 mm | gears=%s | bearingA=0 mm | bearingB=180 mm | %s | pull=%s",
                            torque,
                            in,
                            driven,
                            helix,
                            hands.split("/", -1)[0],
                            gear,
                            bearings,
                            pull));
        }
    }

    /** Every shaft is in balance in space, whichever carries the other, pulling and coasting. */
    @Property(tries = 60)
    void everyShaftIsInBalance(
            @ForAll @Scale(12) @DoubleRange(min = 10, max = 500) double torque,
            @ForAll @IntRange(min = 16, max = 30) int in,
            @ForAll @IntRange(min = 25, max = 40) int driven,
            @ForAll @IntRange(min = 12, max = 24) int driving,
            @ForAll @Scale(12) @DoubleRange(min = 0, max = 0.6) double helix,
            @ForAll @Scale(12) @DoubleRange(min = 40, max = 170) double place,
            @ForAll boolean rightIn,
            @ForAll boolean rightOut,
            @ForAll boolean coast,
            @ForAll boolean inputCarries) {
        Box box = new Box(
                torque,
                in,
                driven,
                driving,
                helix,
                (rightIn ? "right" : "left") + "/" + (rightOut ? "right" : "left"),
                place / 1000);
        String gear = "g: " + driving + ": " + box.out() + ": " + place + " mm: " + helix + " rad: "
                + (rightOut ? "right" : "left");
        double[] own = inputCarries ? new double[] {-0.15, 0, 0.03, 0.18} : new double[] {0, 0.03, 0.05, 0.18};
        String bearings = inputCarries
                ? "inputBearings=-150 mm, 0 mm | spigot=30 mm | outputBearings=180 mm"
                : "inputBearings=0 mm | spigot=30 mm | outputBearings=50 mm, 180 mm";
        Answer answer = box.ask(gear, bearings, coast ? "coast" : "drive");
        int way = coast ? -1 : 1;
        double height = box.radius(in) + box.radius(driven);
        Vector inputPush = push(
                0,
                -way * SheetCalls.number(answer, "input.tangential"),
                SheetCalls.number(answer, "input.radial"),
                SheetCalls.number(answer, "input.axial"));
        Vector inputAt = at(0.025, 0, box.radius(driven), 0);
        Vector gearPush = push(
                0,
                way * SheetCalls.number(answer, "gears[0].tangential"),
                SheetCalls.number(answer, "gears[0].radial"),
                SheetCalls.number(answer, "gears[0].axial"));
        Vector gearAt = at(box.place(), 0, box.radius(driving), 0);

        counterIsBalanced(answer, inputAt, inputPush, gearAt, gearPush);

        Vector spigotOn = load(answer, "loads[3]");
        Vector axis = new Vector(0, height, 0);
        Sum input = new Sum();
        input.add(inputAt, inputPush.negate());
        input.torque(way * torque);
        input.add(axis, new Vector(-SheetCalls.number(answer, "main[0].inputThrust"), 0, 0));
        Sum output = new Sum();
        output.add(gearAt, gearPush.negate());
        output.torque(-SheetCalls.number(answer, "main[0].torque"));
        output.add(axis, new Vector(-SheetCalls.number(answer, "main[0].outputThrust"), 0, 0));
        if (inputCarries) {
            output.add(axis.add(new Vector(own[2], 0, 0)), spigotOn);
            input.add(axis.add(new Vector(own[2], 0, 0)), spigotOn.negate());
            output.add(axis.add(new Vector(own[3], 0, 0)), load(answer, "loads[2]"));
            input.add(axis.add(new Vector(own[0], 0, 0)), load(answer, "loads[4]"));
            input.add(axis.add(new Vector(own[1], 0, 0)), load(answer, "loads[5]"));
        } else {
            input.add(axis.add(new Vector(own[0], 0, 0)), load(answer, "loads[2]"));
            input.add(axis.add(new Vector(own[1], 0, 0)), spigotOn);
            output.add(axis.add(new Vector(own[1], 0, 0)), spigotOn.negate());
            output.add(axis.add(new Vector(own[2], 0, 0)), load(answer, "loads[4]"));
            output.add(axis.add(new Vector(own[3], 0, 0)), load(answer, "loads[5]"));
        }
        input.isBalanced();
        output.isBalanced();
        assertThat(SheetCalls.number(answer, "main[0].torque"))
                .isCloseTo(way * torque * driven / in * box.out() / driving, within(1e-9 * torque));
    }

    private static void counterIsBalanced(
            Answer answer, Vector inputAt, Vector inputPush, Vector gearAt, Vector gearPush) {
        Sum counter = new Sum();
        counter.add(inputAt, inputPush);
        counter.add(gearAt, gearPush);
        counter.add(Vector.ZERO, load(answer, "loads[0]"));
        counter.add(new Vector(0.18, 0, 0), load(answer, "loads[1]"));
        counter.add(Vector.ZERO, new Vector(-SheetCalls.number(answer, "gears[0].thrust"), 0, 0));
        counter.isBalanced();
    }

    /** Through an idler the output turns backward, and the case holds what engine and road twist it by. */
    @Property(tries = 30)
    void withAnIdlerTheWholeBoxIsInBalance(
            @ForAll @IntRange(min = 14, max = 18) int driving,
            @ForAll @IntRange(min = 26, max = 30) int out,
            @ForAll @IntRange(min = 16, max = 20) int idler,
            @ForAll boolean left) {
        double unit = 0.00125;
        double height = 53 * unit;
        double near = (driving + idler) * unit;
        double far = (out + idler) * unit;
        double around = Math.acos((near * near + height * height - far * far) / (2 * near * height)) * (left ? -1 : 1);
        Answer answer = SheetCalls.answer(
                "mesh-forces",
                "inputTorque=150 N·m | inputTeeth=24 | drivenTeeth=29 | module=2.5 mm | helix=0° | position=25 mm"
                        + " | bearingA=0 mm | bearingB=180 mm | inputBearings=-150 mm, 0 mm | spigot=30 mm"
                        + " | outputBearings=180 mm | gears=reverse: " + driving + ": " + out
                        + ": 160 mm: 0°: right: 2.5 mm: "
                        + idler + ": " + around + " rad");
        double torque = 150 * 29.0 / 24 * out / driving;
        assertThat(SheetCalls.number(answer, "main[0].torque")).isCloseTo(-torque, within(1e-9 * torque));
        Vector axis = new Vector(0, height, 0);
        Sum box = new Sum();
        box.add(Vector.ZERO, load(answer, "loads[0]"));
        box.add(new Vector(0.18, 0, 0), load(answer, "loads[1]"));
        double[] places = {0.18, Double.NaN, -0.15, 0};
        for (int i : List.of(0, 2, 3)) {
            box.add(axis.add(new Vector(places[i], 0, 0)), load(answer, "loads[" + (2 + i) + "]"));
        }
        assertThat(SheetCalls.at(answer, "loads[6].bearing")).isEqualTo("idler pin");
        box.add(at(0.16, 0, near, around), load(answer, "loads[6]"));
        box.torque(150 + torque);
        box.isBalanced();
    }
}
