package org.vanewright.engineering.flow;

/** How the speed of the outer flow answers displaced flow that is known on a grid; made once for a section. */
final class OuterResponse {
    final DisplacementGrid grid;
    /** Vorticity at every end for each place of the grid. */
    private final double[][] everywhere;
    /** The same the other way about, for sums over the places that the processor can run side by side. */
    private final double[][] byPlace;

    OuterResponse(PotentialFlow flow) {
        grid = new DisplacementGrid(flow.geometry().arc);
        everywhere = flow.responses(grid);
        byPlace = new double[grid.arc().length][everywhere.length];
        for (int i = 0; i < everywhere.length; i++) {
            for (int k = 0; k < byPlace.length; k++) {
                byPlace[k][i] = everywhere[i][k];
            }
        }
    }

    /** Vorticity at every end in answer to displaced flow on the grid. */
    double[] to(double[] displaced) {
        double[] answer = new double[everywhere.length];
        int k = 0;
        for (; k + 3 < displaced.length; k += 4) {
            add(answer, k, displaced[k], displaced[k + 1], displaced[k + 2], displaced[k + 3]);
        }
        for (; k < displaced.length; k++) {
            double[] one = byPlace[k];
            double factor = displaced[k];
            for (int i = 0; i < answer.length; i++) {
                answer[i] += factor * one[i];
            }
        }
        return answer;
    }

    private void add(double[] answer, int k, double f0, double f1, double f2, double f3) {
        double[] a0 = byPlace[k];
        double[] a1 = byPlace[k + 1];
        double[] a2 = byPlace[k + 2];
        double[] a3 = byPlace[k + 3];
        for (int i = 0; i < answer.length; i++) {
            answer[i] += f0 * a0[i] + f1 * a1[i] + f2 * a2[i] + f3 * a3[i];
        }
    }

    /** The answer at one panel end to each place of the grid. */
    double[] atEnd(int end) {
        return everywhere[end];
    }
}
