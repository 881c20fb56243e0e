package org.vanewright.engineering.tuft;

/**
 * How far a frame's picture has moved from that of the first.
 *
 * @param rightPx what was at x then is at x + {@code rightPx} now
 * @param downPx likewise downward
 * @param sharpness height of the correlation's peak, 1 where the frames are the same but for the shift, near 0 where they
 *     have nothing in common
 */
public record FrameShift(double rightPx, double downPx, double sharpness) {
    static final FrameShift NONE = new FrameShift(0, 0, 1);
}
