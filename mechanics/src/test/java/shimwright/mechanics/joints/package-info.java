/** Published values of threads, springs, seals, oil and lifting against the worksheets. */
@org.jspecify.annotations.NullMarked
package shimwright.mechanics.joints;
