/**
 * The pages of the shop: jobs at a glance, gauges, the drawer, evenings, devices. It may touch the desk, the kit, the
 * paired devices and the entrance they come by; what is typed becomes an act of the shop and nothing else.
 */
@NullMarked
package shimwright.bench.web.shop;

import org.jspecify.annotations.NullMarked;
