@NullMarked
package org.vanewright.audit;

import org.jspecify.annotations.NullMarked;
