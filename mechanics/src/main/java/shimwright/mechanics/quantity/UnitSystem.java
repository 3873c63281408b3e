package shimwright.mechanics.quantity;

import java.util.EnumMap;
import java.util.Map;

/** The units a person wants to see and means when typing a bare number. */
public enum UnitSystem {
    METRIC,
    INCH;

    /**
     * A unit and the decimals a bench wants to see in it.
     *
     * @param unit the unit
     * @param decimals digits after the point, 0 or more
     */
    public record Display(MeasureUnit unit, int decimals) {}

    private static final Map<Kind, Display> METRIC_DISPLAY = metric();
    private static final Map<Kind, Display> INCH_DISPLAY = inch();

    /** The unit and decimals for a kind. */
    public Display display(Kind kind) {
        Display own = this == INCH ? INCH_DISPLAY.get(kind) : null;
        if (own != null) {
            return own;
        }
        Display metric = METRIC_DISPLAY.get(kind);
        if (metric == null) {
            throw new IllegalStateException("no unit to show " + kind);
        }
        return metric;
    }

    private static Map<Kind, Display> metric() {
        Map<Kind, Display> map = new EnumMap<>(Kind.class);
        map.put(Kind.NUMBER, new Display(Units.ONE, 4));
        map.put(Kind.LENGTH, new Display(Units.MM, 3));
        map.put(Kind.AREA, new Display(Units.MM2, 1));
        map.put(Kind.VOLUME, new Display(Units.LITRE, 2));
        map.put(Kind.FLOW, new Display(Units.CM3_PER_MINUTE, 2));
        map.put(Kind.ANGLE, new Display(Units.DEGREE, 3));
        map.put(Kind.TIME, new Display(Units.SECOND, 0));
        map.put(Kind.SPEED, new Display(Units.KM_PER_HOUR, 1));
        map.put(Kind.ROTATION, new Display(Units.RPM, 0));
        map.put(Kind.FREQUENCY, new Display(Units.HERTZ, 1));
        map.put(Kind.MASS, new Display(Units.KG, 3));
        map.put(Kind.DENSITY, new Display(Units.KG_PER_M3, 0));
        map.put(Kind.FORCE, new Display(Units.NEWTON, 0));
        map.put(Kind.TORQUE, new Display(Units.NM, 2));
        map.put(Kind.PRESSURE, new Display(Units.MPA, 2));
        map.put(Kind.ENERGY, new Display(Units.JOULE, 1));
        map.put(Kind.POWER, new Display(Units.KILOWATT, 2));
        map.put(Kind.TEMPERATURE, new Display(Units.CELSIUS, 1));
        map.put(Kind.TEMPERATURE_DIFFERENCE, new Display(Units.KELVIN_STEP, 1));
        map.put(Kind.EXPANSION, new Display(Units.UM_PER_M_K, 2));
        map.put(Kind.STIFFNESS, new Display(Units.N_PER_MM, 1));
        map.put(Kind.TURNING_STIFFNESS, new Display(Units.NM_PER_RAD, 1));
        map.put(Kind.VISCOSITY, new Display(Units.CENTISTOKES, 1));
        map.put(Kind.CONDUCTIVITY, new Display(Units.W_PER_M_K, 1));
        map.put(Kind.SPECIFIC_HEAT, new Display(Units.J_PER_KG_K, 0));
        map.put(Kind.HEAT_TRANSFER, new Display(Units.W_PER_M2_K, 0));
        return map;
    }

    private static Map<Kind, Display> inch() {
        Map<Kind, Display> map = new EnumMap<>(Kind.class);
        map.put(Kind.LENGTH, new Display(Units.IN, 4));
        map.put(Kind.AREA, new Display(Units.IN2, 3));
        map.put(Kind.VOLUME, new Display(Units.QUART, 2));
        map.put(Kind.SPEED, new Display(Units.MILE_PER_HOUR, 1));
        map.put(Kind.MASS, new Display(Units.POUND_MASS, 2));
        map.put(Kind.DENSITY, new Display(Units.POUND_PER_IN3, 4));
        map.put(Kind.FORCE, new Display(Units.LBF, 1));
        map.put(Kind.TORQUE, new Display(Units.LBF_FT, 1));
        map.put(Kind.PRESSURE, new Display(Units.PSI, 0));
        map.put(Kind.POWER, new Display(Units.HORSEPOWER, 2));
        map.put(Kind.TEMPERATURE, new Display(Units.FAHRENHEIT, 0));
        map.put(Kind.TEMPERATURE_DIFFERENCE, new Display(Units.FAHRENHEIT_DIFFERENCE, 1));
        map.put(Kind.EXPANSION, new Display(Units.MICROINCH_PER_IN_F, 2));
        map.put(Kind.STIFFNESS, new Display(Units.LBF_PER_IN, 1));
        return map;
    }
}
