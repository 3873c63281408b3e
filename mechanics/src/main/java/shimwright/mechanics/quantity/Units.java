package shimwright.mechanics.quantity;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Every unit the house reads or prints, one line each. Factors: NIST SP 811 (2008) appendix B and ISO 80000; the pound
 * (0.453 592 37 kg) and the inch (25.4 mm) are exact by the agreement of 1959, standard gravity 9.806 65 m/s² by the
 * 3rd CGPM (1901).
 */
public final class Units {
    private static final String SI = "SI Brochure, 9th edition";
    private static final String EXACT_1959 = "exact, agreement of 1959; NIST SP 811 B.6";
    private static final String SP811 = "NIST SP 811 (2008) B.8";
    private static final double POUND = 0.45359237;
    private static final double GRAVITY = 9.80665;
    private static final double POUND_FORCE = POUND * GRAVITY;
    private static final double INCH = 0.0254;
    private static final double FOOT = 0.3048;
    private static final double US_GALLON = 231 * INCH * INCH * INCH;
    private static final double FAHRENHEIT_STEP = 5.0 / 9.0;

    private static final List<Unit> ALL = new ArrayList<>();

    public static final Unit ONE = add(Kind.NUMBER, "", 1, SI);
    public static final Unit PERCENT = add(Kind.NUMBER, "%", 0.01, SI, "percent");

    public static final Unit MM = add(Kind.LENGTH, "mm", 1e-3, SI);
    public static final Unit IN = add(Kind.LENGTH, "in", INCH, EXACT_1959, "inch", "inches", "\"", "″");
    public static final Unit THOU = add(Kind.LENGTH, "thou", INCH / 1000, EXACT_1959, "mil");
    public static final Unit UM = add(Kind.LENGTH, "µm", 1e-6, SI, "micron");
    public static final Unit M = add(Kind.LENGTH, "m", 1, SI);
    public static final Unit CM = add(Kind.LENGTH, "cm", 1e-2, SI);
    public static final Unit KM = add(Kind.LENGTH, "km", 1e3, SI);
    public static final Unit FT = add(Kind.LENGTH, "ft", FOOT, EXACT_1959, "foot", "feet");
    public static final Unit MICROINCH = add(Kind.LENGTH, "µin", INCH * 1e-6, EXACT_1959);

    public static final Unit MM2 = add(Kind.AREA, "mm²", 1e-6, SI);
    public static final Unit CM2 = add(Kind.AREA, "cm²", 1e-4, SI);
    public static final Unit M2 = add(Kind.AREA, "m²", 1, SI);
    public static final Unit IN2 = add(Kind.AREA, "in²", INCH * INCH, SP811, "sq in");

    public static final Unit LITRE = add(Kind.VOLUME, "L", 1e-3, SI, "litre", "liter", "litres", "liters", "dm3");
    public static final Unit MILLILITRE = add(Kind.VOLUME, "mL", 1e-6, SI, "cm3", "cc");
    public static final Unit QUART = add(Kind.VOLUME, "qt", US_GALLON / 4, SP811 + ", US liquid", "US qt", "quart");
    public static final Unit PINT = add(Kind.VOLUME, "pt", US_GALLON / 8, SP811 + ", US liquid", "US pt", "pint");
    public static final Unit GALLON = add(Kind.VOLUME, "gal", US_GALLON, SP811 + ", US liquid", "US gal");
    public static final Unit FLUID_OUNCE = add(Kind.VOLUME, "fl oz", US_GALLON / 128, SP811 + ", US", "US fl oz");
    public static final Unit IMPERIAL_PINT = add(Kind.VOLUME, "imp pt", 0.00056826125, SP811, "UK pt");
    public static final Unit IMPERIAL_QUART = add(Kind.VOLUME, "imp qt", 0.0011365225, SP811, "UK qt");
    public static final Unit MM3 = add(Kind.VOLUME, "mm³", 1e-9, SI);
    public static final Unit M3 = add(Kind.VOLUME, "m³", 1, SI);
    public static final Unit IN3 = add(Kind.VOLUME, "in³", INCH * INCH * INCH, SP811, "cu in");

