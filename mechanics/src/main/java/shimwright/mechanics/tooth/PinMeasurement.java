package shimwright.mechanics.tooth;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.Units;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;

/** What the sheets for size over pins and between pins share. */
final class PinMeasurement {
    private static final double REFERENCE_TEMPERATURE = 293.15;

    private PinMeasurement() {}

    record Teeth(
            int count,
            @Nullable Double module,
            @Nullable Double diametralPitch,
            double pressureAngle,
            double helix,
            double pin) {}

    /** One of the three is there. */
    record Given(
            @Nullable Double arc,
            @Nullable Double shift,
            @Nullable Double reading) {}

    record Circles(
            @Nullable Double tip,
            @Nullable Double form,
            @Nullable Double root) {}

    record Warmth(@Nullable Double temperature, double expansion) {}

    record Found(
            Toothing toothing,
            double arc,
            Pins.Seat seat,
            @Nullable Double pitchPin,
            double warmth) {}

    static Outcome<Worked<Found>> work(
            Side side, Teeth teeth, Given given, Circles circles, Warmth warmth, Pins.Keys keys) {
        List<Refusal> faults = new ArrayList<>();
        ExactlyOne.one(
                faults, List.of(keys.reading(), keys.arc(), "shift"), given.reading(), given.arc(), given.shift());
        Optional<Toothing> read = Toothing.read(
                teeth.count(),
                teeth.module(),
                teeth.diametralPitch(),
                teeth.pressureAngle(),
                teeth.helix(),
                Plane.NORMAL,
                faults);
        if (read.isEmpty() || !faults.isEmpty()) {
            return Outcome.refused(faults);
        }
        Working w = new Working();
        Toothing t = read.get();
        t.show(w);
        double grown = warmth(w, given.reading(), warmth);
        return arc(w, side, t, teeth.pin(), given, grown, keys)
                .flatMap(arc -> Pins.seat(w, side, t, arc, teeth.pin(), keys)
                        .flatMap(seat -> checked(side, t, teeth.pin(), seat, circles))
                        .map(seat -> {
                            cautions(w, side, t, seat, given);
                            double pitchPin = Pins.pitchPin(side, t, arc);
                            Double shown = Double.isNaN(pitchPin) ? null : (Double) pitchPin;
                            return w.worked(new Found(t, arc, seat, shown, grown));
                        }));
    }

    private static double warmth(Working w, @Nullable Double reading, Warmth warmth) {
        Double temperature = warmth.temperature();
        if (temperature == null || reading == null) {
            return 0;
        }
        double step = temperature - REFERENCE_TEMPERATURE;
        double cold = reading / (1 + warmth.expansion() * step);
        return w.line(
                "growth by warmth",
                "reading − reading / (1 + expansion × (temperature − 20 °C))",
                reading - cold,
                Kind.LENGTH,
                "ISO 1:2022, reference temperature");
    }

    private static Outcome<Double> arc(
            Working w, Side side, Toothing t, double pin, Given given, double grown, Pins.Keys keys) {
        if (given.arc() != null) {
            return Outcome.ok(given.arc());
        }
        Double shift = given.shift();
        if (shift != null) {
            return Outcome.ok(w.line(
                    side == Side.EXTERNAL ? "tooth thickness" : "space width",
                    "module × (π/2 + 2 × shift × tan(pressure angle))",
                    t.arc(shift),
                    Kind.LENGTH,
                    Toothing.SOURCE));
        }
        Double reading = given.reading();
        double read = reading == null ? 0 : reading;
        return Pins.arc(w, side, t, read - grown, pin, keys);
    }

    /** The pin must touch flank, not edge or root, and stand proud of the tips. */
    private static Outcome<Pins.Seat> checked(Side side, Toothing t, double pin, Pins.Seat seat, Circles circles) {
        List<Refusal> faults = new ArrayList<>();
        int sign = side.sign();
        String usable = usable(side, t, seat);
        Double tip = circles.tip();
        if (tip != null && sign * (seat.contactDiameter() - tip) > 0) {
            faults.add(Refusal.of("pin", "touches at " + mm(seat.contactDiameter()) + ", beyond the tip", usable));
        }
        Double form = circles.form();
        if (form != null && sign * (form - seat.contactDiameter()) > 0) {
            faults.add(Refusal.of(
                    "pin", "touches at " + mm(seat.contactDiameter()) + ", below the involute flank", usable));
        }
        if (tip != null && sign * (seat.centreDiameter() + sign * pin - tip) <= 0) {
            faults.add(Refusal.of("pin", "does not stand proud of the tips", "Take a thicker pin"));
        }
        Double root = circles.root();
        if (root != null && sign * (seat.centreDiameter() - sign * pin - root) <= 0) {
            faults.add(Refusal.of("pin", "sits on the root", "Take a thicker pin, or flatten this one"));
        }
        return faults.isEmpty() ? Outcome.ok(seat) : Outcome.refused(faults);
    }

    private static String usable(Side side, Toothing t, Pins.Seat seat) {
        double pitch = t.reference();
        boolean small = side.sign() * (seat.contactDiameter() - pitch) < 0;
        return "Take a " + (small ? "thicker" : "thinner") + " pin; near " + mm(pitch) + " is a good place to touch";
    }

    private static void cautions(Working w, Side side, Toothing t, Pins.Seat seat, Given given) {
        if (!t.straight()) {
            w.caution(
                    side == Side.EXTERNAL && t.teeth() % 2 == 0
                            ? "Helical teeth: balls, or pins free to lie along the helix."
                            : "Helical teeth: use balls; straight pins read differently here.");
        }
        if (given.reading() != null) {
            w.caution("Use the pin's measured diameter: an error of the pin counts "
                    + Quantities.print(Math.abs(seat.perPin()), Units.ONE, 2) + " times in the size.");
            w.caution("Read at three or more positions and at both ends; this is the actual size, the fit is decided by"
                    + " the effective size.");
        }
    }

    static String mm(double length) {
        return Quantities.print(length, Units.MM, 3);
    }
}
