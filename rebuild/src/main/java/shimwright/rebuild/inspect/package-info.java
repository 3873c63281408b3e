/** Identification of the variant, and findings against limits. */
@org.jspecify.annotations.NullMarked
package shimwright.rebuild.inspect;
