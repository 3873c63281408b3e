/**
 * Pictures and documents by the hash of their content, as files. It may touch their folders and decides what a picture is.
 */
@org.jspecify.annotations.NullMarked
package shimwright.bench.store.content;
