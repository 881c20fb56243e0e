package org.vanewright.retention;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.vanewright.engineering.inference.survival.Span;
import org.vanewright.inspection.InspectionDocument;
import org.vanewright.inspection.InspectionService;
import org.vanewright.inspection.LossDocument;
import org.vanewright.installation.DeviceAt;
import org.vanewright.installation.FittedDevice;
import org.vanewright.installation.InstallationDocument;
import org.vanewright.installation.InstallationService;
import org.vanewright.installation.SurfaceFinish;
import org.vanewright.record.Revision;

/** Brings published installations together with what their inspections found. */
@Component
class Watch {
    /** More are not looked at: with a hundred devices each they would fill the memory of a small machine. */
    static final int MOST = 300;

    private final InstallationService installations;
    private final InspectionService inspections;

    Watch(InstallationService installations, InspectionService inspections) {
        this.installations = installations;
        this.inspections = inspections;
    }

    /** Another text whenever anything else follows. */
    String state() {
        return installations.publishedState() + " " + inspections.publishedState();
    }

    /** How many published installations are too old to be among them. */
    int older() {
        return Math.max(0, installations.countPublished() - MOST);
    }

    /** The newest installations, newest first. */
    List<WatchedInstallation> watched() {
        List<Revision<InstallationDocument>> newest = installations.newest(MOST);
        Map<String, List<Revision<InspectionDocument>>> bySlug =
                inspections.of(newest.stream().map(Revision::slug).toList());
        return installations.described(newest).stream()
                .map(i -> watched(i, bySlug.getOrDefault(i.revision().slug(), List.of())))
                .toList();
    }

    private static WatchedInstallation watched(
            InstallationService.Described installation, List<Revision<InspectionDocument>> seen) {
        SurfaceFinish finish = installation.revision().content().conditions().surfaceFinish();
        return new WatchedInstallation(
                installation.revision(),
                Objects.requireNonNullElse(installation.layoutName(), "Unknown layout"),
                Objects.requireNonNullElse(installation.adhesive(), "Unknown adhesive"),
                Objects.requireNonNullElse(installation.material(), "Unknown material"),
                finish == null ? "Unknown surface" : finish.label(),
                seen,
                devices(installation.devices(), seen));
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
