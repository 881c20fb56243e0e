package org.vanewright.bench;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A device's solid in numbers.
 *
 * @param volumeMm3 enclosed
 * @param areaMm2 of the surface
 * @param vertices of the mesh
 * @param triangles of the mesh
 * @param boundingBoxMm lowest x, y, z, then highest x, y, z, in the device frame
 * @param massG printed solid at the density given; null where none was
 * @param centreOfMassMm x, y, z of a uniform solid
 * @param method how it was computed
 * @param sources citations
 * @param validity warnings; empty inside the method's range
 */
public record SolidResult(
        double volumeMm3,
        double areaMm2,
        int vertices,
        int triangles,
        List<Double> boundingBoxMm,
        @Nullable Double massG,
        List<Double> centreOfMassMm,
        String method,
        List<String> sources,
        List<String> validity) {}
