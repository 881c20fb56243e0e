@NullMarked
package org.vanewright.platform.page;

import org.jspecify.annotations.NullMarked;
