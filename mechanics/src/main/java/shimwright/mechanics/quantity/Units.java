package shimwright.mechanics.quantity;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.EnumMap;
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

    private static final List<MeasureUnit> ALL = new ArrayList<>();

    public static final MeasureUnit ONE = add(Kind.NUMBER, "", 1, SI);
    public static final MeasureUnit PERCENT = add(Kind.NUMBER, "%", 0.01, SI, "percent");

    public static final MeasureUnit MM = add(Kind.LENGTH, "mm", 1e-3, SI);
    public static final MeasureUnit IN = add(Kind.LENGTH, "in", INCH, EXACT_1959, "inch", "inches", "\"", "″");
    public static final MeasureUnit THOU = add(Kind.LENGTH, "thou", INCH / 1000, EXACT_1959, "mil");
    public static final MeasureUnit UM = add(Kind.LENGTH, "µm", 1e-6, SI, "micron");
    public static final MeasureUnit M = add(Kind.LENGTH, "m", 1, SI);
    public static final MeasureUnit CM = add(Kind.LENGTH, "cm", 1e-2, SI);
    public static final MeasureUnit KM = add(Kind.LENGTH, "km", 1e3, SI);
    public static final MeasureUnit FT = add(Kind.LENGTH, "ft", FOOT, EXACT_1959, "foot", "feet");
    public static final MeasureUnit MICROINCH = add(Kind.LENGTH, "µin", INCH * 1e-6, EXACT_1959);

    public static final MeasureUnit MM2 = add(Kind.AREA, "mm²", 1e-6, SI);
    public static final MeasureUnit CM2 = add(Kind.AREA, "cm²", 1e-4, SI);
    public static final MeasureUnit M2 = add(Kind.AREA, "m²", 1, SI);
    public static final MeasureUnit IN2 = add(Kind.AREA, "in²", INCH * INCH, SP811, "sq in");

    public static final MeasureUnit LITRE =
            add(Kind.VOLUME, "L", 1e-3, SI, "litre", "liter", "litres", "liters", "dm3");
    public static final MeasureUnit MILLILITRE = add(Kind.VOLUME, "mL", 1e-6, SI, "cm3", "cc");
    public static final MeasureUnit QUART =
            add(Kind.VOLUME, "qt", US_GALLON / 4, SP811 + ", US liquid", "US qt", "quart");
    public static final MeasureUnit PINT =
            add(Kind.VOLUME, "pt", US_GALLON / 8, SP811 + ", US liquid", "US pt", "pint");
    public static final MeasureUnit GALLON = add(Kind.VOLUME, "gal", US_GALLON, SP811 + ", US liquid", "US gal");
    public static final MeasureUnit FLUID_OUNCE =
            add(Kind.VOLUME, "fl oz", US_GALLON / 128, SP811 + ", US", "US fl oz");
    public static final MeasureUnit IMPERIAL_PINT = add(Kind.VOLUME, "imp pt", 0.00056826125, SP811, "UK pt");
    public static final MeasureUnit IMPERIAL_QUART = add(Kind.VOLUME, "imp qt", 0.0011365225, SP811, "UK qt");
    public static final MeasureUnit MM3 = add(Kind.VOLUME, "mm³", 1e-9, SI);
    public static final MeasureUnit M3 = add(Kind.VOLUME, "m³", 1, SI);
    public static final MeasureUnit IN3 = add(Kind.VOLUME, "in³", INCH * INCH * INCH, SP811, "cu in");

    public static final MeasureUnit CM3_PER_MINUTE =
            add(Kind.FLOW, "cm³/min", 1e-6 / 60, SI, "mL/min", "cc/min", "ccm");
    public static final MeasureUnit LITRE_PER_MINUTE = add(Kind.FLOW, "L/min", 1e-3 / 60, SI);
    public static final MeasureUnit LITRE_PER_HOUR = add(Kind.FLOW, "L/h", 1e-3 / 3600, SI);
    public static final MeasureUnit M3_PER_S = add(Kind.FLOW, "m³/s", 1, SI);

    public static final MeasureUnit DEGREE = add(Kind.ANGLE, "°", Math.PI / 180, SI, "deg", "degree", "degrees");
    public static final MeasureUnit RADIAN = add(Kind.ANGLE, "rad", 1, SI);
    public static final MeasureUnit MILLIRADIAN = add(Kind.ANGLE, "mrad", 1e-3, SI);
    public static final MeasureUnit ARC_MINUTE = add(Kind.ANGLE, "′", Math.PI / 10800, SI, "arcmin", "'");

    public static final MeasureUnit SECOND = add(Kind.TIME, "s", 1, SI, "sec");
    public static final MeasureUnit MINUTE = add(Kind.TIME, "min", 60, SI);
    public static final MeasureUnit HOUR = add(Kind.TIME, "h", 3600, SI, "hour", "hours", "hr");
    public static final MeasureUnit DAY = add(Kind.TIME, "d", 86400, SI, "day", "days");

    public static final MeasureUnit KM_PER_HOUR = add(Kind.SPEED, "km/h", 1 / 3.6, SI, "kmh", "kph");
    public static final MeasureUnit MILE_PER_HOUR = add(Kind.SPEED, "mph", 0.44704, EXACT_1959);
    public static final MeasureUnit M_PER_S = add(Kind.SPEED, "m/s", 1, SI);
    public static final MeasureUnit MM_PER_S = add(Kind.SPEED, "mm/s", 1e-3, SI);
    public static final MeasureUnit RPM = add(Kind.ROTATION, "rpm", Math.PI / 30, SI, "1/min", "r/min", "/min");
    public static final MeasureUnit RAD_PER_S = add(Kind.ROTATION, "rad/s", 1, SI);
    public static final MeasureUnit HERTZ = add(Kind.FREQUENCY, "Hz", 1, SI, "1/s", "per second");
    public static final MeasureUnit KILOHERTZ = add(Kind.FREQUENCY, "kHz", 1e3, SI);
    public static final MeasureUnit PER_MINUTE = add(Kind.FREQUENCY, "cpm", 1.0 / 60, SI, "per minute", "1/min");

    public static final MeasureUnit KG = add(Kind.MASS, "kg", 1, SI);
    public static final MeasureUnit GRAM = add(Kind.MASS, "g", 1e-3, SI);
    public static final MeasureUnit POUND_MASS = add(Kind.MASS, "lb", POUND, EXACT_1959, "lbs", "lbm");
    public static final MeasureUnit OUNCE = add(Kind.MASS, "oz", POUND / 16, EXACT_1959);
    public static final MeasureUnit KG_PER_L = add(Kind.DENSITY, "kg/L", 1e3, SI, "g/cm3", "g/ml");
    public static final MeasureUnit KG_PER_M3 = add(Kind.DENSITY, "kg/m³", 1, SI);
    public static final MeasureUnit POUND_PER_IN3 = add(Kind.DENSITY, "lb/in³", POUND / (INCH * INCH * INCH), SP811);

    public static final MeasureUnit NEWTON = add(Kind.FORCE, "N", 1, SI);
    public static final MeasureUnit KILONEWTON = add(Kind.FORCE, "kN", 1e3, SI);
    /** On a gauge that pulls, "lb" is a force. */
    public static final MeasureUnit LBF = add(Kind.FORCE, "lbf", POUND_FORCE, SP811, "lb", "lbs");

    public static final MeasureUnit KGF = add(Kind.FORCE, "kgf", GRAVITY, SP811, "kp");
    public static final MeasureUnit US_TON_FORCE =
            add(Kind.FORCE, "US ton", 2000 * POUND_FORCE, SP811, "short ton", "US tonf");
    public static final MeasureUnit LONG_TON_FORCE =
            add(Kind.FORCE, "long ton", 2240 * POUND_FORCE, SP811, "UK ton", "UK tonf");
    public static final MeasureUnit TONNE_FORCE = add(Kind.FORCE, "tf", 1000 * GRAVITY, SP811, "metric ton", "tonne");
    public static final MeasureUnit OUNCE_FORCE = add(Kind.FORCE, "ozf", POUND_FORCE / 16, SP811, "oz");
    public static final MeasureUnit NM = add(Kind.TORQUE, "N·m", 1, SI);
    public static final MeasureUnit LBF_FT =
            add(Kind.TORQUE, "lbf·ft", POUND_FORCE * FOOT, SP811, "ft·lbf", "ft·lb", "lb·ft", "ft·lbs");
    public static final MeasureUnit LBF_IN =
            add(Kind.TORQUE, "lbf·in", POUND_FORCE * INCH, SP811, "in·lbf", "in·lb", "lb·in", "in·lbs");
    public static final MeasureUnit OZF_IN =
            add(Kind.TORQUE, "ozf·in", POUND_FORCE * INCH / 16, SP811, "in·ozf", "in·oz", "oz·in");
    public static final MeasureUnit KGF_M = add(Kind.TORQUE, "kgf·m", GRAVITY, SP811, "kg·m", "kp·m", "m·kg");
    public static final MeasureUnit KGF_CM = add(Kind.TORQUE, "kgf·cm", GRAVITY / 100, SP811, "kg·cm", "kp·cm");
    public static final MeasureUnit NMM = add(Kind.TORQUE, "N·mm", 1e-3, SI);
    public static final MeasureUnit NCM = add(Kind.TORQUE, "N·cm", 1e-2, SI);

    public static final MeasureUnit MPA = add(Kind.PRESSURE, "MPa", 1e6, SI, "N/mm2");
    public static final MeasureUnit BAR = add(Kind.PRESSURE, "bar", 1e5, SP811);
    public static final MeasureUnit PSI = add(Kind.PRESSURE, "psi", POUND_FORCE / (INCH * INCH), SP811, "lbf/in2");
    public static final MeasureUnit KSI = add(Kind.PRESSURE, "ksi", 1000 * POUND_FORCE / (INCH * INCH), SP811);
    public static final MeasureUnit KPA = add(Kind.PRESSURE, "kPa", 1e3, SI);
    public static final MeasureUnit GPA = add(Kind.PRESSURE, "GPa", 1e9, SI, "kN/mm2");
    public static final MeasureUnit MBAR = add(Kind.PRESSURE, "mbar", 1e2, SP811, "hPa");
    public static final MeasureUnit PASCAL = add(Kind.PRESSURE, "Pa", 1, SI, "N/m2");
    public static final MeasureUnit KGF_PER_CM2 = add(Kind.PRESSURE, "kgf/cm²", GRAVITY * 1e4, SP811, "kg/cm2");
    public static final MeasureUnit JOULE = add(Kind.ENERGY, "J", 1, SI);
    public static final MeasureUnit KILOJOULE = add(Kind.ENERGY, "kJ", 1e3, SI);
    public static final MeasureUnit KILOWATT = add(Kind.POWER, "kW", 1e3, SI);
    public static final MeasureUnit WATT = add(Kind.POWER, "W", 1, SI);
    public static final MeasureUnit HORSEPOWER =
            add(Kind.POWER, "hp", 550 * POUND_FORCE * FOOT, SP811 + ", 550 ft·lbf/s");
    /** Pressure times volume per time: how a leak is stated without a reference temperature. */
    public static final MeasureUnit MBAR_LITRE_PER_S = add(Kind.POWER, "mbar·L/s", 0.1, SI);

    public static final MeasureUnit PASCAL_M3_PER_S = add(Kind.POWER, "Pa·m³/s", 1, SI);
    public static final MeasureUnit METRIC_HORSEPOWER = add(Kind.POWER, "PS", 75 * GRAVITY, SP811);

    public static final MeasureUnit CELSIUS = temperature("°C", 1, 273.15, "degC", "C", "deg C");
    public static final MeasureUnit FAHRENHEIT =
            temperature("°F", FAHRENHEIT_STEP, 459.67 * 5 / 9, "degF", "F", "deg F");
    public static final MeasureUnit KELVIN = temperature("K", 1, 0);
    public static final MeasureUnit KELVIN_STEP =
            add(Kind.TEMPERATURE_DIFFERENCE, "K", 1, SI, "°C", "degC", "C", "deg C");
    public static final MeasureUnit FAHRENHEIT_DIFFERENCE =
            add(Kind.TEMPERATURE_DIFFERENCE, "°F", FAHRENHEIT_STEP, SP811, "degF", "F", "deg F");
    public static final MeasureUnit UM_PER_M_K =
            add(Kind.EXPANSION, "µm/(m·K)", 1e-6, SI, "um/m/K", "ppm/K", "um/m°C", "10^-6/K", "um/mK");
    public static final MeasureUnit PER_KELVIN = add(Kind.EXPANSION, "1/K", 1, SI, "/K", "1/°C", "/°C");
    public static final MeasureUnit MICROINCH_PER_IN_F =
            add(Kind.EXPANSION, "µin/(in·°F)", 1.8e-6, SP811, "uin/(in·degF)", "ppm/°F", "10^-6/°F");
    public static final MeasureUnit PER_FAHRENHEIT = add(Kind.EXPANSION, "1/°F", 1.8, SP811, "/°F", "1/degF");

    public static final MeasureUnit N_PER_MM = add(Kind.STIFFNESS, "N/mm", 1e3, SI);
    public static final MeasureUnit N_PER_UM = add(Kind.STIFFNESS, "N/µm", 1e6, SI);
    public static final MeasureUnit N_PER_M = add(Kind.STIFFNESS, "N/m", 1, SI);
    public static final MeasureUnit LBF_PER_IN = add(Kind.STIFFNESS, "lbf/in", POUND_FORCE / INCH, SP811, "lb/in");
    public static final MeasureUnit NM_PER_RAD = add(Kind.TURNING_STIFFNESS, "N·m/rad", 1, SI);
    public static final MeasureUnit NM_PER_DEGREE = add(Kind.TURNING_STIFFNESS, "N·m/°", 180 / Math.PI, SI, "N·m/deg");
    public static final MeasureUnit CENTISTOKES = add(Kind.VISCOSITY, "mm²/s", 1e-6, SI, "cSt");
    public static final MeasureUnit M2_PER_S = add(Kind.VISCOSITY, "m²/s", 1, SI);
    public static final MeasureUnit W_PER_M_K = add(Kind.CONDUCTIVITY, "W/(m·K)", 1, SI, "W/m/K", "W/mK");
    public static final MeasureUnit J_PER_KG_K = add(Kind.SPECIFIC_HEAT, "J/(kg·K)", 1, SI, "J/kg/K", "J/kgK");
    public static final MeasureUnit W_PER_M2_K = add(Kind.HEAT_TRANSFER, "W/(m²·K)", 1, SI, "W/m2/K", "W/m2K");

    private static final Map<String, MeasureUnit> BY_LETTERS = byLetters();

    private static final Map<Kind, List<MeasureUnit>> BY_KIND = byKind();

    private Units() {}

    /** Every unit of a kind, the usual one first. */
    public static List<MeasureUnit> of(Kind kind) {
        return BY_KIND.getOrDefault(kind, List.of());
    }

    private static Map<Kind, List<MeasureUnit>> byKind() {
        Map<Kind, List<MeasureUnit>> map = new EnumMap<>(Kind.class);
        for (Kind kind : Kind.values()) {
            map.put(kind, ALL.stream().filter(unit -> unit.kind() == kind).toList());
        }
        return map;
    }

    /** All units. */
    public static List<MeasureUnit> all() {
        return List.copyOf(ALL);
    }

    /** The unit of this kind that was typed: exact letters first, then without regard to capitals. */
    public static Optional<MeasureUnit> find(String typed, Kind kind) {
        String wanted = plain(typed);
        MeasureUnit exact = BY_LETTERS.get(kind.name() + ' ' + wanted);
        return Optional.ofNullable(
                exact != null ? exact : BY_LETTERS.get(kind.name() + ' ' + wanted.toLowerCase(Locale.ROOT)));
    }

    /** The first unit of any kind that was typed. */
    public static Optional<MeasureUnit> findAny(String typed) {
        for (Kind kind : Kind.values()) {
            Optional<MeasureUnit> found = find(typed, kind);
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    /** Exact spellings win over those that only differ in capitals, earlier units over later ones. */
    private static Map<String, MeasureUnit> byLetters() {
        Map<String, MeasureUnit> map = new HashMap<>();
        for (boolean anyCase : new boolean[] {false, true}) {
            for (MeasureUnit unit : ALL) {
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
        if (typed.chars().allMatch(c -> c < 0x80 && (Character.isLetterOrDigit(c) || c == '/'))) {
            return typed;
        }
        return Normalizer.normalize(typed, Normalizer.Form.NFKC)
                .replace('μ', 'u')
                .replaceAll("[\\s·⋅*\\-]", "")
                .replaceAll("(?<![0-9])\\.", "");
    }

    private static MeasureUnit add(Kind kind, String symbol, double factor, String source, String... aliases) {
        MeasureUnit unit = new MeasureUnit(symbol, kind, factor, 0, source, List.of(aliases));
        ALL.add(unit);
        return unit;
    }

    private static MeasureUnit temperature(String symbol, double factor, double offset, String... aliases) {
        MeasureUnit unit = new MeasureUnit(symbol, Kind.TEMPERATURE, factor, offset, SP811, List.of(aliases));
        ALL.add(unit);
        return unit;
    }
}
