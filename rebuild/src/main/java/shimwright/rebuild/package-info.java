/**
 * The trade: unit types, jobs, plans, decisions and records. It may touch the mechanics, and never the program around it.
 */
@org.jspecify.annotations.NullMarked
package shimwright.rebuild;
