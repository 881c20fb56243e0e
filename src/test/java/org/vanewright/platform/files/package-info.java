@NullMarked
package org.vanewright.platform.files;

import org.jspecify.annotations.NullMarked;