    public static final Unit CM3_PER_MINUTE = add(Kind.FLOW, "cm³/min", 1e-6 / 60, SI, "mL/min", "cc/min", "ccm");
    public static final Unit LITRE_PER_MINUTE = add(Kind.FLOW, "L/min", 1e-3 / 60, SI);
    public static final Unit LITRE_PER_HOUR = add(Kind.FLOW, "L/h", 1e-3 / 3600, SI);
    public static final Unit M3_PER_S = add(Kind.FLOW, "m³/s", 1, SI);

    public static final Unit DEGREE = add(Kind.ANGLE, "°", Math.PI / 180, SI, "deg", "degree", "degrees");
    public static final Unit RADIAN = add(Kind.ANGLE, "rad", 1, SI);
    public static final Unit MILLIRADIAN = add(Kind.ANGLE, "mrad", 1e-3, SI);
    public static final Unit ARC_MINUTE = add(Kind.ANGLE, "′", Math.PI / 10800, SI, "arcmin", "'");

    public static final Unit SECOND = add(Kind.TIME, "s", 1, SI, "sec");
    public static final Unit MINUTE = add(Kind.TIME, "min", 60, SI);
    public static final Unit HOUR = add(Kind.TIME, "h", 3600, SI, "hour", "hours", "hr");
    public static final Unit DAY = add(Kind.TIME, "d", 86400, SI, "day", "days");

    public static final Unit KM_PER_HOUR = add(Kind.SPEED, "km/h", 1 / 3.6, SI, "kmh", "kph");
    public static final Unit MILE_PER_HOUR = add(Kind.SPEED, "mph", 0.44704, EXACT_1959);
    public static final Unit M_PER_S = add(Kind.SPEED, "m/s", 1, SI);
    public static final Unit MM_PER_S = add(Kind.SPEED, "mm/s", 1e-3, SI);
    public static final Unit RPM = add(Kind.ROTATION, "rpm", Math.PI / 30, SI, "1/min", "r/min", "/min");
    public static final Unit RAD_PER_S = add(Kind.ROTATION, "rad/s", 1, SI);

    public static final Unit KG = add(Kind.MASS, "kg", 1, SI);
    public static final Unit GRAM = add(Kind.MASS, "g", 1e-3, SI);
    public static final Unit POUND_MASS = add(Kind.MASS, "lb", POUND, EXACT_1959, "lbs", "lbm");
    public static final Unit OUNCE = add(Kind.MASS, "oz", POUND / 16, EXACT_1959);
    public static final Unit KG_PER_L = add(Kind.DENSITY, "kg/L", 1e3, SI, "g/cm3", "g/ml");
    public static final Unit KG_PER_M3 = add(Kind.DENSITY, "kg/m³", 1, SI);
    public static final Unit POUND_PER_IN3 = add(Kind.DENSITY, "lb/in³", POUND / (INCH * INCH * INCH), SP811);

    public static final Unit NEWTON = add(Kind.FORCE, "N", 1, SI);
    public static final Unit KILONEWTON = add(Kind.FORCE, "kN", 1e3, SI);
    /** On a gauge that pulls, "lb" is a force. */
    public static final Unit LBF = add(Kind.FORCE, "lbf", POUND_FORCE, SP811, "lb", "lbs");

    public static final Unit KGF = add(Kind.FORCE, "kgf", GRAVITY, SP811, "kp");
    public static final Unit US_TON_FORCE =
            add(Kind.FORCE, "US ton", 2000 * POUND_FORCE, SP811, "short ton", "US tonf");
    public static final Unit LONG_TON_FORCE =
            add(Kind.FORCE, "long ton", 2240 * POUND_FORCE, SP811, "UK ton", "UK tonf");
    public static final Unit TONNE_FORCE = add(Kind.FORCE, "tf", 1000 * GRAVITY, SP811, "metric ton", "tonne");
    public static final Unit OUNCE_FORCE = add(Kind.FORCE, "ozf", POUND_FORCE / 16, SP811, "oz");
    public static final Unit NM = add(Kind.TORQUE, "N·m", 1, SI);
    public static final Unit LBF_FT =
            add(Kind.TORQUE, "lbf·ft", POUND_FORCE * FOOT, SP811, "ft·lbf", "ft·lb", "lb·ft", "ft·lbs");
    public static final Unit LBF_IN =
            add(Kind.TORQUE, "lbf·in", POUND_FORCE * INCH, SP811, "in·lbf", "in·lb", "lb·in", "in·lbs");
    public static final Unit OZF_IN =
            add(Kind.TORQUE, "ozf·in", POUND_FORCE * INCH / 16, SP811, "in·ozf", "in·oz", "oz·in");
    public static final Unit KGF_M = add(Kind.TORQUE, "kgf·m", GRAVITY, SP811, "kg·m", "kp·m", "m·kg");
    public static final Unit KGF_CM = add(Kind.TORQUE, "kgf·cm", GRAVITY / 100, SP811, "kg·cm", "kp·cm");
    public static final Unit NMM = add(Kind.TORQUE, "N·mm", 1e-3, SI);
    public static final Unit NCM = add(Kind.TORQUE, "N·cm", 1e-2, SI);

