/**
 * Salon days in virtual time with faults: the real desk, journal, clock and bells, with disks that tear, lines that break,
 * tablets that sleep and clocks that are set, all from one seed.
 */
@NullMarked
package rinsebell.demo.faults;

import org.jspecify.annotations.NullMarked;
