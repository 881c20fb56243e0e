package org.vanewright.airframe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.engineering.section.SectionSpec;
import org.vanewright.engineering.wing.WingPanel;

class SurfacesTest {
    private static final SectionSpec NACA_4412 = SectionSpec.naca("4412");

    private static SurfaceDocument wing(SurfaceDocument.Kind kind, PanelDocument... panels) {
        return new SurfaceDocument("Wing", kind, List.of(panels), List.of());
    }

    @Test
    void panelsKeepTheirNumbersAndAbsentOnesFollowTheInnerEnd() {
        SurfaceDocument surface = wing(
                SurfaceDocument.Kind.WING,
                new PanelDocument(400.0, 1400.0, 1500.0, 1500.0, 30.0, null, NACA_4412, null, null),
                new PanelDocument(
                        1400.0, 4000.0, 1500.0, 900.0, 30.0, 180.0, NACA_4412, SectionSpec.naca("4409"), -2.0));
        List<WingPanel> panels = Surfaces.toWing(surface);
        assertThat(panels).hasSize(2);
        assertThat(panels.get(0).outerLeadingEdgeMm()).isEqualTo(30);
        assertThat(panels.get(0).twistDeg()).isZero();
        assertThat(panels.get(0).developable()).isTrue();
        assertThat(panels.get(1).outerSection().designation()).contains("4409");
        assertThat(panels.get(1).developable()).isFalse();
        assertThat(panels.get(1).chordMm(2700)).isCloseTo(1200, within(1e-9));
    }

    @Test
    void areaCountsBothWingsButOneFin() {
        PanelDocument panel = new PanelDocument(0.0, 2000.0, 1200.0, 800.0, 0.0, 0.0, NACA_4412, null, null);
        assertThat(Surfaces.areaM2(wing(SurfaceDocument.Kind.WING, panel))).isCloseTo(4.0, within(1e-12));
        assertThat(Surfaces.areaM2(wing(SurfaceDocument.Kind.FIN, panel))).isCloseTo(2.0, within(1e-12));
    }

    @Test
    void aMissingNumberIsNamed() {
        SurfaceDocument surface = wing(
                SurfaceDocument.Kind.WING,
                new PanelDocument(0.0, 2000.0, null, 800.0, 0.0, 0.0, NACA_4412, null, null));
        assertThatThrownBy(() -> Surfaces.toWing(surface))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageContaining("panels[0].innerChordMm");
    }

    @Test
    void aSurfaceIsFoundByItsNameInAnyCase() {
        SurfaceDocument surface = wing(SurfaceDocument.Kind.WING);
        AirframeDocument airframe =
                new AirframeDocument("A", null, OperatingBasis.OTHER, null, null, null, List.of(surface), false);
        assertThat(Surfaces.named(airframe, " WING ")).contains(surface);
        assertThat(Surfaces.named(airframe, "tail")).isEmpty();
    }
}
