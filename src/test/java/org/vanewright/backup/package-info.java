/** Checks of backups. */
@NullMarked
package org.vanewright.backup;

import org.jspecify.annotations.NullMarked;
