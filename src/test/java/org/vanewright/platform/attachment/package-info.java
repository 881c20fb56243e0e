@NullMarked
package org.vanewright.platform.attachment;

import org.jspecify.annotations.NullMarked;
