@NullMarked
package org.vanewright.engineering.inference;

import org.jspecify.annotations.NullMarked;
