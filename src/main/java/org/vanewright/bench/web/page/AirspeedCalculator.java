package org.vanewright.bench.web.page;

import static org.vanewright.bench.web.page.Shown.digits;
import static org.vanewright.bench.web.page.Shown.fixed;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import org.vanewright.bench.AirspeedCalculation;
import org.vanewright.bench.AirspeedRequest;
import org.vanewright.bench.AirspeedResult;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.page.Units;

/** Calibrated, equivalent and true airspeed. */
@Component
@Order(4)
class AirspeedCalculator implements Calculator {
    private static final List<String> SPEEDS = List.of("calibratedAirspeedKt", "trueAirspeedKt", "impactPressurePa");
    private static final double PA_PER_LB_FT2 = 0.45359237 * 9.80665 / (0.3048 * 0.3048);

    @Override
    public String name() {
        return "airspeed";
    }

    @Override
    public String title() {
        return "Airspeed";
    }

    @Override
    public String about() {
        return "Calibrated, equivalent and true airspeed, Mach number and impact pressure from any one of calibrated, true"
                + " and impact pressure. Position error of the instrument comes first and is not in here.";
    }

    @Override
    public List<Field> fields() {
        return List.of(
                AtmosphereCalculator.ALTITUDE,
                AtmosphereCalculator.TEMPERATURE,
                Field.number(
                        "calibratedAirspeedKt",
                        "Calibrated airspeed",
                        "kt",
                        "Fill in this, true airspeed or impact pressure, only one of them."),
                Field.number("trueAirspeedKt", "True airspeed", "kt", "Or this."),
                Field.number("impactPressurePa", "Impact pressure", "Pa", "Or this: total less static pressure."));
    }

    @Override
    public Map<String, String> example() {
        return Map.of("pressureAltitudeFt", "3000", "outsideAirTemperatureC", "25", "calibratedAirspeedKt", "60");
    }

    @Override
    public Answer answer(Form form, Units units) {
        refuseUnlessOne(form);
        AirspeedResult speeds = AirspeedCalculation.run(new AirspeedRequest(
                form.number("pressureAltitudeFt"),
                form.number("outsideAirTemperatureC"),
                form.number("calibratedAirspeedKt"),
                form.number("impactPressurePa"),
                form.number("trueAirspeedKt")));
        String pressure = units.metric()
                ? digits(speeds.impactPressurePa(), 4, "Pa")
                : digits(speeds.impactPressurePa() / PA_PER_LB_FT2, 4, "lb/ft²");
        return Answer.of(
                List.of(
                        new Figure("Calibrated airspeed", fixed(speeds.calibratedAirspeedKt(), 1, "kt")),
                        new Figure("Equivalent airspeed", fixed(speeds.equivalentAirspeedKt(), 1, "kt")),
                        new Figure("True airspeed", fixed(speeds.trueAirspeedKt(), 1, "kt")),
                        new Figure("Mach number", fixed(speeds.mach(), 3)),
                        new Figure("Impact pressure", pressure)),
                speeds.method(),
                speeds.sources(),
                speeds.validity());
    }

    /** The calculation names its fields; a person knows them by their labels. */
    private static void refuseUnlessOne(Form form) {
        List<String> given = SPEEDS.stream().filter(s -> form.text(s) != null).toList();
        if (given.isEmpty()) {
            form.refuse(new FieldProblem(SPEEDS.get(0), "missing", "filled in here, or one of the other two"));
        }
        Stream<String> more = given.stream().skip(1);
        more.forEach(
                s -> form.refuse(new FieldProblem(s, form.value(s), "left empty: only one of the three can be given")));
    }
}
