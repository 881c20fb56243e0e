@NullMarked
package org.vanewright.catalogue;

import org.jspecify.annotations.NullMarked;
