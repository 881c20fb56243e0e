package org.vanewright.engineering.wing;

import java.util.List;

/**
 * One half of a lifting surface, from the root outward; the other half mirrors it.
 *
 * @param panels from the root outward, each beginning where the one before ends
 * @param keepOuts where no device may sit
 */
public record WingShape(List<WingPanel> panels, List<KeepOut> keepOuts) {
    public WingShape {
        panels = List.copyOf(panels);
        keepOuts = List.copyOf(keepOuts);
        if (panels.isEmpty()) {
            throw new IllegalArgumentException("a wing needs a panel");
        }
    }

    public double innerStationMm() {
        return panels.get(0).innerStationMm();
    }

    public double outerStationMm() {
        return panels.get(panels.size() - 1).outerStationMm();
    }

    /** Index of the panel that holds the station; at a joint the inner one; clamped to the first and last panel. */
    public int panelIndex(double stationMm) {
        for (int i = 0; i < panels.size() - 1; i++) {
            if (stationMm <= panels.get(i).outerStationMm()) {
                return i;
            }
        }
        return panels.size() - 1;
    }
}
