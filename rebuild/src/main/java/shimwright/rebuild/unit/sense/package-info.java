/** What a mechanic would not believe in a unit file: orders of magnitude, directions, contradictions. May read the model and report faults, nothing else. */
@org.jspecify.annotations.NullMarked
package shimwright.rebuild.unit.sense;
