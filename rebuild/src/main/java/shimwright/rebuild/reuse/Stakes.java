package shimwright.rebuild.reuse;

import java.util.Map;
import java.util.OptionalDouble;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.Shop;
import shimwright.rebuild.money.Rate;

/**
 * What is at stake in a job, as far as somebody has said it. What nobody said is empty and is never made up.
 *
 * @param distance that the unit is promised to last, km
 * @param scatter by which share the usual rate of wear may be off, as a standard deviation
 * @param vehicle s to take the unit out of the vehicle and put it back
 * @param rate of an hour at the bench, in the shop's money
 * @param day what a day's delay costs, in the shop's money
 */
public record Stakes(
        OptionalDouble distance,
        OptionalDouble scatter,
        OptionalDouble vehicle,
        OptionalDouble rate,
        OptionalDouble day) {
    public static final String DISTANCE = "distance";
    public static final String SCATTER = "scatter";
    public static final String VEHICLE = "vehicle";
    public static final String DAY = "day";

    /** The shop's fact: minutes at the bench that a day sooner is worth. */
    private static final String DAY_SOONER = "day-sooner";

    /** As the job says, and the shop's rate; a day's delay by the shop's minutes where the job says nothing of it. */
    public static Stakes of(Job job, Shop shop) {
        Job.Said<Entry.Weighed> said = job.inspection().weighed().get("");
        Map<String, Double> numbers = said == null ? Map.of() : said.what().numbers();
        OptionalDouble rate = number(shop.facts().getOrDefault("rate", ""));
        OptionalDouble day = number(numbers, DAY);
        OptionalDouble minutes = number(shop.facts().getOrDefault(DAY_SOONER, ""));
        return new Stakes(
                number(numbers, DISTANCE),
                number(numbers, SCATTER),
                number(numbers, VEHICLE),
                rate,
                day.isPresent() || rate.isEmpty() || minutes.isEmpty()
                        ? day
                        : OptionalDouble.of(minutes.getAsDouble() / 60 * rate.getAsDouble()));
    }

    /** The one number in a text, such as "60 EUR"; empty where there is not one. */
    private static OptionalDouble number(String text) {
        return Rate.of(text)
                .map(rate -> OptionalDouble.of(rate.cents() / 100.0))
                .orElse(OptionalDouble.empty());
    }

    static OptionalDouble number(Map<String, Double> numbers, String name) {
        Double known = numbers.get(name);
        return known == null ? OptionalDouble.empty() : OptionalDouble.of(known);
    }
}
