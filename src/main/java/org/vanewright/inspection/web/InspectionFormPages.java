package org.vanewright.inspection.web;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.vanewright.inspection.InspectionDocument;
import org.vanewright.inspection.InspectionService;
import org.vanewright.installation.DeviceFields;
import org.vanewright.installation.FittedDevice;
import org.vanewright.installation.Fitting;
import org.vanewright.installation.InstallationDocument;
import org.vanewright.installation.InstallationService;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.form.RevisionField;
import org.vanewright.platform.page.UnitSystem;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;

/** Fills the page of the form: what it starts from, and what it offers. */
@Component
class InspectionFormPages {
    private static final int OFFERED = 200;
    private static final int LONGEST_NAME = 120;

    private final InspectionService inspections;
    private final InstallationService installations;
    private final Clock clock;

    InspectionFormPages(InspectionService inspections, InstallationService installations, Clock clock) {
        this.inspections = inspections;
        this.installations = installations;
        this.clock = clock;
    }

    /** A form to start from, of today and for the installation asked for. */
    Form blank(@Nullable String installationSlug) {
        Form form = new Form(UnitSystem.METRIC);
        form.put("inspectedOn", LocalDate.ofInstant(clock.instant(), ZoneOffset.UTC));
        Optional.ofNullable(installationSlug)
                .flatMap(installations::latest)
                .ifPresent(i -> form.put("installation", RevisionField.value(i.ref()))
                        .put("name", name(i))
                        .put("invented", i.content().invented() ? "true" : ""));
        return form;
    }

    private String name(Revision<InstallationDocument> installation) {
        String counted = ", inspection " + (inspections.of(installation.slug()).size() + 1);
        String name = installation.content().name();
        int room = LONGEST_NAME - counted.length();
        return (name.length() <= room ? name : name.substring(0, room)) + counted;
    }

    InspectionChoices choices(Form form) {
        RevisionRef chosen = RevisionField.quiet(form, "installation");
        List<FittedDevice> devices = Optional.ofNullable(chosen)
                .flatMap(installations::find)
                .flatMap(i -> installations.fitting(i.content()))
                .map(Fitting::devices)
                .orElse(List.of());
        return new InspectionChoices(
                RevisionField.options(
                        installations.list(null, OFFERED).items(),
                        Stream.ofNullable(chosen).toList()),
                DeviceFields.options(devices));
    }

    /** Earlier inspections of the installation that was chosen. */
    List<Revision<InspectionDocument>> earlier(InspectionDocument typed) {
        RevisionRef ref = typed.installation();
        return ref == null ? List.of() : inspections.of(ref.slug());
    }
}
