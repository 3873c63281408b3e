/** Plans side by side with a general-purpose constraint solver; built with -Pcompare only. */
@org.jspecify.annotations.NullMarked
package shimwright.compare;
