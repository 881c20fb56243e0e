package org.vanewright.bond;

import java.util.List;
import java.util.Optional;
import org.vanewright.engineering.bond.BondMode;

/**
 * One load on the bond of a device.
 *
 * @param kind what loads it
 * @param forceN on the whole device
 * @param heightMm where it acts above the underside of the base
 * @param ways sideways, then along the base
 */
public record BondCase(Kind kind, double forceN, double heightMm, List<BondWay> ways) {
    /** What loads a bond. */
    public enum Kind {
        AIR("the air"),
        KNOCK("a knock");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /** The weakest mode of this case and how it comes about; empty where no strength is stated. */
    public Optional<Weakest> weakest() {
        Weakest found = null;
        for (BondWay way : ways) {
            BondMode mode = way.margins().weakest().orElse(null);
            Double margin = mode == null ? null : way.margins().of(mode);
            if (mode != null && margin != null && (found == null || margin < found.margin())) {
                found = new Weakest(kind, way.direction(), mode, margin);
            }
        }
        return Optional.ofNullable(found);
    }

    /** Largest tension of both ways. */
    double peakTensionPa() {
        return ways.stream().mapToDouble(w -> w.stress().peakTensionPa()).max().orElse(0);
    }
}
