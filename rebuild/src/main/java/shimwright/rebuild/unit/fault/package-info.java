/** Faults of a unit file, each with line, column, fact and hint, and how its quantities are written. Knows the model's words, no rule and no job. */
@org.jspecify.annotations.NullMarked
package shimwright.rebuild.unit.fault;
