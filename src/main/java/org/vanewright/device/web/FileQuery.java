package org.vanewright.device.web;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.vanewright.device.DeviceDocument;
import org.vanewright.device.DeviceService;
import org.vanewright.device.DeviceSolids;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.engineering.solid.DesignRules;
import org.vanewright.engineering.solid.DeviceDesign;
import org.vanewright.platform.form.Form;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;

/**
 * What the address of a file asks for.
 *
 * @param form every parameter as typed, with what cannot be read
 * @param revision the exact revision; absent asks for the latest
 * @param undersideRadiusMm radius of the skin under the base; absent leaves the design's own
 */
record FileQuery(
        Form form, @Nullable Integer revision, @Nullable Double undersideRadiusMm) {
    private static final Pattern NUMBER = Pattern.compile("[1-9][0-9]{0,5}");
    private static final double TIGHTEST_MM = 2;
    private static final double FLATTEST_MM = 1e6;

    static FileQuery of(HttpServletRequest request) {
        Form form = Form.posted(request.getParameterMap());
        String typed = form.text("revision");
        boolean numbered = typed != null && NUMBER.matcher(typed).matches();
        Double radius = form.number("undersideRadiusMm");
        Checks checks = new Checks();
        checks.require(typed == null || numbered, "revision", typed, "a whole number from 1 to 999999");
        if (radius != null) {
            boolean ok = Math.abs(radius) >= TIGHTEST_MM && Math.abs(radius) <= FLATTEST_MM;
            checks.require(ok, "undersideRadiusMm", radius, "2 mm to 1000000 mm, negative over a hollow");
        }
        form.refuse(checks.problems());
        return new FileQuery(form, numbered ? Integer.valueOf(typed) : null, radius);
    }

    boolean fixedRevision() {
        return revision != null;
    }

    /** @throws InvalidInputException with every parameter that cannot be used */
    void throwIfAny() {
        if (form.hasProblems()) {
            throw new InvalidInputException(form.problems());
        }
    }

    /** @throws org.vanewright.record.RecordNotFoundException if there is none */
    Revision<DeviceDocument> revisionOf(String slug, DeviceService devices) {
        return revision == null ? devices.published(slug) : devices.exactly(new RevisionRef(slug, revision));
    }

    /**
     * The design as asked for.
     *
     * @throws InvalidInputException naming {@code undersideRadiusMm} where this device cannot follow it
     */
    DeviceDesign design(DeviceDocument device) {
        DeviceDesign design = DeviceSolids.on(device.design(), undersideRadiusMm);
        List<FieldProblem> problems = undersideRadiusMm == null ? List.of() : DesignRules.check(design);
        if (!problems.isEmpty()) {
            throw new InvalidInputException(
                    problems.stream().map(FileQuery::asParameter).toList());
        }
        return design;
    }

    private static FieldProblem asParameter(FieldProblem p) {
        return new FieldProblem(
                p.field().replace("base.undersideRadiusMm", "undersideRadiusMm"), p.value(), p.allowed());
    }
}
