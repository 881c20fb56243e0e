package org.vanewright.engineering.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;

/** Volumes against closed forms of elementary solid geometry. */
class SolidVolumeTest {
    @Test
    void aPlainVaneOnAPlainBaseIsTwoBoxes() {
        for (Double inset : new Double[] {null, 0.0, 2.5}) {
            DesignBuilder design = new DesignBuilder();
            design.inset = inset;
            double boxes = 8 * 20 * 1.2 + 30 * 16 * 1;
            assertThat(volume(design)).isCloseTo(boxes, withinPercentage(1e-7));
        }
    }

    private static double volume(DesignBuilder design) {
        return MassProperties.of(SolidBuilder.build(design.build()), 1040).volumeMm3();
    }
}
