/**
 * What a person can do, one record an act: typed input in, entries or every reason against them out. Pages, the HTTP
 * door, the demo and the tests call these and nothing else; an act may touch the bench, the rules and the sessions,
 * and keeps nothing itself.
 */
@org.jspecify.annotations.NullMarked
package shimwright.rebuild.act;
