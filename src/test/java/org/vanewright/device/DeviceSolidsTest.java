package org.vanewright.device;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.engineering.solid.DeviceDesign;
import org.vanewright.engineering.solid.DeviceDesign.Base;
import org.vanewright.engineering.solid.DeviceDesign.EdgeTreatment;
import org.vanewright.engineering.solid.DeviceDesign.Planform;
import org.vanewright.engineering.solid.DeviceDesign.Vane;
import org.vanewright.engineering.solid.Mesh;

class DeviceSolidsTest {
    private final DeviceSolids solids = new DeviceSolids();

    @Test
    void theSameDesignIsBuiltOnceWhetherOrNotItsDefaultsAreWrittenOut() {
        Mesh first = solids.exact(design(null, null));
        assertThat(solids.exact(design(0.02, null))).isSameAs(first);
        assertThat(solids.exact(design(0.01, null)).triangleCount()).isGreaterThan(first.triangleCount());
    }

    @Test
    void aPictureNeedsFewerTriangles() {
        DeviceDesign fine = design(0.005, null);
        assertThat(solids.forPicture(fine).triangleCount())
                .isLessThan(solids.exact(fine).triangleCount());
        DeviceDesign coarse = design(0.2, null);
        assertThat(solids.forPicture(coarse)).isSameAs(solids.exact(coarse));
    }

    @Test
    void aBaseOnACurvedSkinReachesDownAtItsEnds() {
        Mesh curved = solids.exact(DeviceSolids.on(design(null, null), 300.0));
        // sagitta of half the base's length, 14 mm, over a circle of 300 mm
        double sagitta = 300 - Math.sqrt(300.0 * 300 - 14.0 * 14);
        assertThat(curved.low(2)).isCloseTo(-sagitta, org.assertj.core.api.Assertions.within(1e-9));
        assertThat(solids.exact(DeviceSolids.on(design(null, 300.0), null))).isSameAs(curved);
    }

    @Test
    void anImpossibleDesignIsRefused() {
        DeviceDesign design = DeviceSolids.on(design(null, null), 3.0);
        assertThatExceptionOfType(InvalidInputException.class)
                .isThrownBy(() -> solids.exact(design))
                .withMessageContaining("base.undersideRadiusMm");
    }

    private static DeviceDesign design(@Nullable Double tolerance, @Nullable Double radius) {
        Vane vane =
                new Vane(Planform.RECTANGULAR, 8.0, 20.0, 1.2, null, EdgeTreatment.ROUNDED, null, 2.0, 0.6, null, null);
        return new DeviceDesign(vane, null, new Base(null, 28.0, 14.0, 1.0, 4.0, null, null, radius), null, tolerance);
    }
}
