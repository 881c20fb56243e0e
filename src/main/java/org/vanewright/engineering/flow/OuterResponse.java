package org.vanewright.engineering.flow;

/** How the speed of the outer flow answers displaced flow that is known on a grid; made once for a section. */
final class OuterResponse {
    final DisplacementGrid grid;
    /** Vorticity at every end for each place of the grid. */
    private final double[][] everywhere;

    OuterResponse(PotentialFlow flow) {
        grid = new DisplacementGrid(flow.geometry().arc);
        everywhere = flow.responses(grid);
    }

    /** Vorticity at every end in answer to displaced flow on the grid. */
    double[] to(double[] displaced) {
        double[] answer = new double[everywhere.length];
        for (int i = 0; i < answer.length; i++) {
            answer[i] = DenseFactorisation.dot(everywhere[i], displaced, 0, displaced.length);
        }
        return answer;
    }

    /** The answer at one panel end to each place of the grid. */
    double[] atEnd(int end) {
        return everywhere[end];
    }
}
