/** Automatic checks of what was submitted. They advise the reviewer; people decide. */
@NullMarked
package org.vanewright.record.check;

import org.jspecify.annotations.NullMarked;
