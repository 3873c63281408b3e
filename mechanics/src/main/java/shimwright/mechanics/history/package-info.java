/**
 * What past jobs teach: returns and lives, values of a model shrunk to those of all, what the drawer should hold.
 * A topic: it may touch what lies below the topics, and no other topic.
 */
@org.jspecify.annotations.NullMarked
package shimwright.mechanics.history;
