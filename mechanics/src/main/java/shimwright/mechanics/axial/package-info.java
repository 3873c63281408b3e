/**
 * The list of the worksheets of axial settings, whose rooms reading, stack, shim and bevel lie below; play is
 * positive, preload a negative play. A topic: it may touch what lies below the topics, and no other topic.
 */
@org.jspecify.annotations.NullMarked
package shimwright.mechanics.axial;
