package org.vanewright.engineering.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.engineering.solid.DeviceDesign.BaseOutline;
import org.vanewright.engineering.solid.DeviceDesign.EdgeTreatment;
import org.vanewright.engineering.solid.DeviceDesign.Pair;
import org.vanewright.engineering.solid.DeviceDesign.Planform;

/** Impossible designs, each with the field and the bound that refuse it; the bounds follow from the plain piece. */
class DesignRulesTest {
    static Stream<Arguments> refused() {
        return Stream.of(
                arguments("no height", "vane.heightMm", "0.5 mm to 60 mm", d -> d.height = null),
                arguments("zero height", "vane.heightMm", "0.5 mm to 60 mm", d -> d.height = 0.0),
                arguments("negative length", "vane.lengthMm", "2 mm to 200 mm", d -> d.length = -20.0),
                arguments("no number", "vane.thicknessMm", "0.4 mm to 10 mm", d -> d.thickness = Double.NaN),
                arguments("huge", "base.lengthMm", "2 mm to 250 mm", d -> d.baseLength = 1e300),
                arguments("endless", "base.widthMm", "2 mm to 150 mm", d -> d.baseWidth = Double.POSITIVE_INFINITY),
                arguments("too coarse", "chordToleranceMm", "0.002 mm to 0.5 mm", d -> d.tolerance = 0.6),
                arguments("too fine", "chordToleranceMm", "0.002 mm to 0.5 mm", d -> d.tolerance = 0.0019),
                arguments("vane longer than base", "vane.lengthMm", "at most 29.8 mm", d -> d.length = 30.0),
                arguments("vane much longer", "vane.lengthMm", "at most 29.8 mm", d -> d.length = 100.0),
                arguments("thicker than high", "vane.thicknessMm", "at most the height", d -> d.height = 1.0),
                arguments("fillet over base", "vane.filletRadiusMm", "at most 7.19 mm", d -> d.fillet = 7.25),
                arguments("fillet over height", "vane.filletRadiusMm", "at most 7.8 mm", d -> d.fillet = 7.9),
                arguments("foot narrower than vane", "vane.footWidthMm", "at least", d -> d.footWidth = 1.0),
                arguments("foot wider than base", "base.widthMm", "at least 17.4 mm", d -> d.footWidth = 17.0),
                arguments("foot longer than vane", "vane.footWidthMm", "room for", d -> {
                    d.footWidth = 15.0;
                    d.footAngle = 15.0;
                }),
                arguments("foot away from the plate", "vane.footWidthMm", "no foot", d -> {
                    d.footWidth = 4.0;
                    d.inset = 4.0;
                }),
                arguments("flush but rounded", "vane.trailingEdge", "SQUARE", d -> {
                    d.trailing = EdgeTreatment.ROUNDED;
                    d.inset = 0.0;
                }),
                arguments("vane off the rear", "base.trailingEdgeInsetMm", "at least 0.2 mm", d -> d.inset = 0.1),
                arguments("inset pushes vane off the front", "vane.lengthMm", "at most 17.8", d -> d.inset = 12.0),
                arguments("ogive steeper than round", "vane.heightMm", "at most 19.6 mm", d -> {
                    d.planform = Planform.OGIVAL;
                    d.height = 20.0;
                }),
                arguments("tip longer than root", "vane.tipLengthMm", "the root's length, 20 mm", d -> {
                    d.planform = Planform.SWEPT_TRAPEZIUM;
                    d.tipLength = 21.0;
                }),
                arguments("tip radius over height", "vane.tipRadiusMm", "at most 7.99 mm", d -> d.tipRadius = 9.0),
                arguments("rounded point", "vane.tipRadiusMm", "0 mm", d -> {
                    d.planform = Planform.TRIANGULAR;
                    d.tipRadius = 1.0;
                }),
                arguments("bevel over thickness", "base.edgeBevelMm", "at most 0.8 mm", d -> d.bevel = 1.0),
                arguments("bevel over corner", "base.edgeBevelMm", "radius of curvature", d -> {
                    d.bevel = 0.7;
                    d.corner = 0.6;
                }),
                arguments("corner over width", "base.cornerRadiusMm", "8 mm", d -> d.corner = 8.5),
                arguments("corner too small to print", "base.cornerRadiusMm", "0.1 mm", d -> d.corner = 0.01),
                arguments("skin too tightly curved", "base.undersideRadiusMm", "30 mm", d -> d.underside = 29.0),
                arguments("hollow too tight", "base.undersideRadiusMm", "30 mm", d -> d.underside = -16.0),
                arguments("no curve at all", "base.undersideRadiusMm", "absent for flat", d -> d.underside = 0.0),
                arguments("pair flush", "base.trailingEdgeInsetMm", "more than 0 mm", d -> {
                    d.pair = new Pair(10.0, 8.0);
                    d.inset = 0.0;
                }),
                arguments("pair collides", "pair.gapMm", "apart", d -> d.pair = new Pair(15.0, 4.0)),
                arguments("pair leaves the base", "pair.gapMm", "at most", d -> d.pair = new Pair(15.0, 12.0)),
                arguments("pair without a gap", "pair.gapMm", "0.5 mm", d -> d.pair = new Pair(15.0, null)),
                arguments("no room for the mark", "indexMark", "false", d -> {
                    d.mark = true;
                    d.length = 29.0;
                }),
                arguments("vane on a narrow ellipse", "vane.lengthMm", "at most", d -> {
                    d.outline = BaseOutline.ELLIPSE_ENDED;
                    d.length = 29.8;
                }));
    }

