@NullMarked
package org.vanewright.study;

import org.jspecify.annotations.NullMarked;
