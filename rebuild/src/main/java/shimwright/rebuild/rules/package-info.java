/** What forbids an entry: hold points, order, acceptances that no longer stand. */
@org.jspecify.annotations.NullMarked
package shimwright.rebuild.rules;
