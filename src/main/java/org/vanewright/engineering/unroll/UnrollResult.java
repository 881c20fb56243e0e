package org.vanewright.engineering.unroll;

import java.util.List;
import org.vanewright.engineering.geometry.Point2;

/**
 * Places on the flat sheet.
 *
 * @param points mm, in the order asked for, in the frame of {@link FlatSkin}
 * @param maximumStrain largest |flat length / true length − 1| on the whole sheet; 0 where the skin is developable
 * @param method how it was computed
 * @param sources citations
 * @param validity warnings; empty inside the method's range
 */
public record UnrollResult(
        List<Point2> points, double maximumStrain, String method, List<String> sources, List<String> validity) {}
