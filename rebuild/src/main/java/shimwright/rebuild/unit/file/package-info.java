/** Unit files read, written and described: text to model and back, with all faults at once. May touch model, fault and sense; knows no job. */
@org.jspecify.annotations.NullMarked
package shimwright.rebuild.unit.file;
