@NullMarked
package org.vanewright.platform.log;

import org.jspecify.annotations.NullMarked;