    public static final Unit MPA = add(Kind.PRESSURE, "MPa", 1e6, SI, "N/mm2");
    public static final Unit BAR = add(Kind.PRESSURE, "bar", 1e5, SP811);
    public static final Unit PSI = add(Kind.PRESSURE, "psi", POUND_FORCE / (INCH * INCH), SP811, "lbf/in2");
    public static final Unit KSI = add(Kind.PRESSURE, "ksi", 1000 * POUND_FORCE / (INCH * INCH), SP811);
    public static final Unit KPA = add(Kind.PRESSURE, "kPa", 1e3, SI);
    public static final Unit GPA = add(Kind.PRESSURE, "GPa", 1e9, SI, "kN/mm2");
    public static final Unit MBAR = add(Kind.PRESSURE, "mbar", 1e2, SP811, "hPa");
    public static final Unit PASCAL = add(Kind.PRESSURE, "Pa", 1, SI, "N/m2");
    public static final Unit KGF_PER_CM2 = add(Kind.PRESSURE, "kgf/cm²", GRAVITY * 1e4, SP811, "kg/cm2");
    public static final Unit JOULE = add(Kind.ENERGY, "J", 1, SI);
    public static final Unit KILOJOULE = add(Kind.ENERGY, "kJ", 1e3, SI);
    public static final Unit KILOWATT = add(Kind.POWER, "kW", 1e3, SI);
    public static final Unit WATT = add(Kind.POWER, "W", 1, SI);
    public static final Unit HORSEPOWER = add(Kind.POWER, "hp", 550 * POUND_FORCE * FOOT, SP811 + ", 550 ft·lbf/s");
    /** Pressure times volume per time: how a leak is stated without a reference temperature. */
    public static final Unit MBAR_LITRE_PER_S = add(Kind.POWER, "mbar·L/s", 0.1, SI);

    public static final Unit PASCAL_M3_PER_S = add(Kind.POWER, "Pa·m³/s", 1, SI);
    public static final Unit METRIC_HORSEPOWER = add(Kind.POWER, "PS", 75 * GRAVITY, SP811);

    public static final Unit CELSIUS = temperature("°C", 1, 273.15, "degC", "C", "deg C");
    public static final Unit FAHRENHEIT = temperature("°F", FAHRENHEIT_STEP, 459.67 * 5 / 9, "degF", "F", "deg F");
    public static final Unit KELVIN = temperature("K", 1, 0);
    public static final Unit KELVIN_STEP = add(Kind.TEMPERATURE_DIFFERENCE, "K", 1, SI, "°C", "degC", "C", "deg C");
    public static final Unit FAHRENHEIT_DIFFERENCE =
            add(Kind.TEMPERATURE_DIFFERENCE, "°F", FAHRENHEIT_STEP, SP811, "degF", "F", "deg F");
    public static final Unit UM_PER_M_K =
            add(Kind.EXPANSION, "µm/(m·K)", 1e-6, SI, "um/m/K", "ppm/K", "um/m°C", "10^-6/K", "um/mK");
    public static final Unit PER_KELVIN = add(Kind.EXPANSION, "1/K", 1, SI, "/K", "1/°C", "/°C");
    public static final Unit MICROINCH_PER_IN_F =
            add(Kind.EXPANSION, "µin/(in·°F)", 1.8e-6, SP811, "uin/(in·degF)", "ppm/°F", "10^-6/°F");
    public static final Unit PER_FAHRENHEIT = add(Kind.EXPANSION, "1/°F", 1.8, SP811, "/°F", "1/degF");

