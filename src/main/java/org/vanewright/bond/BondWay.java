package org.vanewright.bond;

import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.bond.BondMargins;
import org.vanewright.engineering.bond.BondStress;

/**
 * A base tipped one way.
 *
 * @param direction which way
 * @param betaAcross β b of the base across its vanes; null along them, where the vane is a rib and the base counts as rigid
 * @param bends whether the base bends, so that the stress is the larger of both ways to look at it
 * @param stress asked of the bond
 * @param margins strength left over it
 */
public record BondWay(
        Direction direction, @Nullable Double betaAcross, boolean bends, BondStress stress, BondMargins margins) {
    /** Which way a base is tipped. */
    public enum Direction {
        ACROSS("sideways"),
        ALONG("along the vane");

        private final String words;

        Direction(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }
}
