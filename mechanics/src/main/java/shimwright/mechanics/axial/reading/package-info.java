/**
 * Series of rounds: whether they have settled, their value and its uncertainty, and end play from them. May touch what
 * lies below the topics, and no other room of axial.
 */
@org.jspecify.annotations.NullMarked
package shimwright.mechanics.axial.reading;
