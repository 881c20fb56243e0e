package org.vanewright.bond;

import org.jspecify.annotations.Nullable;

/**
 * How tape is to be cut.
 *
 * @param rollWidthMm of the tape; the narrowest usual one that fits where absent
 * @param spares of each kind of base beside those of the layout; {@value #USUAL_SPARES} where absent
 */
public record TapeQuery(
        @Nullable Double rollWidthMm, @Nullable Integer spares) {
    public static final int USUAL_SPARES = 4;
    public static final int MOST_SPARES = 500;
}
