package shimwright.bench.walk;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import tools.jackson.databind.JsonNode;

/** Sound readings for checks and wear limits as the door describes them. */
final class CheckReadings {
    private final Map<String, Double> read = new HashMap<>();
    private final Map<String, Double> fixed;

    /**
     * Readings of a unit.
     *
     * @param fixed what a check reads because the part says so, by hold point and check
     */
    CheckReadings(Map<String, Double> fixed) {
        this.fixed = fixed;
    }

    /** The readings of a check within its limits, SI, in the order in which they are typed. */
    List<Double> sound(String hold, JsonNode check) {
        String id = hold + "/" + check.get("check").asString();
        List<Double> values = new ArrayList<>();
        int pieces = Math.max(1, check.get("pieces").size());
        int each = check.get("readings").asInt() / pieces;
        for (int piece = 0; piece < pieces; piece++) {
            double target = fixed.getOrDefault(id, target(check, piece));
            double reading = (target - check.get("offset").asDouble())
                    / check.get("factor").asDouble();
            switch (check.get("judgedOn").asString()) {
                case "difference" -> {
                    if (pieces == 1) {
                        values.addAll(List.of(0.01 + reading, 0.01));
                    } else {
                        values.add(piece == 0 ? 0.01 + target : 0.01);
                    }
                }
                case "range" -> {
                    for (int i = 0; i < each; i++) {
                        values.add(0.01 + (i == 0 ? reading : 0));
                    }
                }
                default -> {
                    for (int i = 0; i < each; i++) {
                        values.add(reading);
                    }
                }
            }
            read.put(id, target);
        }
        return values;
    }

    private double target(JsonNode check, int piece) {
        JsonNode nominal = check.get("nominal");
        if (!nominal.isEmpty()) {
            return nominal.get(Math.min(piece, nominal.size() - 1)).asDouble();
        }
        String relative = check.get("relativeTo").asString();
        double from = relative.isEmpty() ? 0 : read.getOrDefault(relative, Double.NaN);
        if (check.has("lower") && check.has("upper")) {
            return from + (check.get("lower").asDouble() + check.get("upper").asDouble()) / 2;
        }
        if (check.has("upper")) {
            double upper = check.get("upper").asDouble();
            String unit = check.get("unit").asString();
            // a bore is near its limit, a play or a run-out may be anything below it
            return from + upper * (unit.equals("mm") && upper > 0.005 ? 0.9998 : 0.5);
        }
        return from + check.get("lower").asDouble() * 1.05;
    }

    /** Readings of a wear limit as of a part that is new. */
    static List<Double> asNew(JsonNode limit) {
        JsonNode fresh = limit.get("asNew");
        double value = fresh.isEmpty()
                ? limit.get("service").asDouble()
                : (fresh.get(0).asDouble() + fresh.get(1).asDouble()) / 2;
        double reading =
                (value - limit.get("offset").asDouble()) / limit.get("factor").asDouble();
        List<Double> values = new ArrayList<>();
        for (int i = 0; i < limit.get("readings").asInt(); i++) {
            values.add(reading);
        }
        return values;
    }

    /** Readings of a wear limit as of a part that is worn a little beyond it. */
    static List<Double> worn(JsonNode limit) {
        double service = limit.get("service").asDouble();
        double from = asNew(limit).get(0);
        double value = service + 0.3 * (service - from);
        List<Double> values = new ArrayList<>();
        for (int i = 0; i < limit.get("readings").asInt(); i++) {
            values.add(value);
        }
        return values;
    }

    /** As typed, with the unit. */
    static String typed(JsonNode of, List<Double> si) {
        return si.stream()
                .map(value -> typed(of.get("kind").asString(), value))
                .collect(Collectors.joining("; "));
    }

    private static String typed(String kind, double si) {
        return switch (kind) {
            case "length" -> text(si * 1e3) + " mm";
            case "torque" -> text(si) + " N.m";
            case "force" -> text(si) + " N";
            case "pressure" -> text(si / 1e5) + " bar";
            case "angle" -> text(Math.toDegrees(si)) + " deg";
            case "number" -> text(si);
            default -> throw new IllegalArgumentException("no unit for " + kind);
        };
    }

    private static String text(double value) {
        return String.format(Locale.ROOT, "%.5f", value);
    }
}
