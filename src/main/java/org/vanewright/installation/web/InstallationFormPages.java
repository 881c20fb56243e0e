package org.vanewright.installation.web;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.vanewright.adhesive.AdhesiveService;
import org.vanewright.installation.DeviceFields;
import org.vanewright.installation.FittedDevice;
import org.vanewright.installation.Fitting;
import org.vanewright.installation.InstallationDocument;
import org.vanewright.installation.InstallationService;
import org.vanewright.layout.LayoutDocument;
import org.vanewright.layout.LayoutService;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.form.Option;
import org.vanewright.platform.form.RevisionField;
import org.vanewright.printrun.PrintRunDocument;
import org.vanewright.printrun.PrintRunService;
import org.vanewright.record.RecordService;
import org.vanewright.record.Revision;

/** Fills the page of the form: what it starts from, and what it offers. */
@Component
class InstallationFormPages {
    /** More than this many published records ask for a search, which is not a select's business. */
    private static final int OFFERED = 200;

    private final InstallationService installations;
    private final LayoutService layouts;
    private final AdhesiveService adhesives;
    private final PrintRunService runs;

    InstallationFormPages(
            InstallationService installations, LayoutService layouts, AdhesiveService adhesives, PrintRunService runs) {
        this.installations = installations;
        this.layouts = layouts;
        this.adhesives = adhesives;
        this.runs = runs;
    }

    /** A form to start from, for the layout or the print run asked for, with the ends of each wing's rows to measure. */
    Form blank(@Nullable String layoutSlug, @Nullable String runSlug) {
        Optional<Revision<PrintRunDocument>> run = Optional.ofNullable(runSlug).flatMap(runs::latest);
        Optional<Revision<LayoutDocument>> layout = Optional.ofNullable(layoutSlug)
                .flatMap(layouts::latest)
                .or(() -> run.flatMap(r -> runs.layout(r.content())));
        Form form = InstallationForms.blank(
                layout.map(l -> RevisionField.value(l.ref())).orElse(""),
                run.map(r -> RevisionField.value(r.ref())).orElse(""),
                layout.map(l -> l.content().name() + ", put on").orElse(""));
        InstallationDocument typed = InstallationForms.read(form.unchecked());
        installations
                .fitting(typed)
                .ifPresent(f -> ends(f).forEach(d -> InstallationForms.addSample(form, d.at().key())));
        return form;
    }

    /** Innermost and outermost device of each surface and wing. */
    private static List<FittedDevice> ends(Fitting fitting) {
        return fitting.all().stream()
                .filter(d -> d.at().device() != null
                        && (d.at().device() == 1 || fitting.all().stream().noneMatch(other -> isNext(d, other))))
                .toList();
    }

    private static boolean isNext(FittedDevice device, FittedDevice other) {
        Integer one = device.at().device();
        Integer two = other.at().device();
        return one != null
                && two != null
                && two == one + 1
                && other.station().wing() == device.station().wing()
                && other.station().surface().equals(device.station().surface());
    }

    InstallationChoices choices(Form form) {
        InstallationDocument typed = InstallationForms.read(form.unchecked());
        List<FittedDevice> devices =
                installations.fitting(typed).map(Fitting::all).orElse(List.of());
        return new InstallationChoices(
                options(form, "layout", layouts),
                options(form, "adhesive", adhesives),
                options(form, "printRun", runs),
                DeviceFields.options(devices));
    }

    private static List<Option> options(Form form, String path, RecordService<?> records) {
        return RevisionField.options(
                List.copyOf(records.list(null, OFFERED).items()),
                Stream.ofNullable(RevisionField.quiet(form, path)).toList());
    }

    /** The measured devices so far beside their nominal figures; null before there is a layout. */
    @Nullable
    SampleView samples(InstallationDocument typed) {
        return installations.fitting(typed).map(f -> SampleView.of(typed, f)).orElse(null);
    }
}
