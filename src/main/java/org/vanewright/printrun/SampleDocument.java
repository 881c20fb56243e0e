package org.vanewright.printrun;

import org.jspecify.annotations.Nullable;

/**
 * One piece of a run that was measured.
 *
 * @param heightMm of its vane above the base
 * @param thicknessMm of its vane
 */
public record SampleDocument(
        @Nullable Double heightMm, @Nullable Double thicknessMm) {}
