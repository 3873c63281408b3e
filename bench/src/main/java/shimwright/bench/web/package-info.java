/**
 * The server with all its pages, joined. It may touch every room of the pages, and neither the store nor the printer, only what it is
 * handed.
 */
@org.jspecify.annotations.NullMarked
package shimwright.bench.web;
