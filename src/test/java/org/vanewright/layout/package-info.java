@NullMarked
package org.vanewright.layout;

import org.jspecify.annotations.NullMarked;
