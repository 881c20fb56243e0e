@NullMarked
package org.vanewright.engineering.flighttest;

import org.jspecify.annotations.NullMarked;
