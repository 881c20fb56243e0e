package org.vanewright.engineering.solid;

import java.util.List;

/**
 * One build plate: copies of one piece, standing on their trailing edges or lying on their bases. Bed frame: origin at the front left corner,
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
     * Where one copy is: its device frame's origin on the bed, after the piece is turned.
     *
     * @param order in which it prints, counted over all plates from 1
     * @param standing on its trailing edge; otherwise it lies on its base
     */
    public record Placement(int order, double xMm, double yMm, double zMm, boolean standing) {
        /** One copy with a corner of its room at the origin. */
        public static Placement alone(Mesh mesh) {
            return BuildPlate.alone(mesh);
        }

        /**
         * Device frame to bed frame as in 3MF Core: twelve numbers of a 4 × 3 matrix by rows, for row vectors. Of a
         * standing piece the rearward axis points down, y to the right, the upper side to the front; a lying one is
         * not turned.
         */
        public double[] transform() {
            return standing
                    ? new double[] {0, 0, -1, 1, 0, 0, 0, -1, 0, xMm, yMm, zMm}
                    : new double[] {1, 0, 0, 0, 1, 0, 0, 0, 1, xMm, yMm, zMm};
        }

        /** The room it takes on the bed: least x and y, greatest x and y. */
        public double[] footprint(Mesh mesh) {
            return standing
                    ? new double[] {xMm + mesh.low(1), yMm - mesh.high(2), xMm + mesh.high(1), yMm - mesh.low(2)}
                    : new double[] {xMm + mesh.low(0), yMm + mesh.low(1), xMm + mesh.high(0), yMm + mesh.high(1)};
        }
    }
}
