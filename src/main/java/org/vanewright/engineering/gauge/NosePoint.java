package org.vanewright.engineering.gauge;

/**
 * A place on the outline of a wing in the plane of one section, mm.
 *
 * @param x rearward from the surface's datum
 * @param z up
 * @param tangentX of the direction in which s grows, unit length
 * @param tangentZ of that direction
 * @param normalX outward, unit length
 * @param normalZ outward
 * @param curvaturePerMm positive where the skin is convex outward
 */
record NosePoint(
        double x, double z, double tangentX, double tangentZ, double normalX, double normalZ, double curvaturePerMm) {}
