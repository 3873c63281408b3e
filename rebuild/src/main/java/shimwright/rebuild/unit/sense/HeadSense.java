package shimwright.rebuild.unit.sense;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import shimwright.mechanics.quantity.Kind;
import shimwright.rebuild.unit.model.Kit;
import shimwright.rebuild.unit.model.UnitType;
import shimwright.rebuild.unit.model.UnitType.Symptom;
import shimwright.rebuild.unit.model.UnitType.TellTale;
import shimwright.rebuild.unit.model.UnitType.Weight;

/** Identity, variants and what tells them apart, symptoms, turning the case over. */
public final class HeadSense {
    /** The format that this program reads. */
    public static final String FORMAT = "shimwright-unit 1";

    private static final Pattern ID = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");

    private final SenseContext context;

    HeadSense(SenseContext context) {
        this.context = context;
    }

    void check() {
        UnitType type = context.type();
        identity(type);
        if (type.variants().size() > 1) {
            tellTales(type);
        }
        type.symptoms().stream().filter(context::sound).forEach(this::symptom);
        for (Map.Entry<String, Double> turn : type.turnOver().entrySet()) {
            turnOver(turn.getKey(), turn.getValue());
        }
        for (Kit kit : type.kits()) {
            kit.contents().forEach(line -> context.within(line, "quantity", line.quantity(), 1, 1000, Kind.NUMBER));
        }
    }

    private void identity(UnitType type) {
        Set<String> written = context.at().written(type);
        if (written.contains("format") && !type.format().equals(FORMAT)) {
            head("format", "format \"" + type.format() + "\" is not read here", "Write format: " + FORMAT);
        }
        if (written.contains("id") && !ID.matcher(type.id()).matches()) {
            head(
                    "id",
                    "\"" + type.id() + "\" is no id",
                    "Use small letters, digits and hyphens, such as ambleholt-l5-74");
        }
        if (written.contains("variants") && type.variants().isEmpty()) {
            head("variants", "there is no variant", "Name one, even where there is only one");
        }
        if (context.sound(type.fluid()) && type.fluid().volume() != 0) {
            context.within(type.fluid(), "volume", type.fluid().volume(), 0.05e-3, 0.1, Kind.VOLUME);
        }
        if (written.contains("mass") && type.mass() != 0) {
            context.within(type, "mass", type.mass(), 1, 1000, Kind.MASS);
        }
        if (written.contains("rated_torque") && type.ratedTorque() != 0) {
            context.within(type, "rated_torque", type.ratedTorque(), 1, 20_000, Kind.TORQUE);
        }
    }

    private void head(String key, String fact, String hint) {
        context.fault(context.type(), key, fact, hint);
    }

    private void tellTales(UnitType type) {
        for (TellTale tale : type.tellTales()) {
            for (String variant : type.variants().keySet()) {
                if (context.sound(tale) && !tale.shows().containsKey(variant)) {
                    context.remark(
                            tale,
                            "shows",
                            "it does not say what variant " + variant + " shows",
                            "Add it; until then it tells none apart from that one");
                }
            }
        }
        List<String> variants = new ArrayList<>(type.variants().keySet());
        for (int i = 0; i < variants.size(); i++) {
            for (String other : variants.subList(i + 1, variants.size())) {
                strong(variants.get(i), other);
            }
        }
    }

    private void strong(String one, String other) {
        boolean allSound = context.type().tellTales().stream().allMatch(context::sound);
        long apart = context.type().tellTales().stream()
                .filter(tale -> tale.weight() == Weight.STRONG)
                .filter(tale ->
                        !tale.shows().getOrDefault(one, "").equals(tale.shows().getOrDefault(other, "")))
                .count();
        if (allSound && apart < 2) {
            context.remark(
                    context.type(),
                    "tell_tales",
                    apart + (apart == 1 ? " strong tell-tale keeps variant " : " strong tell-tales keep variant ") + one
                            + " and variant " + other + " apart",
                    "Two strong ones must agree before a variant is settled; name at least two that differ");
        }
    }

    private void symptom(Symptom symptom) {
        double sum = symptom.causes().values().stream().mapToDouble(v -> v).sum();
        boolean negative = symptom.causes().values().stream().anyMatch(v -> v < 0);
        if (negative || sum < 90 || sum > 110) {
            context.fault(
                    symptom,
                    "causes",
                    "the shares of its causes add up to " + SenseContext.text(sum, Kind.NUMBER) + " percent",
                    "They are shares of 100");
        }
    }

    private void turnOver(String key, double seconds) {
        String[] ends = key.split("-", -1);
        Set<String> stations = context.type().stations().keySet();
        if (ends.length != 2 || !stations.contains(ends[0]) || !stations.contains(ends[1])) {
            head(
                    "turn_over",
                    "\"" + key + "\" does not lead from one station to another",
                    "Write it as FROM-TO with stations of this file: " + String.join(", ", stations));
        } else if (seconds < 0 || seconds > 4 * 3600) {
            head(
                    "turn_over",
                    "\"" + key + "\" takes " + SenseContext.text(seconds, Kind.TIME),
                    "Write minutes as 4 min");
        }
    }
}
