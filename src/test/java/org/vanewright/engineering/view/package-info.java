@NullMarked
package org.vanewright.engineering.view;

import org.jspecify.annotations.NullMarked;
