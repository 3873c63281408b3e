/**
 * What forbids an entry: hold points, order, acceptances that no longer stand; each type of entry has its rule. It may
 * touch what lies on the bench, its clearances and the findings of the record, searches for no best plan and keeps
 * nothing.
 */
@org.jspecify.annotations.NullMarked
package shimwright.rebuild.rules;
