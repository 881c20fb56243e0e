package org.vanewright.study.web;

import jakarta.servlet.http.HttpServletRequest;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.vanewright.device.DeviceDocument;
import org.vanewright.engineering.solid.DeviceDesign.Vane;
import org.vanewright.engineering.vane.Recommendation;
import org.vanewright.platform.form.Form;
import org.vanewright.record.Revision;
import org.vanewright.study.SuggestionQuery;

/**
 * What the address of suggestions asks for.
 *
 * @param form every parameter as typed, with what cannot be read; what is absent stands there as it is taken
 * @param query what was read
 */
record SuggestionForm(Form form, SuggestionQuery query) {
    private static final String USED = "use.";
    private static final String TRIED = "tried";
    private static final double FRONT = 0.04;
    private static final double REAR = 0.2;

    /** A recommendation with its tick. */
    public record Choice(Recommendation recommendation, String field, boolean chosen) {}

    /** A device with its tick. */
    public record DeviceChoice(String slug, String name, String size, boolean chosen) {}

    static SuggestionForm of(HttpServletRequest request, List<Recommendation> guidance) {
        Form form = Form.posted(request.getParameterMap());
        Set<String> used = guidance.stream()
                .filter(r -> form.text(field(r)) != null)
                .map(Recommendation::id)
                .collect(Collectors.toUnmodifiableSet());
        SuggestionQuery query = new SuggestionQuery(
                row(form),
                number(form, "leastFraction", FRONT),
                number(form, "mostFraction", REAR),
                form.number("leastPitchMm"),
                form.number("mostPitchMm"),
                form.number("leastAngleDeg"),
                form.number("mostAngleDeg"),
                slugs(request),
                used,
                form.number("massKg"),
                form.number("pressureAltitudeFt"));
        putIfAbsent(form, "row", "0");
        putIfAbsent(form, "leastFraction", String.valueOf(FRONT));
        putIfAbsent(form, "mostFraction", String.valueOf(REAR));
        return new SuggestionForm(form, query);
    }

    private static Set<String> slugs(HttpServletRequest request) {
        String[] given = Objects.requireNonNullElse(request.getParameterValues(TRIED), new String[0]);
        return Arrays.stream(given).filter(s -> !s.isBlank()).collect(Collectors.toUnmodifiableSet());
    }

    List<Choice> choices(List<Recommendation> guidance) {
        Set<String> used = query.recommendations();
        return guidance.stream()
                .map(r -> new Choice(r, field(r), used.isEmpty() || used.contains(r.id())))
                .toList();
    }

    List<DeviceChoice> devices(List<Revision<DeviceDocument>> devices) {
        Set<String> tried = query.devices();
        return devices.stream()
                .map(d -> new DeviceChoice(
                        d.slug(), d.content().name(), size(d.content()), tried.isEmpty() || tried.contains(d.slug())))
                .toList();
    }

    private static String size(DeviceDocument device) {
        Vane vane = device.vane();
        String size = vane == null || vane.heightMm() == null || vane.lengthMm() == null
                ? "no size given"
                : String.format(Locale.ROOT, "%.1f mm high, %.1f mm long", vane.heightMm(), vane.lengthMm());
        return device.pair() == null ? size : size + ", a pair on one base";
    }

    /** Name of its tick; names of fields have no hyphens. */
    private static String field(Recommendation recommendation) {
        return USED + recommendation.id().replace("-", "");
    }

    static int row(Form form) {
        Integer row = StudyForm.whole(form, "row", 0);
        return row == null ? 0 : row;
    }

    private static double number(Form form, String field, double otherwise) {
        Double given = form.number(field);
        return given == null ? otherwise : given;
    }

    private static void putIfAbsent(Form form, String field, @Nullable String value) {
        if (form.text(field) == null) {
            form.put(field, (Object) value);
        }
    }
}
