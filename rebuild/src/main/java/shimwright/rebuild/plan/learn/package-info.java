/** A strip-down as recorded becomes a first plan: turned round, relaxed by drawing, answers and other jobs, written as steps. */
@org.jspecify.annotations.NullMarked
package shimwright.rebuild.plan.learn;