    private static Arguments arguments(String name, String field, String bound, Consumer<DesignBuilder> change) {
        return Arguments.of(name, field, bound, change);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("refused")
    void impossibleDesignsNameTheFieldAndTheBound(
            String name, String field, String bound, Consumer<DesignBuilder> change) {
        DesignBuilder builder = new DesignBuilder();
        change.accept(builder);
        DeviceDesign design = builder.build();
        List<FieldProblem> problems = DesignRules.check(design);
        assertThat(problems).as(name).hasSize(1);
        assertThat(problems.get(0).field()).isEqualTo(field);
        assertThat(problems.get(0).allowed()).contains(bound);
        assertThatExceptionOfType(InvalidInputException.class)
                .isThrownBy(() -> SolidBuilder.build(design))
                .satisfies(e -> assertThat(e.problems()).isEqualTo(problems));
    }

    @Test
    void theBoundNamedIsItselfAllowed() {
        assertThat(DesignRules.check(changed(d -> d.length = 29.8))).isEmpty();
        assertThat(DesignRules.check(changed(d -> d.fillet = 7.19))).isEmpty();
        assertThat(DesignRules.check(changed(d -> d.tipRadius = 7.99))).isEmpty();
        assertThat(DesignRules.check(changed(d -> d.underside = 30.0))).isEmpty();
        assertThat(DesignRules.check(changed(d -> d.inset = 0.2))).isEmpty();
    }

    @Test
    void allMissingPartsAreReportedAtOnce() {
        assertThat(DesignRules.check(new DeviceDesign(null, null, null, null, null)))
                .extracting(FieldProblem::field)
                .containsExactly("vane", "base");
    }

    @Test
    void absentValuesTakeTheirDefaults() {
        DesignBuilder builder = new DesignBuilder();
        builder.planform = null;
        builder.mark = null;
        DeviceDesign full = DesignRules.withDefaults(builder.build());
        assertThat(full)
                .isEqualTo(new DeviceDesign(
                        new DeviceDesign.Vane(
                                Planform.RECTANGULAR,
                                8.0,
                                20.0,
                                1.2,
                                10.0,
                                EdgeTreatment.SQUARE,
                                EdgeTreatment.SQUARE,
                                0.0,
                                0.0,
                                30.0,
                                1.2),
                        null,
                        new DeviceDesign.Base(BaseOutline.ROUNDED_RECTANGLE, 30.0, 16.0, 1.0, 0.0, 0.0, 0.0, null),
                        true,
                        0.02));
        assertThat(DesignRules.withDefaults(full)).isEqualTo(full);
    }

    @Test
    void aPairStandsClearOfTheRearByDefault() {
        DeviceDesign full = DesignRules.withDefaults(changed(d -> {
            d.pair = new Pair(null, 10.0);
            d.baseWidth = 30.0;
            d.corner = 6.0;
        }));
        assertThat(DesignRules.check(full)).isEmpty();
        assertThat(full.pair()).isEqualTo(new Pair(15.0, 10.0));
    }

    private static DeviceDesign changed(Consumer<DesignBuilder> change) {
        DesignBuilder builder = new DesignBuilder();
        change.accept(builder);
        return builder.build();
    }
}
