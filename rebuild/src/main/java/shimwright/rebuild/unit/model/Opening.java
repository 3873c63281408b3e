package shimwright.rebuild.unit.model;

import java.util.List;
import java.util.Set;

/** A window in the case: while none of the steps that shut it stands done, these items can be seen, read and touched. */
public record Opening(
        @Field("short id") String id,
        @Field("what it is") String name,

        @Field(value = "steps that shut it", refersTo = "steps")
        List<String> shutBy,

        @Field(value = "items that can be seen, read and touched through it where they are", refersTo = "items")
        List<String> reaches,

        @Field(value = "remark", absent = "") String note,

        @Field(value = "variants this holds for; all when absent", absent = "[]", refersTo = "variants")
        Set<String> only) {}
