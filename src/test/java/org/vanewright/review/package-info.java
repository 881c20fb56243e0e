@NullMarked
package org.vanewright.review;

import org.jspecify.annotations.NullMarked;
