package org.vanewright.adhesive;

import org.jspecify.annotations.Nullable;

/**
 * How long a mass hung from a piece of tape stayed up: a time and no strength.
 *
 * @param hours until it fell, or until the test ended
 * @param massG that hung
 * @param areaMm2 of the tape that held it
 * @param method how it was measured
 */
public record Holding(
        @Nullable Double hours,
        @Nullable Double massG,
        @Nullable Double areaMm2,
        @Nullable TestMethod method) {}
