package shimwright.mechanics.quantity;

/** What a number measures. Two quantities of different kinds are never taken for each other. */
public enum Kind {
    NUMBER("a plain number", ""),
    LENGTH("a length", "m"),
    AREA("an area", "m²"),
    VOLUME("a volume", "m³"),
    /** Volume per time; of a gas at stated reference conditions. */
    FLOW("a flow", "m³/s"),
    ANGLE("an angle", "rad"),
    TIME("a time", "s"),
    SPEED("a speed", "m/s"),
    ROTATION("a rotational speed", "rad/s"),
    /** Events per time: knocks, teeth, whole turns of a cage. */
    FREQUENCY("a frequency", "Hz"),
    MASS("a mass", "kg"),
    DENSITY("a density", "kg/m³"),
    FORCE("a force", "N"),
    TORQUE("a torque", "N·m"),
    /** Pressure and mechanical stress alike. */
    PRESSURE("a pressure", "Pa"),
    ENERGY("an energy", "J"),
    POWER("a power", "W"),
    TEMPERATURE("a temperature", "K"),
    TEMPERATURE_DIFFERENCE("a temperature difference", "K"),
    /** Linear expansion coefficient. */
    EXPANSION("an expansion coefficient", "1/K"),
    /** Force per length: spring rate and line load alike. */
    STIFFNESS("a force per length", "N/m"),
    TURNING_STIFFNESS("a torque per angle", "N·m/rad"),
    VISCOSITY("a kinematic viscosity", "m²/s"),
    CONDUCTIVITY("a thermal conductivity", "W/(m·K)"),
    SPECIFIC_HEAT("a specific heat", "J/(kg·K)"),
    HEAT_TRANSFER("a heat transfer coefficient", "W/(m²·K)");

    private final String words;
    private final String siSymbol;

    Kind(String words, String siSymbol) {
        this.words = words;
        this.siSymbol = siSymbol;
    }

    /** The kind with its article, for sentences: {@code a length}. */
    public String words() {
        return words;
    }

    /** The symbol of the coherent SI unit; empty for a plain number. */
    public String siSymbol() {
        return siSymbol;
    }
}
