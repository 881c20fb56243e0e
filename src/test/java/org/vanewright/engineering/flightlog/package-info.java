@NullMarked
package org.vanewright.engineering.flightlog;

import org.jspecify.annotations.NullMarked;
