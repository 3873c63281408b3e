/**
 * Plans side by side with a general-purpose constraint solver; ships nothing. It may touch plans, and nobody touches it.
 */
@org.jspecify.annotations.NullMarked
package shimwright.compare;
