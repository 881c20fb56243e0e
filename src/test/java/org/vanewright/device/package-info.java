@NullMarked
package org.vanewright.device;

import org.jspecify.annotations.NullMarked;
