/** The unit file: its model, reader and problems, and its variants resolved into a unit with nothing optional left. */
@org.jspecify.annotations.NullMarked
package shimwright.rebuild.unit;
