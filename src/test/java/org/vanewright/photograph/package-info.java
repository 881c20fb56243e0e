@NullMarked
package org.vanewright.photograph;

import org.jspecify.annotations.NullMarked;
