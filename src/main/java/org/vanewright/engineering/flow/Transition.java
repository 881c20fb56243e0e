package org.vanewright.engineering.flow;

import org.jspecify.annotations.Nullable;

/**
 * Where the layers are made turbulent, as by a strip of grit; without a place, transition is free.
 *
 * @param upperX on the upper side, in the section's unit
 * @param lowerX on the lower side
 */
public record Transition(@Nullable Double upperX, @Nullable Double lowerX) {
    public static final Transition FREE = new Transition(null, null);
}
