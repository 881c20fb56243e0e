package org.vanewright.bench;

import java.util.List;

/**
 * What one vane does.
 *
 * @param aspectRatio 8 h/(π l)
 * @param circulationM2S of the sign of the angle
 * @param heightToThickness h/δ
 * @param method how it was computed
 * @param sources citations
 * @param validity warnings
 */
public record VaneResult(
        double aspectRatio,
        double circulationM2S,
        double heightToThickness,
        String method,
        List<String> sources,
        List<String> validity) {}
