/** The job log: sealed entries, the fold that makes a job of them, and the rules that refuse an entry. */
@org.jspecify.annotations.NullMarked
package shimwright.rebuild.job;
