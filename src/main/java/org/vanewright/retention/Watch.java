package org.vanewright.retention;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.vanewright.engineering.inference.survival.Span;
import org.vanewright.inspection.InspectionDocument;
import org.vanewright.inspection.InspectionService;
import org.vanewright.inspection.LossDocument;
import org.vanewright.installation.DeviceAt;
import org.vanewright.installation.FittedDevice;
import org.vanewright.installation.Fitting;
import org.vanewright.installation.InstallationDocument;
import org.vanewright.installation.InstallationService;
import org.vanewright.installation.SurfaceFinish;
import org.vanewright.layout.LayoutDocument;
import org.vanewright.record.Revision;

/** Brings published installations together with what their inspections found. */
@Component
class Watch {
    private final InstallationService installations;
    private final InspectionService inspections;

    Watch(InstallationService installations, InspectionService inspections) {
        this.installations = installations;
        this.inspections = inspections;
    }

    /** The revisions that everything follows from. */
    record Sources(
            List<Revision<InstallationDocument>> installations, List<Revision<InspectionDocument>> inspections) {}

    Sources sources() {
        return new Sources(installations.allPublished(), inspections.allPublished());
    }

    List<WatchedInstallation> watched(Sources sources) {
        Map<String, List<Revision<InspectionDocument>>> bySlug = sources.inspections().stream()
                .filter(i -> i.content().installation() != null)
                .collect(Collectors.groupingBy(Watch::installationSlug));
        return sources.installations().stream()
                .map(i -> watched(i, bySlug.getOrDefault(i.slug(), List.of())))
                .toList();
    }

    private static String installationSlug(Revision<InspectionDocument> inspection) {
        return String.valueOf(Optional.ofNullable(inspection.content().installation())
                .map(i -> i.slug())
                .orElse(""));
    }

    private WatchedInstallation watched(
            Revision<InstallationDocument> installation, List<Revision<InspectionDocument>> seen) {
        InstallationDocument document = installation.content();
        Optional<Revision<LayoutDocument>> layout = installations.layout(document);
        SurfaceFinish finish = document.conditions().surfaceFinish();
        List<FittedDevice> fitted =
                installations.fitting(document).map(Fitting::devices).orElse(List.of());
        return new WatchedInstallation(
                installation,
                layout.map(l -> l.content().name()).orElse("Unknown layout"),
                installations.adhesive(document).orElse("Unknown adhesive"),
                installations.material(document).orElse("Unknown material"),
                finish == null ? "Unknown surface" : finish.label(),
                seen,
                devices(fitted, seen));
    }

    /** Inspections at the same hours count as one. What was lost once is lost, whatever is said of it later. */
    static List<WatchedDevice> devices(List<FittedDevice> fitted, List<Revision<InspectionDocument>> seen) {
        Map<DeviceAt, Found> losses = new HashMap<>();
        double before = 0;
        double last = 0;
        for (Revision<InspectionDocument> inspection : seen) {
            double hours = hours(inspection.content());
            if (hours > last) {
                before = last;
                last = hours;
            }
            for (LossDocument loss : inspection.content().losses()) {
                if (loss.at() != null && last > before) {
                    losses.putIfAbsent(loss.at(), new Found(new Span(before, last), loss, inspection));
                }
            }
        }
        List<WatchedDevice> devices = new ArrayList<>();
        for (FittedDevice each : last > 0 ? fitted : List.<FittedDevice>of()) {
            devices.add(device(each, losses.get(each.at()), last));
        }
        return devices;
    }

    private record Found(Span span, LossDocument loss, Revision<InspectionDocument> inspection) {}

    private static WatchedDevice device(FittedDevice fitted, @Nullable Found found, double last) {
        String row = fitted.station().rowName();
        return found == null
                ? new WatchedDevice(fitted.at(), row, Span.kept(last), null, null)
                : new WatchedDevice(fitted.at(), row, found.span(), found.loss(), found.inspection());
    }

    static double hours(InspectionDocument inspection) {
        Double hours = inspection.hoursFlown();
        return hours == null ? 0 : hours;
    }
}
