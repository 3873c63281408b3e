/**
 * What every request passes before a page sees it: the name it asked for, where it came from, who asks, and how much
 * it brings. It may touch the web server, the paired devices and the form of a refusal, and none of the pages.
 */
@org.jspecify.annotations.NullMarked
package shimwright.bench.web.guard;
