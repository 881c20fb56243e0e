package org.vanewright.engineering.tuft;

/**
 * A tuft as a person marked it on the first frame, in pixels.
 *
 * @param rootX where it is stuck down
 * @param rootY likewise
 * @param tipX where its free end lies in attached flow
 * @param tipY likewise
 */
public record TuftMark(double rootX, double rootY, double tipX, double tipY) {
    /** The same on a frame of another scale. */
    public TuftMark scaled(double factor) {
        // Pixel centres stand at whole numbers, so that the frame itself begins half a pixel before the first.
        return new TuftMark(
                (rootX + 0.5) * factor - 0.5,
                (rootY + 0.5) * factor - 0.5,
                (tipX + 0.5) * factor - 0.5,
                (tipY + 0.5) * factor - 0.5);
    }

    public double lengthPx() {
        return Math.hypot(tipX - rootX, tipY - rootY);
    }

    /** How far a place lies from the straight tuft. */
    double distancePx(double x, double y) {
        double length = lengthPx();
        double along = ((x - rootX) * (tipX - rootX) + (y - rootY) * (tipY - rootY)) / (length * length);
        double at = Math.max(0, Math.min(1, along));
        return Math.hypot(x - rootX - at * (tipX - rootX), y - rootY - at * (tipY - rootY));
    }

    /** How far a place lies downstream of the root, along the tuft as it was marked. */
    double downstreamPx(double x, double y) {
        return ((x - rootX) * (tipX - rootX) + (y - rootY) * (tipY - rootY)) / lengthPx();
    }
}
