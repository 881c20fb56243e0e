package org.vanewright.device.web;

import jakarta.servlet.http.HttpServletRequest;
import org.jspecify.annotations.Nullable;
import org.vanewright.device.DeviceDocument;
import org.vanewright.device.DeviceService;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.InvalidInputException;
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
    private static final int MOST_REVISIONS = 999_999;
    private static final double TIGHTEST_MM = 2;
    private static final double FLATTEST_MM = 1e6;

    static FileQuery of(HttpServletRequest request) {
        Form form = Form.posted(request.getParameterMap());
        Integer revision = form.integer("revision");
        Double radius = form.number("undersideRadiusMm");
        Checks checks = new Checks();
        if (revision != null || form.text("revision") != null && form.error("revision") == null) {
            boolean ok = revision != null && revision >= 1 && revision <= MOST_REVISIONS;
            checks.require(ok, "revision", form.text("revision"), "a whole number from 1 to " + MOST_REVISIONS);
        }
        if (radius != null) {
            boolean ok = Math.abs(radius) >= TIGHTEST_MM && Math.abs(radius) <= FLATTEST_MM;
            checks.require(ok, "undersideRadiusMm", radius, "2 mm to 1000000 mm, negative over a hollow");
        }
        form.refuse(checks.problems());
        return new FileQuery(form, revision, radius);
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
}
