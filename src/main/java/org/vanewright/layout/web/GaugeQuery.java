package org.vanewright.layout.web;

import jakarta.servlet.http.HttpServletRequest;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.gauge.Gauge;
import org.vanewright.engineering.gauge.GaugeSettings;
import org.vanewright.engineering.gauge.RowGauges;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.engineering.placement.Wing;
import org.vanewright.layout.LayoutDocument;
import org.vanewright.layout.LayoutGauges;
import org.vanewright.layout.LayoutService;
import org.vanewright.platform.form.Form;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;

/**
 * What the address of gauges asks for.
 *
 * @param form every parameter as typed, with what cannot be read
 * @param revision exact one; absent asks for the latest
 * @param row counts from 1
 * @param wing left or right
 * @param gauge counts from 1
 * @param settings those typed, the usual ones for what is not
 */
record GaugeQuery(Form form, @Nullable Integer revision, int row, Wing wing, int gauge, GaugeSettings settings) {
    private static final int LARGEST = 999_999;

    static GaugeQuery of(HttpServletRequest request) {
        Form form = Form.posted(request.getParameterMap());
        GaugeSettings usual = GaugeSettings.USUAL;
        GaugeSettings settings = new GaugeSettings(
                number(form, "clearanceMm", usual.clearanceMm()),
                number(form, "gapMm", usual.gapMm()),
                number(form, "placeMm", usual.placeMm()),
                number(form, "thicknessMm", usual.thicknessMm()),
                number(form, "widthMm", usual.widthMm()),
                number(form, "wrapMm", usual.wrapMm()));
        form.refuse(settings.problems().stream()
                .filter(p -> form.error(p.field()) == null)
                .toList());
        Integer revision = whole(form, "revision", LARGEST);
        Integer row = whole(form, "row", 99);
        Integer gauge = whole(form, "gauge", 99);
        Wing wing = form.choice("side", Wing.class);
        return new GaugeQuery(
                form,
                revision,
                row == null ? 1 : row,
                wing == null ? Wing.LEFT : wing,
                gauge == null ? 1 : gauge,
                settings);
    }

    private static double number(Form form, String field, double usual) {
        Double typed = form.number(field);
        return typed == null ? usual : typed;
    }

    private static @Nullable Integer whole(Form form, String field, int most) {
        String typed = form.text(field);
        Integer number = form.integer(field);
        Checks checks = new Checks();
        checks.require(
                typed == null || number != null && number >= 1 && number <= most,
                field,
                typed,
                "a whole number from 1 to " + most);
        if (form.error(field) == null) {
            form.refuse(checks.problems());
        }
        return checks.isClean() ? number : null;
    }

    /** @throws InvalidInputException with every parameter that cannot be used */
    void throwIfAny() {
        if (form.hasProblems()) {
            throw new InvalidInputException(form.problems());
        }
    }

    /** The exact revision, or the one that visitors are shown. */
    Revision<LayoutDocument> shown(String slug, LayoutService layouts) {
        return revision == null ? layouts.shown(slug) : layouts.exactly(new RevisionRef(slug, revision));
    }

    /** The exact revision, or the published one. */
    Revision<LayoutDocument> published(String slug, LayoutService layouts) {
        return revision == null ? layouts.published(slug) : layouts.exactly(new RevisionRef(slug, revision));
    }

    /** The row on the wing that was asked for. */
    RowGauges rowOf(Revision<LayoutDocument> layout, LayoutGauges gauges) {
        return gauges.of(layout, settings).stream()
                .filter(r -> r.row() == row - 1 && r.wing() == wing)
                .findFirst()
                .orElseThrow(() -> new InvalidInputException(new FieldProblem(
                        "row",
                        String.valueOf(row),
                        "a row with devices on the " + wing.name().toLowerCase(Locale.ROOT) + " wing")));
    }

    /** Its gauge that was asked for; where there is none, the problem names the row and says why. */
    Gauge gaugeOf(RowGauges found) {
        if (found.gauges().isEmpty()) {
            throw new InvalidInputException(new FieldProblem("row", String.valueOf(row), reason(found)));
        }
        if (gauge > found.gauges().size()) {
            throw new InvalidInputException(new FieldProblem(
                    "gauge",
                    String.valueOf(gauge),
                    "1 to " + found.gauges().size() + ", the gauges that this row needs"));
        }
        return found.gauges().get(gauge - 1);
    }

    private static String reason(RowGauges found) {
        return "a row that a hooked gauge can serve. "
                + (found.leftOut().isEmpty() ? "" : found.leftOut().get(0).reason());
    }

    /** Everything the file depends on beside the layout. */
    String key() {
        return row + " " + wing + " " + gauge + " " + settings;
    }
}
