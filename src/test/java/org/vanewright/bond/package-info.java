@NullMarked
package org.vanewright.bond;

import org.jspecify.annotations.NullMarked;
