package shimwright.rebuild.unit.sense;

import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.Units;
import shimwright.rebuild.unit.fault.ProblemCollector;
import shimwright.rebuild.unit.fault.SourcePlaces;
import shimwright.rebuild.unit.model.Component;
import shimwright.rebuild.unit.model.UnitType;

/**
 * What the sense checks stand on: the unit type as read, where everything stands, and the problems so far.
 *
 * @param type the whole file; parts that could not be read are not sound
 * @param at where each record stands
 * @param problems where a fault is put
 * @param variants what of it holds for each variant
 */
record SenseContext(UnitType type, SourcePlaces at, ProblemCollector problems, VariantTypes variants) {

    /** True where the record was read without a problem, so that its values may be judged. */
    boolean sound(Record record) {
        return at.sound(record);
    }

    /** A fault at the value of a key. */
    void fault(Record record, String key, String fact, String hint) {
        problems.add(at.of(record, key), named(record) + ": " + fact, hint);
    }

    /** No fault, but to be looked at, at the value of a key. */
    void remark(Record record, String key, String fact, String hint) {
        problems.remark(at.of(record, key), named(record) + ": " + fact, hint);
    }

    /** A fault where the value lies outside what is plausible. */
    void within(Record record, String key, double value, double least, double most, Kind kind) {
        if (!(value >= least && value <= most)) {
            fault(
                    record,
                    key,
                    key + " is " + text(value, kind),
                    "Plausible is " + text(least, kind) + " to " + text(most, kind)
                            + "; look at the unit and the point");
        }
    }

    /** A value for a sentence. */
    static String text(double si, Kind kind) {
        if (!Double.isFinite(si)) {
            return "beyond any number";
        }
        return kind == Kind.NUMBER
                ? Quantities.brief(si, Units.ONE)
                : Quantities.brief(si, Units.of(kind).get(0));
    }

    private static String named(Record record) {
        Component first = Component.of(record.getClass()).get(0);
        boolean hasId = first.key().equals("id") && !(record instanceof UnitType);
        return Component.words(record.getClass()) + (hasId ? " " + first.in(record) : "");
    }
}
