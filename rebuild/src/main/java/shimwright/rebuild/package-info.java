/** The trade: unit types, jobs, plans, decisions and records. Depends on mechanics only. */
@org.jspecify.annotations.NullMarked
package shimwright.rebuild;
