/**
 * An independent check of orders: knows the problem as data and nothing of how orders are found. It may touch the JDK and the model
 * of the problem alone.
 */
@org.jspecify.annotations.NullMarked
package shimwright.rebuild.plan.verify;
