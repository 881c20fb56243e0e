package org.vanewright.bench.web.page;

import static org.vanewright.bench.web.page.Shown.digits;
import static org.vanewright.bench.web.page.Shown.fixed;

import java.util.List;
import java.util.Map;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import org.vanewright.bench.VaneCalculation;
import org.vanewright.bench.VaneRequest;
import org.vanewright.bench.VaneResult;
import org.vanewright.engineering.input.Checks;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.page.Units;

/** The circulation behind one vane. */
@Component
@Order(6)
class VaneCalculator implements Calculator {
    private static final double FASTEST_KT = 580;

    @Override
    public String name() {
        return "vane";
    }

    @Override
    public String title() {
        return "Vane";
    }

    @Override
    public String about() {
        return "How strong a vortex one vane sheds into the boundary layer it stands in, by a fit to wind-tunnel"
                + " measurements of aerofoil-shaped vanes. For printed plates it is an estimate.";
    }

    @Override
    public List<Field> fields() {
        return List.of(
                Field.number("heightMm", "Height", "mm", null),
                Field.number("lengthMm", "Length at the root", "mm", null),
                Field.number("angleDeg", "Angle to the local flow", "°", null),
                Field.number(
                        "edgeSpeedKt",
                        "Speed outside the boundary layer",
                        "kt",
                        "Where the vane stands: the flow calculator gives its ratio to true airspeed."),
                Field.number("boundaryLayerThicknessMm", "Boundary-layer thickness", "mm", "To 99 % of that speed."));
    }

    @Override
    public Map<String, String> example() {
        return Map.of(
                "heightMm", "8",
                "lengthMm", "20",
                "angleDeg", "15",
                "edgeSpeedKt", "62",
                "boundaryLayerThicknessMm", "6");
    }

    @Override
    public Answer answer(Form form, Units units) {
        Double speed = form.number("edgeSpeedKt");
        Checks checks = new Checks();
        checks.range("edgeSpeedKt", speed, 0, FASTEST_KT, "kt");
        form.refuse(checks.problems());
        VaneResult vane = VaneCalculation.run(new VaneRequest(
                form.number("heightMm"),
                form.number("lengthMm"),
                form.number("angleDeg"),
                speed == null || form.hasProblems() ? (Double) 0.0 : (Double) (speed * Shown.MPS_PER_KNOT),
                form.number("boundaryLayerThicknessMm")));
        return Answer.of(
                List.of(
                        new Figure("Circulation", digits(vane.circulationM2S(), 3, "m²/s")),
                        new Figure("Height over boundary-layer thickness", fixed(vane.heightToThickness(), 2)),
                        new Figure("Aspect ratio", fixed(vane.aspectRatio(), 2))),
                vane.method(),
                vane.sources(),
                vane.validity());
    }
}
