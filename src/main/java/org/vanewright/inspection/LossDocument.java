package org.vanewright.inspection;

import org.jspecify.annotations.Nullable;
import org.vanewright.installation.DeviceAt;

/**
 * A device that was found missing or loose. It came off between this inspection and the one before; when, nobody knows.
 *
 * @param at which one
 * @param state missing or loose
 * @param cause as suspected
 */
public record LossDocument(
        @Nullable DeviceAt at,
        @Nullable LossState state,
        @Nullable LossCause cause) {}
