package org.vanewright.study.web;

import jakarta.servlet.http.HttpServletRequest;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.input.Checks;
import org.vanewright.platform.form.Form;
import org.vanewright.record.RevisionRef;
import org.vanewright.study.StudyCondition;
import org.vanewright.study.StudyQuery;

/**
 * What the address of a study asks for.
 *
 * @param form every parameter as typed, with what cannot be read
 * @param revision of the layout; absent asks for the current one
 * @param query what was read
 */
record StudyForm(Form form, @Nullable Integer revision, StudyQuery query) {
    static StudyForm of(HttpServletRequest request) {
        Form form = Form.posted(request.getParameterMap());
        Integer revision = whole(form, "revision", 1);
        Integer row = whole(form, "row", 0);
        String condition = form.text("condition");
        StudyCondition chosen = condition == null ? null : form.choice("condition", StudyCondition.class);
        Checks checks = new Checks();
        checks.require(
                condition == null || chosen != null, "condition", condition, "one of STALL, APPROACH, CRUISE, SPEED");
        form.refuse(checks.problems());
        StudyQuery query = new StudyQuery(
                form.number("massKg"),
                form.number("pressureAltitudeFt"),
                form.number("outsideAirTemperatureC"),
                chosen,
                form.number("calibratedAirspeedKt"),
                row,
                new StudyQuery.Trial(
                        form.number("chordFraction"),
                        form.number("heightMm"),
                        form.number("lengthMm"),
                        form.number("angleDeg"),
                        form.number("pitchMm")));
        return new StudyForm(form, revision, query);
    }

    /** A whole number; one that cannot be read is refused in the form. */
    static @Nullable Integer whole(Form form, String field, int least) {
        String typed = form.text(field);
        boolean ok = typed == null || typed.matches("[0-9]{1,6}") && Integer.parseInt(typed) >= least;
        Checks checks = new Checks();
        checks.require(ok, field, typed, "a whole number from " + least);
        form.refuse(checks.problems());
        return typed == null || !ok ? null : Integer.valueOf(typed);
    }

    @Nullable
    RevisionRef ref(String slug) {
        return revision == null ? null : new RevisionRef(slug, revision);
    }
}
