/**
 * Published values against the worksheets: the one reader, the bindings, the judge and the account. Rows stand in {@code
 * published/checks}, bindings in the texts beside this package and, where arithmetic is needed, in code; nothing here knows a
 * topic's own classes but the classes named {@code …Bindings}.
 */
@org.jspecify.annotations.NullMarked
package shimwright.mechanics.published;
