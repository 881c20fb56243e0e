package planted.engineering.flow;

import planted.engineering.air.Pure;

/** The other half of the core's cycle. */
public class Neighbour {
    public double once(double[] values) {
        return new Pure(values[0]).value();
    }
}
