@NullMarked
package org.vanewright.campaign;

import org.jspecify.annotations.NullMarked;
