package shimwright.mechanics.fit;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.mechanics.worksheet.Input;
import shimwright.mechanics.worksheet.Output;
import shimwright.mechanics.worksheet.Worksheet;

/** The worksheet {@code time-to-grab}. */
public final class TimeToGrab {
    private static final String INCROPERA = "Incropera 5.1 to 5.3";
    private static final double STILL_AIR = 10;
    private static final double LARGEST_BIOT = 0.1;

    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
                    "time-to-grab",
                    "Time to grab",
                    "How long a heated or chilled part stays free in the air, and what is left of its growth on arrival.",
                    List.of(
                            "Incropera et al., Fundamentals of Heat and Mass Transfer, 5.1 to 5.3: lumped cooling, radiation",
                            "contact coefficient: order of magnitude, common practice, no source"),
                    Case.class,
                    Result.class,
                    TimeToGrab::work)
            .drawn(FitPictures::cooling);

    private TimeToGrab() {}

    /**
     * Case of {@code time-to-grab}; lengths in metres, temperatures in kelvin. The carried part is the one heated or chilled.
     *
     * @param outer outside diameter of the carried part
     * @param bore its bore, 0 for a solid one
     * @param width its width
     * @param joint diameter at which it fits: its bore when hot, its outside when cold
     * @param part what it is made of
     * @param start its temperature leaving the oven or the cold
     * @param air temperature around it
     * @param needed growth (or shrink) that must still be there when it is home: interference and the clearance to move it
     * @param film film coefficient of the air with radiation; null takes 10 for still air and adds radiation
     * @param emissivity for the radiation
     * @param carry time from the oven to the shoulder, s
     * @param contact contact coefficient once it touches
     */
    public record Case(
            @Input(
                    kind = Kind.LENGTH,
                    meaning = "outside diameter of the carried part",
                    min = 1e-3,
                    max = 2,
                    example = "110 mm")
            double outer,

            @Input(kind = Kind.LENGTH, meaning = "its bore, 0 when solid", min = 0, max = 2, example = "35 mm")
            double bore,

            @Input(kind = Kind.LENGTH, meaning = "its width", min = 1e-4, max = 2, example = "22 mm")
            double width,

            @Input(kind = Kind.LENGTH, meaning = "diameter at which it fits", min = 1e-3, max = 2, example = "35 mm")
            double joint,

            @Input(meaning = "what it is made of") PartMaterial part,

            @Input(
                    kind = Kind.TEMPERATURE,
                    meaning = "its temperature leaving the oven or the cold",
                    min = 73.15,
                    max = 673.15,
                    example = "150 °C")
            double start,

            @Input(kind = Kind.TEMPERATURE, meaning = "air temperature", min = 253.15, max = 323.15, orElse = "20 °C")
            double air,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "growth or shrink that must still be there",
                    min = 1e-7,
                    max = 0.02,
                    example = "0.030 mm")
            double needed,

            @Input(
                    kind = Kind.HEAT_TRANSFER,
                    meaning = "film coefficient with radiation, else still air",
                    min = 1,
                    max = 1000)
            @Nullable
            Double film,

            @Input(meaning = "emissivity of the surface", min = 0, max = 1, orElse = "0.8")
            double emissivity,

            @Input(
                    kind = Kind.TIME,
                    meaning = "time from the oven to the shoulder",
                    min = 0,
                    max = 3600,
                    orElse = "15 s")
            double carry,

            @Input(
                    kind = Kind.HEAT_TRANSFER,
                    meaning = "contact coefficient once it touches",
                    min = 100,
                    max = 100000,
                    orElse = "3000")
            double contact) {}

    /**
     * Result of {@code time-to-grab}; lengths in metres, times in seconds, temperatures in kelvin.
     *
     * @param length volume over area of the carried part
     * @param film film coefficient taken
     * @param biot Biot number
     * @param lumped whether one temperature for the whole part is allowed, Biot below 0.1
     * @param timeConstant in the air
     * @param timeInAir until the growth has fallen to what is needed
     * @param temperatureThen its temperature at that moment
     * @param temperatureOnArrival after the carry
     * @param growthOnArrival growth, or shrink, after the carry
     * @param inHand that growth less what is needed; negative: too late
     * @param contactTimeConstant once it touches the other part, order of magnitude
     * @param shoulderGap opens at the shoulder if the far end grips first at {@code start} and the part then cools
     */
    public record Result(
            @Output(kind = Kind.LENGTH, meaning = "volume over area")
            double length,

            @Output(kind = Kind.HEAT_TRANSFER, decimals = 1, meaning = "film coefficient")
            double film,

            @Output(meaning = "Biot number") double biot,
            @Output(meaning = "one temperature throughout") boolean lumped,

            @Output(kind = Kind.TIME, decimals = 1, meaning = "time constant in air")
            double timeConstant,

            @Output(kind = Kind.TIME, meaning = "time in air until it grabs")
            double timeInAir,

            @Output(kind = Kind.TEMPERATURE, meaning = "its temperature then")
            double temperatureThen,

            @Output(kind = Kind.TEMPERATURE, meaning = "its temperature on arrival")
            double temperatureOnArrival,

            @Output(kind = Kind.LENGTH, decimals = 4, meaning = "growth on arrival")
            double growthOnArrival,

            @Output(kind = Kind.LENGTH, decimals = 4, meaning = "in hand on arrival")
            double inHand,

            @Output(kind = Kind.TIME, decimals = 1, meaning = "time constant once it touches")
            double contactTimeConstant,

            @Output(kind = Kind.LENGTH, decimals = 4, meaning = "gap at the shoulder if the far end grips first")
            double shoulderGap) {}

    /**
     * Cooling or warming of the whole part at one temperature; film coefficient held at its value for the start, which
     * errs to the short side.
     *
     * <p>Refused: no wall, a joint outside the part, a start at the air's own temperature, a growth at the start that is
     * not above what is needed.
     */
    static Outcome<Worked<Result>> work(Case c) {
        List<Refusal> refusals = new ArrayList<>();
        if (c.bore() >= c.outer()) {
            refusals.add(Refusal.of(
                    "bore",
                    Interference.mm(c.bore()) + " leaves no wall in an outside of " + Interference.mm(c.outer()),
                    "Measure both again"));
        }
        boolean hot = c.start() > c.air();
        if (Math.abs(c.start() - c.air()) < 1) {
            refusals.add(Refusal.of(
                    "start", "the part is as warm as the air: it neither grows nor shrinks", "Heat it or chill it"));
        } else {
            double growth = growth(c, c.start());
            if (growth <= c.needed()) {
                refusals.add(Refusal.of(
                        "needed",
                        Interference.mm(c.needed()) + " is needed, but at the start there is only "
                                + Interference.mm(growth),
                        hot
                                ? "Heat it further, within its ceiling, or chill the other part"
                                : "Chill it further, or heat the other part"));
            }
        }
        if (c.joint() > c.outer() * 1.001 || c.joint() < c.bore() * 0.999) {
            refusals.add(Refusal.of(
                    "joint",
                    Interference.mm(c.joint()) + " lies outside the part",
                    "Give the bore for a part pushed over a shaft, the outside for one that goes into a housing"));
        }
        return refusals.isEmpty() ? Outcome.ok(cooled(c, hot)) : Outcome.refused(refusals);
    }

    /** Growth of a hot part, shrink of a cold one, against its size at the temperature of the air; positive. */
    private static double growth(Case c, double temperature) {
        Material.Data data = c.part().data();
        double alpha = c.start() > c.air() ? data.expansion() : data.coldExpansion();
        return alpha * c.joint() * Math.abs(temperature - c.air());
    }

    private static Worked<Result> cooled(Case c, boolean hot) {
        Working w = new Working();
        Material.Data data = c.part().data();
        double length = w.line(
                "volume over area",
                "all faces in the air",
                Cooling.ringLength(c.bore(), c.outer(), c.width()),
                Kind.LENGTH);
        Double given = c.film();
        double film = given != null
                ? given
                : w.line(
                        "film coefficient",
                        "10 for still air + radiation at the start",
                        STILL_AIR + Cooling.radiation(c.emissivity(), c.start(), c.air()),
                        Kind.HEAT_TRANSFER,
                        INCROPERA);
        double biot = w.line(
                "Biot number", "h (V/A)/k", Cooling.biot(film, length, data.conductivity()), Kind.NUMBER, INCROPERA);
        double constant = w.line(
                "time constant",
                "ρ c (V/A)/h",
                Cooling.timeConstant(data.density(), data.specificHeat(), length, film),
                Kind.TIME,
                INCROPERA);
        double then = c.air() + (c.start() - c.air()) * c.needed() / growth(c, c.start());
        w.line("temperature at which only the needed growth is left", "air ± needed/(α d)", then, Kind.TEMPERATURE);
        double time = w.line(
                "time in air",
                "time constant × ln((start − air)/(then − air))",
                Cooling.time(constant, c.start(), then, c.air()),
                Kind.TIME,
                INCROPERA);
        double arrival = w.line(
                "temperature on arrival",
                "air + (start − air) exp(−carry/time constant)",
                c.air() + (c.start() - c.air()) * Math.exp(-c.carry() / constant),
                Kind.TEMPERATURE,
                INCROPERA);
        double left = w.line("growth on arrival", "α d (arrival − air)", growth(c, arrival), Kind.LENGTH);
        double touching = w.line(
                "time constant once it touches",
                "ρ c (V/A of the joint)/contact coefficient",
                Cooling.timeConstant(
                        data.density(),
                        data.specificHeat(),
                        Cooling.ringLengthAt(c.joint(), c.bore(), c.outer()),
                        c.contact()),
                Kind.TIME,
                "order of magnitude");
        double gap = w.line(
                "gap at the shoulder",
                "α width |start − air|",
                growth(c, c.start()) * c.width() / c.joint(),
                Kind.LENGTH);
        boolean lumped = biot < LARGEST_BIOT;
        cautions(w, lumped, hot, left <= c.needed());
        return w.worked(new Result(
                length, film, biot, lumped, constant, time, then, arrival, left, left - c.needed(), touching, gap));
    }

    private static void cautions(Working w, boolean lumped, boolean hot, boolean late) {
        w.caution("Once it touches it cools within seconds: one movement to the shoulder, no second try.");
        w.caution(
                "Hold it against the shoulder until it is cold, then check with a feeler; otherwise end play and shims "
                        + "are read wrong.");
        if (!lumped) {
            w.caution("The part is too thick to count at one temperature: the times are not proven.");
        }
        if (late) {
            w.caution("It would grab on the way. Shorten the carry, or start with more growth.");
        }
        if (!hot) {
            w.caution("Frost takes up room at the seat: wipe it off and oil the part at once.");
        }
    }
}
