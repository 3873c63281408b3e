/**
 * The pages on which devices are let in and out: the one that a stranger sees, a device's own, and the owner's list. Knows
 * what pages share, the guard and the devices, and no other page.
 */
@org.jspecify.annotations.NullMarked
package shimwright.bench.web.devices;
