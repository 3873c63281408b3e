/** An independent check of orders: knows the problem as data and nothing of how orders are found. */
@org.jspecify.annotations.NullMarked
package shimwright.rebuild.plan.lawful;
