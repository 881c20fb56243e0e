package org.vanewright.retention;

import java.util.List;
import org.vanewright.inspection.InspectionDocument;
import org.vanewright.installation.InstallationDocument;
import org.vanewright.record.Revision;

/**
 * A published installation with its published inspections.
 *
 * @param revision of the installation
 * @param layoutName what was put on
 * @param adhesive what holds it
 * @param material what the devices are made of
 * @param finish what they are stuck to
 * @param inspections by hours flown
 * @param devices that were seen at least once; none without an inspection
 */
public record WatchedInstallation(
        Revision<InstallationDocument> revision,
        String layoutName,
        String adhesive,
        String material,
        String finish,
        List<Revision<InspectionDocument>> inspections,
        List<WatchedDevice> devices) {
    public WatchedInstallation {
        inspections = List.copyOf(inspections);
        devices = List.copyOf(devices);
    }

    WatchedInstallation withDevices(List<WatchedDevice> some) {
        return new WatchedInstallation(revision, layoutName, adhesive, material, finish, inspections, some);
    }

    /** Hours flown at the last inspection; 0 without any. */
    public double hoursFlown() {
        return inspections.stream()
                .mapToDouble(i -> Watch.hours(i.content()))
                .max()
                .orElse(0);
    }
}
