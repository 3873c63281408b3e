package shimwright.rebuild.unit.model;

import shimwright.mechanics.quantity.Kind;

/** Sealant, locker, grease, oil: what it is and how long it stays open. */
public record Consumable(
        @Field("short id") String id,
        @Field("what it is") String name,
        @Field(value = "amount for one unit", absent = "") String amount,

        @Field(
                value = "longest time from laying to joining or tightening; 0 for none",
                kind = Kind.TIME,
                absent = "0 s")
        double open,

        @Field(value = "cure before test; 0 for none", kind = Kind.TIME, absent = "0 s")
        double cure,

        @Field(value = "remark", absent = "") String note) {}
