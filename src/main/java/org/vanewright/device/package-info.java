/** Devices: the printed pieces that clubs share. Owns the table {@code device_revision}. */
@NullMarked
package org.vanewright.device;

import org.jspecify.annotations.NullMarked;
