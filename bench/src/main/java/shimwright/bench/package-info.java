/** The program: it joins the rooms of the house and opens its doors. */
@org.jspecify.annotations.NullMarked
package shimwright.bench;
