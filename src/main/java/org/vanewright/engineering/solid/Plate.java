package org.vanewright.engineering.solid;

import java.util.List;

/**
 * One build plate: copies of one piece, each standing on its trailing edge. Bed frame: origin at the front left corner,
 * x right, y to the back, z up, mm.
 *
 * @param number of this plate, from 1
 * @param plates how many there are
 * @param bedWidthMm along x
 * @param bedDepthMm along y
 * @param placements in print order
 */
public record Plate(int number, int plates, double bedWidthMm, double bedDepthMm, List<Placement> placements) {
    public Plate {
        placements = List.copyOf(placements);
    }

    /**
     * Where one copy stands: its device frame's origin on the bed, after the piece is turned to stand.
     *
     * @param order in which it prints, counted over all plates from 1
     */
    public record Placement(int order, double xMm, double yMm, double zMm) {
        /**
         * Device frame to bed frame as in 3MF Core: twelve numbers of a 4 × 3 matrix by rows, for row vectors. The
         * device's rearward axis points down, its y to the right, its upper side to the front.
         */
        public double[] transform() {
            return new double[] {0, 0, -1, 1, 0, 0, 0, -1, 0, xMm, yMm, zMm};
        }
    }
}
