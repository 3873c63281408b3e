/**
 * Pictures in five rooms: {@code svg} the pen and letters, {@code plot} readings and limits, {@code plan} the order of
 * work, {@code section} the unit itself, {@code photo} photographs made small. Plot, plan and section may touch {@code
 * svg} and not each other; none knows a page or the store, each takes finished values and gives back text or bytes.
 */
@org.jspecify.annotations.NullMarked
package shimwright.bench.picture;
