package org.vanewright.engineering.flow;

import java.util.concurrent.ForkJoinTask;

/** How the speed of the outer flow answers displaced flow that is known on a grid; made once for a section. */
final class OuterResponse {
    final DisplacementGrid grid;
    /** Vorticity at every end for each place of the grid. */
    private final double[][] everywhere;
    /** The same the other way about, for sums over the places that the processor can run side by side. */
    private final double[][] byPlace;

    /** @param shared whether a second thread may help; the result is the same */
    OuterResponse(PotentialFlow flow, boolean shared) {
        grid = new DisplacementGrid(flow.geometry().arc);
        int places = grid.arc().length;
        everywhere = new double[flow.geometry().ends()][places];
        byPlace = new double[places][everywhere.length];
        ForkJoinTask<?> rear = ForkJoinTask.adapt(() -> fill(flow, places / 2, places));
        if (shared) {
            rear.fork();
        }
        fill(flow, 0, places / 2);
        if (shared) {
            rear.join();
        } else {
            rear.invoke();
        }
    }

    private void fill(PotentialFlow flow, int from, int to) {
        double[][] some = flow.responses(grid, from, to);
        for (int i = 0; i < everywhere.length; i++) {
            System.arraycopy(some[i], 0, everywhere[i], from, to - from);
            for (int k = from; k < to; k++) {
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
