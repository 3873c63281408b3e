/** The clearance session: what to do next, is it seated, is it enough, which pack, is the last reading what was predicted. */
@org.jspecify.annotations.NullMarked
package shimwright.rebuild.clearance;
