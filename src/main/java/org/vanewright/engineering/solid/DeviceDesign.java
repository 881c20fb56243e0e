package org.vanewright.engineering.solid;

import org.jspecify.annotations.Nullable;

/**
 * The parameters of one printed piece. A revision of them gives one exact solid.
 *
 * <p>Frame: origin at the centre of the base outline on its underside, x rearward (downstream), y to the right seen
 * from above with x pointing down the page — that is z × x — and z away from the skin.
 *
 * <p>Absent values take the defaults of {@link DesignRules#withDefaults}; {@link DesignRules#check} says which designs
 * make a solid. Fillets are mitred at square corners: every edge of the section moves outward, its corners stay sharp.
 *
 * @param vane the vane, or either vane of a pair
 * @param pair present when two vanes share the base
 * @param base the plate that is bonded to the skin
 * @param indexMark whether a raised mark on the base shows forward
 * @param chordToleranceMm largest distance between a curve and its facets
 */
public record DeviceDesign(
        @Nullable Vane vane,
        @Nullable Pair pair,
        @Nullable Base base,
        @Nullable Boolean indexMark,
        @Nullable Double chordToleranceMm) {

    /** Outline of the vane seen from the side. */
    public enum Planform {
        /** Constant height. */
        RECTANGULAR,
        /**
         * Height rises in a straight line from nothing at the leading edge to full at the trailing edge. A point cannot
         * be printed: the tip keeps a flat just long enough for both edge treatments, 0.4 mm with square edges.
         */
        TRIANGULAR,
        /** Leading edge swept back to a tip shorter than the root, its front corner rounded. */
        SWEPT_TRAPEZIUM,
        /** Height rises along a circular arc, tangent to a tip flat as short as that of {@link #TRIANGULAR}. */
        OGIVAL
    }

    /** How an upright edge of the vane is finished. */
    public enum EdgeTreatment {
        SQUARE,
        /** Half round over the thickness. */
        ROUNDED,
        /** Tapered over twice the thickness to a flat a quarter of the thickness wide. */
        WEDGE
    }

    /** Outline of the base seen from above. */
    public enum BaseOutline {
        ROUNDED_RECTANGLE,
        /** Straight sides, half-ellipse ends three quarters of the width long, or half the length if that is less. */
        ELLIPSE_ENDED
    }

    /**
     * @param planform side outline
     * @param heightMm above the base's upper face
     * @param lengthMm at the root, along the vane
     * @param thicknessMm of the vane's plate
     * @param tipLengthMm length of the tip, for {@link Planform#SWEPT_TRAPEZIUM} only
     * @param leadingEdge treatment of the leading edge
     * @param trailingEdge treatment of the trailing edge
     * @param tipRadiusMm rounding of the front upper corner in the side outline; 0 is sharp
     * @param filletRadiusMm between vane and base; 0 is none
     * @param footAngleDeg slope at which the vane thickens to its printing foot along the trailing edge
     * @param footWidthMm full width of that foot where it stands on the build plate; absent or equal to the thickness
     *     means no foot
     */
    public record Vane(
            @Nullable Planform planform,
            @Nullable Double heightMm,
            @Nullable Double lengthMm,
            @Nullable Double thicknessMm,
            @Nullable Double tipLengthMm,
            @Nullable EdgeTreatment leadingEdge,
            @Nullable EdgeTreatment trailingEdge,
            @Nullable Double tipRadiusMm,
            @Nullable Double filletRadiusMm,
            @Nullable Double footAngleDeg,
            @Nullable Double footWidthMm) {}

    /**
     * @param angleDeg of each vane to the base's long axis; positive is toe-in, leading edges towards each other (common
     *     flow down); negative is toe-out (common flow up)
     * @param gapMm between the mid-length points of the two vanes, across the base
     */
    public record Pair(@Nullable Double angleDeg, @Nullable Double gapMm) {}

    /**
     * @param outline shape seen from above
     * @param lengthMm along x
     * @param widthMm along y
     * @param thicknessMm at the thinnest place under the vane
     * @param cornerRadiusMm for {@link BaseOutline#ROUNDED_RECTANGLE}
     * @param edgeBevelMm 45-degree bevel round the upper edge; 0 is none
     * @param trailingEdgeInsetMm from the base's rear end to the vane's trailing edge; 0 means both end in one plane, so
     *     that the piece stands on its trailing edge while it prints (single vanes only); the base's rear end is then
     *     cut square over its full width, without corner radius, ellipse or bevel
     * @param undersideRadiusMm radius of the skin the base sits on, axis across the base; absent is flat; negative
     *     where the skin is hollow
     */
    public record Base(
            @Nullable BaseOutline outline,
            @Nullable Double lengthMm,
            @Nullable Double widthMm,
            @Nullable Double thicknessMm,
            @Nullable Double cornerRadiusMm,
            @Nullable Double edgeBevelMm,
            @Nullable Double trailingEdgeInsetMm,
            @Nullable Double undersideRadiusMm) {}
}
