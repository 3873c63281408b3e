package shimwright.mechanics.thread;

import java.util.List;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.Units;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.mechanics.worksheet.Group;
import shimwright.mechanics.worksheet.Input;
import shimwright.mechanics.worksheet.Output;
import shimwright.mechanics.worksheet.Worksheet;

/** Worksheet {@code thread-wires}. */
public final class ThreadWires {
    private static final String WIRES = "three-wire method, FED-STD-H28, from memory; Machinery's Handbook";
    private static final double ROOT3 = Math.sqrt(3);

    /** Wires, in pitches: flush with the crest, and touching at its very edge. */
    private static final double LEAST = 0.505;

    private static final double MOST = 1.01;

    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
                    "thread-wires",
                    "Thread over three wires",
                    "Pitch diameter of a 60 degree thread from a reading over three wires, or the reading to aim for.",
                    List.of(WIRES, "ISO 68-1:1998; ASME B1.1, basic sizes"),
                    Case.class,
                    Result.class,
                    ThreadWires::work)
            .drawn(ThreadPictures::wires);

    private ThreadWires() {}

    /** A thread, the wires and what is known; lengths in metres. */
    public record Case(
            @Group ThreadSize size,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "measured diameter of the wires, else the best",
                    min = 5e-5,
                    max = 0.01)
            @Nullable
            Double wire,

            @Input(kind = Kind.LENGTH, meaning = "reading over the wires", min = 0.001, max = 0.13) @Nullable
            Double reading,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "pitch diameter to aim for, else the basic one",
                    min = 0.0008,
                    max = 0.1)
            @Nullable
            Double wantedPitch,

            @Input(meaning = "starts of the thread", orElse = "1", min = 1, max = 12)
            int starts) {}

    /** Lengths in metres, angle in radians. */
    public record Result(
            @Output(kind = Kind.LENGTH, meaning = "best wire: touches at the pitch diameter", decimals = 4)
            double bestWire,

            @Output(kind = Kind.LENGTH, meaning = "thinnest wire that stands proud", decimals = 4)
            double leastWire,

            @Output(kind = Kind.LENGTH, meaning = "thickest wire that still touches the flanks", decimals = 4)
            double mostWire,

            @Output(kind = Kind.LENGTH, meaning = "wire taken", decimals = 4)
            double wire,

            @Output(kind = Kind.ANGLE, meaning = "lead angle")
            double leadAngle,

            @Output(kind = Kind.LENGTH, meaning = "lead angle adds to the reading", decimals = 4)
            double leadCorrection,

            @Output(kind = Kind.LENGTH, meaning = "pitch diameter to aim for", decimals = 4)
            double aimedPitch,

            @Output(kind = Kind.LENGTH, meaning = "reading to aim for", decimals = 4)
            double aimedReading,

            @Output(kind = Kind.LENGTH, meaning = "pitch diameter as read", decimals = 4) @Nullable
            Double pitchDiameter,

            @Output(kind = Kind.LENGTH, meaning = "pitch diameter as read less the one to aim for", decimals = 4)
            @Nullable
            Double over) {}

    /**
     * M = d2 + 3 w − (√3/2) P + c, c = 3/4 w tan² ψ with tan ψ = starts P/(π d2); best wire P/√3.
     *
     * @param c lengths in m
     * @return lengths in m, angle in rad; refused: what the thread refuses, a wire that sinks below the crest or rides on its
     *     edges, a reading or aim that no thread of this size can have
     */
    public static Outcome<Worked<Result>> work(Case c) {
        Outcome<ThreadForm> found = c.size().form();
        if (!found.isOk()) {
            return Outcome.refused(found.refusals());
        }
        ThreadForm form = found.orElseThrow();
        double p = form.pitch();
        Double given = c.wire();
        double wire = given == null ? p / ROOT3 : given;
        if (wire < LEAST * p || wire > MOST * p) {
            return Outcome.refused(Refusal.of(
                    "wire",
                    "wires of " + Quantities.brief(wire, Units.MM) + (wire < p / 2 ? " sink below" : " do not enter")
                            + " a thread of " + Quantities.brief(p, Units.MM) + " pitch",
                    "Take wires of " + Quantities.brief(LEAST * p, Units.MM) + " to "
                            + Quantities.brief(MOST * p, Units.MM) + ", best near "
                            + Quantities.brief(p / ROOT3, Units.MM)));
        }
        Double wanted = c.wantedPitch();
        if (wanted != null && Math.abs(wanted - form.pitchDiameter()) > 0.5 * form.height()) {
            return Outcome.refused(Refusal.of(
                    "wantedPitch",
                    Quantities.brief(wanted, Units.MM) + " is far from the basic "
                            + Quantities.brief(form.pitchDiameter(), Units.MM),
                    "Look at the unit; the pitch diameter lies about two thirds of a pitch under the nominal"));
        }
        Double reading = c.reading();
        double least = form.pitchDiameter() + 3 * wire - ROOT3 / 2 * p;
        if (reading != null && Math.abs(reading - least) > 0.5 * form.height()) {
            return Outcome.refused(Refusal.of(
                    "reading",
                    Quantities.brief(reading, Units.MM) + " is far from the " + Quantities.brief(least, Units.MM)
                            + " that this thread and wire give",
                    "Look at the units, the wire and whether all three wires lie in"));
        }
        return Outcome.ok(measured(c, form, wire));
    }

    private static Worked<Result> measured(Case c, ThreadForm form, double wire) {
        Working w = new Working();
        double p = form.pitch();
        double best = w.line("best wire", "P/√3", p / ROOT3, Kind.LENGTH, WIRES);
        Double wanted = c.wantedPitch();
        double aim = wanted != null
                ? wanted
                : w.line("d2", "d − 3/4 H", form.pitchDiameter(), Kind.LENGTH, "ISO 68-1:1998; ASME B1.1");
        double tangent = c.starts() * p / (Math.PI * aim);
        double lead = w.line("ψ", "atan(starts × P/(π d2))", Math.atan(tangent), Kind.ANGLE, WIRES);
        double add = w.line("c", "3/4 × w tan² ψ", 0.75 * wire * tangent * tangent, Kind.LENGTH, WIRES);
        double wires = w.line("wires", "3 w − (√3/2) P + c", 3 * wire - ROOT3 / 2 * p + add, Kind.LENGTH, WIRES);
        double aimed = w.line("reading to aim for", "d2 + wires", aim + wires, Kind.LENGTH);
        Double reading = c.reading();
        Double pitch = reading == null
                ? null
                : w.line("pitch diameter", "reading − wires", reading - wires, Kind.LENGTH, WIRES);
        Double over = pitch == null ? null : w.line("over", "pitch diameter − aim", pitch - aim, Kind.LENGTH);
        if (Math.abs(wire - best) > 0.03 * best) {
            w.caution("This is not the best wire: a flank angle that is a little off now falsifies the reading.");
        }
        w.caution("A wire 0.001 mm too thick reads 0.003 mm too large: type the measured wire, not what the box says.");
        w.caution(
                "A light, even pressure, 10 N or so for a coarse thread: a hard pull flattens the wires into the flanks.");
        w.caution("Clean and deburr first; three places along and two round tell a worn or bent thread.");
        return w.worked(new Result(best, LEAST * p, MOST * p, wire, lead, add, aim, aimed, pitch, over));
    }
}
