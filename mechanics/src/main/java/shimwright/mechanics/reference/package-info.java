/**
 * Reader of the reference tables: one file per printed table under {@code reference/<standard-and-edition>/}, headed by
 * what it is, its unit, who typed it and whether it was checked; read by column name. It may touch the JDK
 * alone.
 */
@org.jspecify.annotations.NullMarked
package shimwright.mechanics.reference;
