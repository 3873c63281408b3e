package shimwright.rebuild.inspect;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import shimwright.rebuild.unit.model.Measurable;

/** What limits are relative to: of each piece the mean of the readings that another check kept. */
final class EarlierReadings {
    private EarlierReadings() {}

    /** The means by piece, under an empty name where there is one; empty where nothing was read or it does not fit. */
    static Map<String, Double> of(Measurable measured, List<Double> before) {
        List<String> fields = measured.fields();
        Map<String, Double> means = new LinkedHashMap<>();
        if (before.isEmpty() || before.size() % fields.size() != 0) {
            return means;
        }
        int share = before.size() / fields.size();
        for (int i = 0; i < fields.size(); i++) {
            means.put(fields.get(i), JudgedValue.mean(before.subList(i * share, (i + 1) * share)));
        }
        return means;
    }
}
