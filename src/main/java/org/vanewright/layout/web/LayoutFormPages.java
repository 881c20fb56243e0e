package org.vanewright.layout.web;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import org.vanewright.airframe.AirframeService;
import org.vanewright.airframe.SurfaceDocument;
import org.vanewright.device.DeviceService;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.layout.LayoutDocument;
import org.vanewright.layout.LayoutPlan;
import org.vanewright.layout.LayoutPlanner;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.form.RevisionField;
import org.vanewright.platform.page.Units;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;

/** Fills the page of the form: what it offers, and what can be drawn of what was typed. */
@Component
class LayoutFormPages {
    /** More than this many published records ask for a search, which is not a select's business. */
    private static final int OFFERED = 200;

    private final LayoutPlanner planner;
    private final AirframeService airframes;
    private final DeviceService devices;

    LayoutFormPages(LayoutPlanner planner, AirframeService airframes, DeviceService devices) {
        this.planner = planner;
        this.airframes = airframes;
        this.devices = devices;
    }

    /** A form to start from, for the airframe asked for or the newest one. */
    Form blank(Units units, @Nullable String airframeSlug) {
        Optional<? extends Revision<?>> airframe = airframeSlug == null
                ? airframes.list(null, 1).items().stream().findFirst()
                : airframes.latest(airframeSlug);
        Form form = LayoutForms.blank(
                units.system(),
                airframe.map(r -> RevisionField.value(r.ref())).orElse(""),
                devices.list(null, 1).items().stream().findFirst());
        surfaces(form).stream().findFirst().ifPresent(s -> form.put("rows[0].surface", s.label()));
        return form;
    }

    /** What comes of what was typed; empty while that cannot be placed. */
    Optional<LayoutPlan> plan(LayoutDocument typed) {
        try {
            return Optional.of(planner.plan(typed));
        } catch (InvalidInputException e) {
            return Optional.empty();
        }
    }

    void draw(Form form, Optional<LayoutPlan> plan, Model model) {
        Units units = new Units(form.units());
        model.addAttribute("plan", plan.orElse(null));
        model.addAttribute(
                "surfaces", plan.map(p -> LayoutDrawings.surfaces(p, units, "")).orElse(List.of()));
        model.addAttribute(
                "closeUps", plan.map(p -> LayoutDrawings.closeUps(p, "")).orElse(List.of()));
        model.addAttribute(
                "notes",
                plan.stream()
                        .flatMap(p -> p.surfaces().stream())
                        .flatMap(s -> s.placement().notes().stream())
                        .toList());
        model.addAttribute(
                "deviceCount",
                plan.stream()
                        .flatMap(p -> p.surfaces().stream())
                        .mapToInt(s -> s.placement().stations().size())
                        .sum());
    }

    LayoutChoices choices(Form form) {
        List<RevisionRef> airframe =
                Stream.ofNullable(RevisionField.quiet(form, "airframe")).toList();
        List<RevisionRef> device = IntStream.range(0, form.size("rows"))
                .mapToObj(i -> RevisionField.quiet(form, "rows[" + i + "].device"))
                .flatMap(Stream::ofNullable)
                .toList();
        return LayoutChoices.of(
                RevisionField.options(airframes.list(null, OFFERED).items(), airframe),
                RevisionField.options(devices.list(null, OFFERED).items(), device),
                surfaces(form));
    }

    private List<SurfaceDocument> surfaces(Form form) {
        RevisionRef airframe = RevisionField.quiet(form, "airframe");
        return airframe == null
                ? List.of()
                : airframes.find(airframe).map(r -> r.content().surfaces()).orElse(List.of());
    }
}
