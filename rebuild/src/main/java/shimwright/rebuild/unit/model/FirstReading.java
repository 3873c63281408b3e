package shimwright.rebuild.unit.model;

import java.util.Set;

/** A reading to take before a unit comes apart: what ends it, and what reads it again at the end. */
public record FirstReading(
        @Field("short id") String id,
        @Field("what is read") String what,
        @Field("kind of quantity") UnitType.CheckKind kind,

        @Field(value = "items that end it as they come off", absent = "[]", refersTo = "items")
        Set<String> endedBy,

        @Field(value = "what reads it at the end: a clearance, a wear limit, or a check as H02/bore", absent = "")
        String again,

        @Field(value = "how it is read", absent = "") String how,

        @Field(value = "variants this holds for; all when absent", absent = "[]", refersTo = "variants")
        Set<String> only) {}
