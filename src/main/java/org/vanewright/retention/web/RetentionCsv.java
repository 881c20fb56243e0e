package org.vanewright.retention.web;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Locale;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.vanewright.inspection.LossDocument;
import org.vanewright.platform.CsvCells;
import org.vanewright.retention.GroupStudy;
import org.vanewright.retention.RetentionStudy;
import org.vanewright.retention.WatchedDevice;
import org.vanewright.retention.WatchedInstallation;

/** What a study follows from, one device a line, as comma-separated values (RFC 4180); units stand in the column names. */
final class RetentionCsv {
    private static final CSVFormat FORMAT = CSVFormat.RFC4180
            .builder()
            .setHeader(
                    "group",
                    "installation",
                    "installation_revision",
                    "invented",
                    "surface",
                    "wing",
                    "device",
                    "row",
                    "in_place_after_hours",
                    "lost_by_hours",
                    "state",
                    "cause",
                    "inspection",
                    "inspection_revision")
            .get();

    private RetentionCsv() {}

    static String write(RetentionStudy study) {
        StringBuilder out = new StringBuilder();
        try (CSVPrinter printer = new CSVPrinter(out, FORMAT)) {
            for (GroupStudy group : study.groups()) {
                for (WatchedInstallation installation : group.installations()) {
                    for (WatchedDevice device : installation.devices()) {
                        write(printer, group, installation, device);
                    }
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toString();
    }

    private static void write(
            CSVPrinter printer, GroupStudy group, WatchedInstallation installation, WatchedDevice device)
            throws IOException {
        LossDocument loss = device.loss();
        printer.printRecord(
                CsvCells.defuse(group.name()),
                installation.revision().slug(),
                installation.revision().number(),
                installation.revision().content().invented(),
                CsvCells.defuse(String.valueOf(device.at().surface())),
                device.at().wing(),
                device.at().device(),
                CsvCells.defuse(device.row()),
                number(device.span().afterHours()),
                device.span().lost() ? number(device.span().byHours()) : "",
                loss == null ? "" : loss.state(),
                loss == null ? "" : loss.cause(),
                device.found() == null ? "" : device.found().slug(),
                device.found() == null ? "" : device.found().number());
    }

    private static String number(double hours) {
        return String.format(Locale.ROOT, "%.1f", hours);
    }
}
