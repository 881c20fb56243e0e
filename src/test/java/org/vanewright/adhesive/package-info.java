@NullMarked
package org.vanewright.adhesive;

import org.jspecify.annotations.NullMarked;
