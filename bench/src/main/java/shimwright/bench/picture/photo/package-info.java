/**
 * Photographs made small for a page, each from the bytes that were kept. It may touch the JDK's image readers and the scaling
 * library, and neither a page nor the store.
 */
@org.jspecify.annotations.NullMarked
package shimwright.bench.picture.photo;
