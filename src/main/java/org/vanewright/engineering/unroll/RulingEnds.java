package org.vanewright.engineering.unroll;

/**
 * One ruling of a panel and how its ends move as the ruling steps rearward.
 *
 * @param inner end on the inner section, mm
 * @param outer end on the outer section, mm
 * @param innerRate d inner/du
 * @param outerRate d outer/du
 */
record RulingEnds(Vector3 inner, Vector3 outer, Vector3 innerRate, Vector3 outerRate) {
    double length() {
        return outer.minus(inner).norm();
    }

    Vector3 direction() {
        Vector3 ruling = outer.minus(inner);
        return ruling.times(1 / ruling.norm());
    }

    Vector3 point(double spanFraction) {
        return inner.towards(outer, spanFraction);
    }

    /** d point/du at a span fraction: the local section curve's direction, not normalised. */
    Vector3 rate(double spanFraction) {
        return innerRate.towards(outerRate, spanFraction);
    }

    /** Component of a rate along the ruling; its size on the sheet is the same. */
    double straight(double spanFraction) {
        return rate(spanFraction).dot(direction());
    }

    /** Size of the component of a rate square to the ruling, on the skin. */
    double square(double spanFraction) {
        return rate(spanFraction).cross(direction()).norm();
    }
}
