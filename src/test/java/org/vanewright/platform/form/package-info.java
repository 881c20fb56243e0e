@NullMarked
package org.vanewright.platform.form;

import org.jspecify.annotations.NullMarked;
