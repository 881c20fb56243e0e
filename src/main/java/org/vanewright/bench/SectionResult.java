package org.vanewright.bench;

import java.util.List;

/**
 * Places on the skin of a section, lengths in chords.
 *
 * @param upper in the order asked for
 * @param lower in the order asked for
 * @param maximumThickness largest distance between the sides
 * @param maximumCamber largest height of the mean line
 * @param leadingEdgeRadius radius of curvature at the leading edge
 * @param method how it was computed
 * @param sources citations
 * @param validity warnings; empty inside the method's range
 */
public record SectionResult(
        List<Place> upper,
        List<Place> lower,
        double maximumThickness,
        double maximumCamber,
        double leadingEdgeRadius,
        String method,
        List<String> sources,
        List<String> validity) {
    /** @param arcLength along the skin from the leading edge */
    public record Place(double x, double y, double arcLength) {}
}
