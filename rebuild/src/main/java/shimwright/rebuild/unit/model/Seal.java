package shimwright.rebuild.unit.model;

import java.util.List;
import java.util.Set;

/** A seal or an O-ring. */
public record Seal(
        @Field("short id") String id,
        @Field("where it sits") String where,
        @Field("size") String size,
        @Field(value = "pieces", absent = "1") int quantity,

        @Field(value = "which way the lip points", absent = "")
        String lip,

        @Field(value = "items that it is part of or is", absent = "[]", refersTo = "items")
        List<String> items,

        @Field(value = "variants this holds for; all when absent", absent = "[]", refersTo = "variants")
        Set<String> only) {}
