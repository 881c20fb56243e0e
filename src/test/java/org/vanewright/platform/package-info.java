@NullMarked
package org.vanewright.platform;

import org.jspecify.annotations.NullMarked;
