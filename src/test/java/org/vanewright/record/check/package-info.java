@NullMarked
package org.vanewright.record.check;

import org.jspecify.annotations.NullMarked;
