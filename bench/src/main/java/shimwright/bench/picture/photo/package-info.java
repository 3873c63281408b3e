/**
 * Photographs made small for a page, each from the bytes that were kept, and what was drawn on them. It may touch the JDK's image
 * readers, the scaling library, the pen and the entries of a job, and neither a page nor the store.
 */
@org.jspecify.annotations.NullMarked
package shimwright.bench.picture.photo;
