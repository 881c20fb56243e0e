package org.vanewright.installation;

import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * How far off a device may be before it is pointed out; absent ones have the usual value, which is common practice, no
 * source.
 *
 * @param positionMm along the skin
 * @param angleDeg of the vane
 * @param heightMm of the vane above its base
 */
public record TolerancesDocument(
        @Nullable Double positionMm,
        @Nullable Double angleDeg,
        @Nullable Double heightMm) {
    public static final double POSITION_MM = 2;
    public static final double ANGLE_DEG = 2;
    public static final double HEIGHT_MM = 0.5;

    static final TolerancesDocument NONE = new TolerancesDocument(null, null, null);

    public double positionOrUsualMm() {
        return Objects.requireNonNullElse(positionMm, POSITION_MM);
    }

    public double angleOrUsualDeg() {
        return Objects.requireNonNullElse(angleDeg, ANGLE_DEG);
    }

    public double heightOrUsualMm() {
        return Objects.requireNonNullElse(heightMm, HEIGHT_MM);
    }
}
