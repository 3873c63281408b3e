/** What a unit type is: its parts, limits, clearances and steps as records, and one variant of it with nothing optional left. Knows neither files nor jobs. */
@org.jspecify.annotations.NullMarked
package shimwright.rebuild.unit.model;
