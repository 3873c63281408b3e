package shimwright.rebuild.unit.model;

import java.util.List;
import java.util.Set;

/** One wear check: what is new, what is the service limit, in which direction it wears. */
public record WearLimit(
        @Field("short id") String id,
        @Field("what is measured") String what,

        @Field(value = "items it judges", absent = "[]", refersTo = "items")
        List<String> items,

        @Field("kind of quantity; none for an attested check")
        UnitType.CheckKind kind,

        @Field(value = "new, least and most, with units", absent = "[]")
        List<String> asNew,

        @Field(value = "service limit with unit", absent = "")
        String limit,

        @Field("reject below min, above max, or attested") Direction direction,

        @Field(value = "wear per 100 000 km with unit; signed", absent = "")
        String rate,

        @Field("how it is measured") String how,
        @Field("where the limit comes from") String origin,

        @Field(value = "variants this holds for; all when absent", absent = "[]", refersTo = "variants")
        Set<String> only) {
    /** Which way the limit cuts. */
    public enum Direction {
        MIN,
        MAX,
        ATTEST
    }
}
