package shimwright.rebuild.unit.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** One wear check: what is new, what is the service limit, in which direction it wears. */
public record WearLimit(
        @Field("short id") String id,
        @Field("what is measured") String what,

        @Field(value = "items it judges", absent = "[]", refersTo = "items")
        List<String> items,

        @Field(
                value = "items read as one, such as a sleeve on its hub; every other is read by itself",
                absent = "[]",
                refersTo = "items")
        List<List<String>> together,

        @Field("kind of quantity; none for an attested check")
        UnitType.CheckKind kind,

        @Field(value = "new, least and most, with units", absent = "[]", kindFrom = "kind")
        List<Quantity> asNew,

        @Field(value = "service limit with unit", absent = "", kindFrom = "kind")
        Optional<Quantity> limit,

        @Field("reject below min, above max, or attested") Direction direction,

        @Field(value = "wear per 100 000 km with unit; signed", absent = "", kindFrom = "kind")
        Optional<Quantity> rate,

        @Field(value = "fewest readings of each piece", absent = "1")
        int places,

        @Field(value = "pieces read one by one, by name", absent = "[]")
        List<String> pieces,

        @Field(value = "what of the readings is judged", absent = "each")
        Statistic judgedOn,

        @Field(value = "value = reading x this + offset", absent = "1")
        double readingFactor,

        @Field(value = "value = reading x factor + this, with unit", absent = "", kindFrom = "kind")
        Optional<Quantity> readingOffset,

        @Field(value = "tool or gauge it is read with", absent = "", refersTo = "tools")
        String gauge,

        @Field("how it is measured") String how,
        @Field("where the limit comes from") String origin,

        @Field(value = "variants this holds for; all when absent", absent = "[]", refersTo = "variants")
        Set<String> only)
        implements Measurable {

    @Override
    public List<Quantity> stated() {
        List<Quantity> stated = new ArrayList<>(limit.stream().toList());
        stated.addAll(asNew);
        rate.ifPresent(stated::add);
        return List.copyOf(stated);
    }

    /** Which way the limit cuts. */
    public enum Direction {
        MIN,
        MAX,
        ATTEST
    }
}
