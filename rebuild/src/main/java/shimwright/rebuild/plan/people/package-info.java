/** What the rest of a build takes with one and with more people, and who does what. */
@org.jspecify.annotations.NullMarked
package shimwright.rebuild.plan.people;
