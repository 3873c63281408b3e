/** Laws and the demo's expected results for teeth, bearings under mesh load and synchronizers. */
@org.jspecify.annotations.NullMarked
package shimwright.mechanics.gears;
