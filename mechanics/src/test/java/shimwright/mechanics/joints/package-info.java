/** Laws of threads, springs, seals, oil and lifting, and the demo's expected results, asked of the worksheets. */
@org.jspecify.annotations.NullMarked
package shimwright.mechanics.joints;
