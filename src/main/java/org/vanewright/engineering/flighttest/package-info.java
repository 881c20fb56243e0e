/**
 * From what was read in flight to figures at standard conditions: airspeed calibration by ground speeds, position error,
 * stalls, cruise, climbs, and how uncertain each is.
 *
 * <p>For light aircraft well below the speed of sound: equivalent airspeed is taken for calibrated airspeed in lift
 * coefficients, which errs by 0.3 % at 100 kt and 10,000 ft. Nothing here corrects for the lag of instruments, for the
 * centre of gravity or for propeller efficiency.
 */
@NullMarked
package org.vanewright.engineering.flighttest;

import org.jspecify.annotations.NullMarked;
