@NullMarked
package org.vanewright.record;

import org.jspecify.annotations.NullMarked;
