@NullMarked
package org.vanewright.platform.job;

import org.jspecify.annotations.NullMarked;
