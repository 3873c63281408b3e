package shimwright.rebuild.complaint;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import shimwright.mechanics.tooth.MeshFrequencies;
import shimwright.rebuild.unit.model.GearPair;
import shimwright.rebuild.unit.model.Unit;

/**
 * What a pair of gears hums at.
 *
 * @param pair of the unit
 * @param speed of its driver, rad/s
 * @param mesh Hz
 */
public record Hum(GearPair pair, double speed, double mesh) {
    /** A phone and a guessed speed are not nearer than this. */
    private static final double NEAR = 0.04;

    /**
     * The mesh frequency of each pair that turns, in a gear, at a speed of the input shaft. Shafts turn as the pairs between them make them: a
     * shaft that one pair alone drives always turns with it, one that several can drive turns by the pair that is in. Loose wheels mesh without
     * load and hum little.
     *
     * @param engaged the pair that is in, by id; empty for neutral
     * @param input speed of the input shaft, rad/s, above 0
     * @return pairs that are straight through, or whose driver's shaft is not known or stands still, are left out
     */
    public static List<Hum> of(Unit unit, String engaged, double input) {
        List<GearPair> pairs = unit.type().gears().stream()
                .filter(pair ->
                        !pair.driverItem().isBlank() && !pair.drivenItem().isBlank())
                .toList();
        Map<String, Double> speeds = speeds(unit, pairs, engaged, input);
        List<Hum> hums = new ArrayList<>();
        for (GearPair pair : pairs) {
            Double speed = speeds.get(driver(unit, pair));
            if (speed != null && !pair.straight()) {
                hums.add(new Hum(pair, speed, meshing(pair, speed).mesh()));
            }
        }
        return hums;
    }

    private static MeshFrequencies.Result meshing(GearPair pair, double speed) {
        return MeshFrequencies.work(new MeshFrequencies.Case(pair.driver(), pair.driven(), speed))
                .orElseThrow()
                .result();
    }

    private static String driver(Unit unit, GearPair pair) {
        return unit.item(pair.driverItem()).shaft();
    }

    private static String driven(Unit unit, GearPair pair) {
        return unit.item(pair.drivenItem()).shaft();
    }

    private static Map<String, Double> speeds(Unit unit, List<GearPair> pairs, String engaged, double input) {
        Map<String, Double> speeds = new LinkedHashMap<>();
        pairs.stream()
                .map(pair -> driver(unit, pair))
                .filter(shaft ->
                        pairs.stream().noneMatch(pair -> driven(unit, pair).equals(shaft)))
                .forEach(shaft -> speeds.put(shaft, input));
        for (boolean more = true; more; ) {
            more = false;
            for (GearPair pair : pairs) {
                Double speed = speeds.get(driver(unit, pair));
                String on = driven(unit, pair);
                boolean drives = pair.id().equals(engaged)
                        || pairs.stream()
                                        .filter(other -> driven(unit, other).equals(on))
                                        .count()
                                == 1;
                if (speed != null && drives && !speeds.containsKey(on)) {
                    speeds.put(
                            on, pair.straight() ? speed : meshing(pair, speed).drivenSpeed());
                    more = true;
                }
            }
        }
        return speeds;
    }

    /** Whether what was heard is this pair's hum or its second or third multiple, within 4 %. */
    public boolean like(double heard) {
        for (int multiple = 1; multiple <= 3; multiple++) {
            if (Math.abs(heard - multiple * mesh) <= NEAR * multiple * mesh) {
                return true;
            }
        }
        return false;
    }
}
