/**
 * Which characters a person can type and a page or paper can show. Knows nothing but the JDK, so that pages, paper and
 * command line ask the same question.
 */
@org.jspecify.annotations.NullMarked
package shimwright.bench.text;
