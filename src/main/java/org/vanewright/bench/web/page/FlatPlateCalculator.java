package org.vanewright.bench.web.page;

import static org.vanewright.bench.web.page.Shown.digits;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import org.vanewright.engineering.flow.FlatPlate;
import org.vanewright.engineering.flow.FlatPlateRequest;
import org.vanewright.engineering.flow.FlatPlateRequest.PlateRegime;
import org.vanewright.engineering.flow.FlatPlateResult;
import org.vanewright.engineering.input.Checks;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.form.Option;
import org.vanewright.platform.page.Units;

/** The boundary layer on a flat plate, in knots and millimetres. */
@Component
@Order(5)
class FlatPlateCalculator implements Calculator {
    @Override
    public String name() {
        return "flat-plate";
    }

    @Override
    public String title() {
        return "Flat plate";
    }

    @Override
    public String about() {
        return "How thick the layer of slowed air is on a smooth flat plate. A first idea of the size of things: on a wing,"
                + " pressure changes along the chord and the layer with it.";
    }

    @Override
    public List<Field> fields() {
        return List.of(
                Field.number("speedKt", "True airspeed", "kt", null),
                Field.number("distanceMm", "Distance from the leading edge", "mm", null),
                Field.number(
                        "kinematicViscosityMm2S",
                        "Kinematic viscosity",
                        "mm²/s",
                        "Left empty, it is that of the standard atmosphere at sea level, 14.61."),
                Field.choice(
                        Field.Kind.RADIO,
                        "regime",
                        "Layer",
                        Option.of(PlateRegime.values(), FlatPlateCalculator::words)));
    }

    private static String words(PlateRegime regime) {
        return switch (regime) {
            case LAMINAR -> "Laminar";
            case TURBULENT -> "Turbulent from the leading edge";
        };
    }

    @Override
    public Map<String, String> example() {
        return Map.of("speedKt", "50", "distanceMm", "400", "regime", "TURBULENT");
    }

    @Override
    public Answer answer(Form form, Units units) {
        Double speed = form.number("speedKt");
        Double distance = form.number("distanceMm");
        Double viscosity = form.number("kinematicViscosityMm2S");
        Checks checks = new Checks();
        checks.range("speedKt", speed, 0.02, 660, "kt");
        checks.range("distanceMm", distance, 0.001, 1_000_000, "mm");
        checks.optionalRange("kinematicViscosityMm2S", viscosity, 0.01, 1_000_000, "mm²/s");
        PlateRegime regime = form.choice("regime", PlateRegime.class);
        checks.present("regime", regime, "laminar or turbulent");
        checks.throwIfAny();
        FlatPlateResult plate = FlatPlate.run(new FlatPlateRequest(
                scaled(speed, Shown.MPS_PER_KNOT),
                scaled(distance, 1 / Shown.MM_PER_M),
                scaled(viscosity, 1 / Shown.MM2_PER_M2),
                regime));
        return Answer.of(
                List.of(
                        new Figure("Thickness, to 99 % of the speed", digits(plate.thicknessMm(), 3, "mm")),
                        new Figure("Displacement thickness", digits(plate.displacementThicknessMm(), 3, "mm")),
                        new Figure("Momentum thickness", digits(plate.momentumThicknessMm(), 3, "mm")),
                        new Figure("Skin friction coefficient", digits(plate.skinFrictionCoefficient(), 3)),
                        new Figure("Reynolds number of the distance", digits(plate.reynolds(), 3))),
                plate.method(),
                plate.sources(),
                plate.validity());
    }

    private static @Nullable Double scaled(@Nullable Double value, double factor) {
        return value == null ? null : (Double) (value * factor);
    }
}