    public static final Unit N_PER_MM = add(Kind.STIFFNESS, "N/mm", 1e3, SI);
    public static final Unit N_PER_UM = add(Kind.STIFFNESS, "N/µm", 1e6, SI);
    public static final Unit N_PER_M = add(Kind.STIFFNESS, "N/m", 1, SI);
    public static final Unit LBF_PER_IN = add(Kind.STIFFNESS, "lbf/in", POUND_FORCE / INCH, SP811, "lb/in");
    public static final Unit NM_PER_RAD = add(Kind.TURNING_STIFFNESS, "N·m/rad", 1, SI);
    public static final Unit NM_PER_DEGREE = add(Kind.TURNING_STIFFNESS, "N·m/°", 180 / Math.PI, SI, "N·m/deg");
    public static final Unit CENTISTOKES = add(Kind.VISCOSITY, "mm²/s", 1e-6, SI, "cSt");
    public static final Unit M2_PER_S = add(Kind.VISCOSITY, "m²/s", 1, SI);
    public static final Unit W_PER_M_K = add(Kind.CONDUCTIVITY, "W/(m·K)", 1, SI, "W/m/K", "W/mK");
    public static final Unit J_PER_KG_K = add(Kind.SPECIFIC_HEAT, "J/(kg·K)", 1, SI, "J/kg/K", "J/kgK");
    public static final Unit W_PER_M2_K = add(Kind.HEAT_TRANSFER, "W/(m²·K)", 1, SI, "W/m2/K", "W/m2K");

    private static final Map<String, Unit> BY_LETTERS = byLetters();

    private Units() {}

    /** Every unit of a kind, the usual one first. */
    public static List<Unit> of(Kind kind) {
        return ALL.stream().filter(unit -> unit.kind() == kind).toList();
    }

    /** All units. */
    public static List<Unit> all() {
        return List.copyOf(ALL);
    }

    /** The unit of this kind that was typed: exact letters first, then without regard to capitals. */
    public static Optional<Unit> find(String typed, Kind kind) {
        String wanted = plain(typed);
        Unit exact = BY_LETTERS.get(kind.name() + ' ' + wanted);
        return Optional.ofNullable(
                exact != null ? exact : BY_LETTERS.get(kind.name() + ' ' + wanted.toLowerCase(Locale.ROOT)));
    }

    /** The first unit of any kind that was typed. */
    public static Optional<Unit> findAny(String typed) {
        for (Kind kind : Kind.values()) {
            Optional<Unit> found = find(typed, kind);
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    /** Exact spellings win over those that only differ in capitals, earlier units over later ones. */
    private static Map<String, Unit> byLetters() {
        Map<String, Unit> map = new HashMap<>();
        for (boolean anyCase : new boolean[] {false, true}) {
            for (Unit unit : ALL) {
                for (String name : Stream.concat(Stream.of(unit.symbol()), unit.aliases().stream())
                        .toList()) {
                    String plain = anyCase ? plain(name).toLowerCase(Locale.ROOT) : plain(name);
                    map.putIfAbsent(unit.kind().name() + ' ' + plain, unit);
                }
            }
        }
        return Map.copyOf(map);
    }

    /** Letters only as far as they tell units apart: micro is u, raised digits are digits, products have no sign. */
    private static String plain(String typed) {
        return Normalizer.normalize(typed, Normalizer.Form.NFKC)
                .replace('μ', 'u')
                .replaceAll("[\\s·⋅*\\-]", "")
                .replaceAll("(?<![0-9])\\.", "");
    }

    private static Unit add(Kind kind, String symbol, double factor, String source, String... aliases) {
        Unit unit = new Unit(symbol, kind, factor, 0, source, List.of(aliases));
        ALL.add(unit);
        return unit;
    }

    private static Unit temperature(String symbol, double factor, double offset, String... aliases) {
        Unit unit = new Unit(symbol, Kind.TEMPERATURE, factor, offset, SP811, List.of(aliases));
        ALL.add(unit);
        return unit;
    }
}
