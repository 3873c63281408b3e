/** The demo shop: two invented jobs played into a fresh log through the same rules as any other entry. */
@org.jspecify.annotations.NullMarked
package shimwright.bench.demo;
