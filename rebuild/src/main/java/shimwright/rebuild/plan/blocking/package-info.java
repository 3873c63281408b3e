/** What the section geometry says about the order: what is trapped behind what, compared with the unit file's steps. */
@org.jspecify.annotations.NullMarked
package shimwright.rebuild.plan.blocking;
