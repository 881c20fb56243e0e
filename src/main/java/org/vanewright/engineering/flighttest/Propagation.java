package org.vanewright.engineering.flighttest;

import java.util.function.DoubleUnaryOperator;

/**
 * Propagation by steps of the reduction itself, where derivatives would only write it out again:
 *
 * <pre>
 * u_i(y) = ½ |f(x_i + u(x_i)) − f(x_i − u(x_i))|
 * </pre>
 *
 * JCGM 100:2008, 5.1.3, note 2.
 */
final class Propagation {
    private Propagation() {}

    /**
     * @param of the figure as it depends on one input
     * @param at the input
     * @param uncertainty its standard uncertainty
     */
    static double step(DoubleUnaryOperator of, double at, double uncertainty) {
        return uncertainty == 0
                ? 0
                : Math.abs(of.applyAsDouble(at + uncertainty) - of.applyAsDouble(at - uncertainty)) / 2;
    }
}
