/**
 * What forbids an entry: hold points, order, acceptances that no longer stand; each type of entry has its rule. It may touch the job,
 * the unit it stands on and the clearances, searches for no best plan and keeps nothing.
 */
@org.jspecify.annotations.NullMarked
package shimwright.rebuild.rules;
