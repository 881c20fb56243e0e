package org.vanewright.engineering.flow;

import org.vanewright.engineering.section.SurfaceSide;

/**
 * How the flow that a turbulent layer displaces follows a small change of the outer flow: the layer's equations
 * ({@link TurbulentLayer}) linearised about it, by the implicit midpoint rule from station to station. Laminar layer
 * and transition stay as they are.
 */
final class LayerAnswer {
    private final Layer layer;
    private final StagnationPoint stagnation;
    private final SurfaceSide side;
    private final double[] vorticity;
    private final OuterResponse outer;
    private final int[] places;
    /** How many of them come before those that are laminar; the others come behind. */
    private final int gap;
    /** Change of ln θ and of H₁ for each of the places, at the station reached. */
    private final double[] momentum;

    private final double[] shape;
    /** Change of ln U there and one station before. */
    private double[] speed;

    private double[] speedBefore;
    /** dH/dH₁ there and one station before. */
    private double turnHere;

    private double turnBefore;

    /** @param places of the grid whose displaced flow changes: one row of neighbours or two */
    LayerAnswer(CoupledFlow flow, SurfaceSide side, OuterResponse outer, int[] places) {
        this.side = side;
        this.outer = outer;
        this.places = places;
        layer = side == SurfaceSide.UPPER ? flow.upper() : flow.lower();
        stagnation = flow.stagnation();
        vorticity = flow.outer().vorticity();
        momentum = new double[places.length];
        shape = new double[places.length];
        speed = new double[places.length];
        speedBefore = new double[places.length];
        int row = 1;
        while (row < places.length && places[row] == places[row - 1] + 1) {
            row++;
        }
        gap = Math.min(row, places.length);
    }

    /** @param rows a row for each panel end, to be filled where the layer is turbulent and the end is wanted */
    void into(double[][] rows) {
        int station = 1;
        while (station <= layer.last() && layer.regime[station] == Regime.LAMINAR) {
            station++;
        }
        boolean started = false;
        for (; station <= layer.last(); station++) {
            answerOfOuterFlow(station);
            turnBefore = turnHere;
            turnHere = HeadClosure.shapeByEntrainment(layer.shape[station]);
            if (started) {
                if (layer.regime[station] == Regime.TURBULENT) {
                    follow(station);
                } else {
                    followSeparated(station);
                }
            }
            started = true;
            double[] row = rows[EdgeFlow.end(stagnation, side, station)];
            if (row != null) {
                displace(station, row);
            }
        }
    }

    private void answerOfOuterFlow(int station) {
        double[] before = speedBefore;
        speedBefore = speed;
        speed = before;
        int end = EdgeFlow.end(stagnation, side, station);
        double[] answer = outer.atEnd(end);
        double perSpeed = 1 / vorticity[end];
        copy(answer, perSpeed, 0, gap);
        copy(answer, perSpeed, gap, places.length);
    }

    /** Of places in a row. */
    private void copy(double[] answer, double factor, int from, int to) {
        int ahead = from < to ? places[from] - from : 0;
        for (int j = from; j < to; j++) {
            speed[j] = answer[j + ahead] * factor;
        }
    }

    private void follow(int i) {
        EdgeFlow edge = layer.edge;
        double theta = Math.sqrt(layer.momentum[i - 1] * layer.momentum[i]);
        double excess = 0.5 * (layer.excess[i - 1] + layer.excess[i]);
        double h = 0.5 * (layer.shape[i - 1] + layer.shape[i]);
        double step = (edge.s[i] - edge.s[i - 1]) / theta;
        double rise = 2 * (edge.speed[i] - edge.speed[i - 1]) / (edge.speed[i] + edge.speed[i - 1]);
        double friction = 0.25 * (layer.friction[i - 1] + layer.friction[i]) * step;
        double drawn = HeadClosure.entrainment(excess) * step;
        double turn = 0.5 * (turnBefore + turnHere);
        double growth = friction - (h + 2) * rise;
        // change of the growth of ln θ by ln θ, H₁, mean ln U and difference of ln U; then that of H₁
        double tt = -1.268 * friction;
        double th = -turn * (0.678 * Math.log(10) * friction + rise);
        double tu = -0.268 * friction;
        double td = -(h + 2);
        double ht = -drawn - excess * tt;
        double hh = -0.6169 * drawn / (excess - 3) - (growth + rise) - excess * th;
        double hu = -excess * tu;
        double hd = -excess * (td + 1);
        // (1 − A/2) mean = before + half of what the speed does
        double a = 1 - 0.5 * tt;
        double b = -0.5 * th;
        double c = -0.5 * ht;
        double d = 1 - 0.5 * hh;
        double det = 1 / (a * d - b * c);
        double m11 = 2 * d * det - 1;
        double m12 = -2 * b * det;
        double m21 = -2 * c * det;
        double m22 = 2 * a * det - 1;
        double u1 = (d * tu - b * hu) * det;
        double u2 = (a * hu - c * tu) * det;
        double d1 = (d * td - b * hd) * det;
        double d2 = (a * hd - c * td) * det;
        double now1 = 0.5 * u1 + d1;
        double old1 = 0.5 * u1 - d1;
        double now2 = 0.5 * u2 + d2;
        double old2 = 0.5 * u2 - d2;
        for (int j = 0; j < momentum.length; j++) {
            double t = momentum[j];
            double s = shape[j];
            momentum[j] = m11 * t + m12 * s + now1 * speed[j] + old1 * speedBefore[j];
            shape[j] = m21 * t + m22 * s + now2 * speed[j] + old2 * speedBefore[j];
        }
    }

    private void followSeparated(int i) {
        double exponent = layer.momentum[i] == layer.momentum[i - 1] ? 0 : HeadClosure.SEPARATION + 2;
        for (int j = 0; j < momentum.length; j++) {
            momentum[j] -= exponent * (speed[j] - speedBefore[j]);
            shape[j] = 0;
        }
    }

    private void displace(int i, double[] row) {
        double h = layer.shape[i];
        double flow = Math.max(0, layer.edge.speed[i]) * layer.momentum[i];
        double signed = side == SurfaceSide.UPPER ? -flow : flow;
        double byShape = signed * turnHere;
        double whole = signed * h;
        for (int j = 0; j < row.length; j++) {
            row[j] = whole * (speed[j] + momentum[j]) + byShape * shape[j];
        }
    }
}
