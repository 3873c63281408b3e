/**
 * Threaded joints: sizes and limits, tightening, stripping, wrenches and tightening order. The worksheets stand in {@link
 * shimwright.mechanics.thread.ThreadSheets}.
 */
@org.jspecify.annotations.NullMarked
package shimwright.mechanics.thread;
