@NullMarked
package org.vanewright.bench;

import org.jspecify.annotations.NullMarked;
