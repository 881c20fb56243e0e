@NullMarked
package org.vanewright.printrun;

import org.jspecify.annotations.NullMarked;
