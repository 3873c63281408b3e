/** The pages: forms in, entries kept, folds out. Knows neither the store nor the printer, only what it is handed. */
@org.jspecify.annotations.NullMarked
package shimwright.bench.web;
