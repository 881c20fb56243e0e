/** Where the bytes of what people send are kept: beside their rows, or in object storage. */
@NullMarked
package org.vanewright.platform.attachment;

import org.jspecify.annotations.NullMarked;
