/**
 * Recorded flights: time series from data loggers and GPS receivers, read as a stream, and what can be found in them.
 * Memory never grows with the length of a log.
 */
@NullMarked
package org.vanewright.engineering.flightlog;

import org.jspecify.annotations.NullMarked;
