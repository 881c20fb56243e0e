@NullMarked
package org.vanewright.kit;

import org.jspecify.annotations.NullMarked;
