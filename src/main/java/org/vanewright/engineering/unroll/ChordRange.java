package org.vanewright.engineering.unroll;

/**
 * The part of a skin that a sheet covers, over the whole span of the panel.
 *
 * @param from chord fraction of its front edge, 0 to 1
 * @param to chord fraction of its rear edge, not less than {@code from}, at most 1
 */
public record ChordRange(double from, double to) {
    public static final ChordRange WHOLE = new ChordRange(0, 1);
}
