/** The rules of the house, as tests. */
@NullMarked
package org.vanewright.architecture;

import org.jspecify.annotations.NullMarked;
