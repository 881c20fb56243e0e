package org.vanewright.evidence.web;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Locale;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.jspecify.annotations.Nullable;
import org.vanewright.evidence.EvidenceStudy;
import org.vanewright.evidence.Finding;
import org.vanewright.evidence.Fitted;
import org.vanewright.evidence.Scale;
import org.vanewright.platform.CsvCells;

/** Every comparison, one a line, as comma-separated values (RFC 4180). */
final class EvidenceCsv {
    private static final CSVFormat FORMAT = CSVFormat.RFC4180
            .builder()
            .setHeader(
                    "campaign",
                    "campaign_revision",
                    "campaign_sha256",
                    "published",
                    "airframe",
                    "airframe_revision",
                    "operating_basis",
                    "layout",
                    "layout_revision",
                    "configuration",
                    "quantity",
                    "unit",
                    "baseline_count",
                    "modified_count",
                    "baseline_mean",
                    "change",
                    "change_low",
                    "change_high",
                    "standard_error",
                    "change_percent",
                    "change_percent_low",
                    "change_percent_high",
                    "change_percent_standard_error",
                    "chord_fraction",
                    "height_mm",
                    "height_over_thickness",
                    "flaps",
                    "power",
                    "centre_of_gravity",
                    "airspeeds_calibrated",
                    "invented",
                    "counted",
                    "not_counted_because")
            .get();

    private EvidenceCsv() {}

    static String write(EvidenceStudy study) {
        StringBuilder out = new StringBuilder();
        try (CSVPrinter printer = new CSVPrinter(out, FORMAT)) {
            for (EvidenceStudy.Item item : study.items()) {
                write(printer, item);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toString();
    }

    private static void write(CSVPrinter printer, EvidenceStudy.Item item) throws IOException {
        Finding f = item.finding();
        Fitted fitted = f.fitted();
        Scale.Change percent = Scale.PERCENT.of(f);
        printer.printRecord(
                f.campaign().slug(),
                f.campaign().revision(),
                f.campaignSha256(),
                f.publishedAt(),
                f.airframe().slug(),
                f.airframe().revision(),
                f.operatingBasis() == null ? "" : f.operatingBasis(),
                f.layout().slug(),
                f.layout().revision(),
                CsvCells.defuse(f.configurationKey() + ": " + f.configurationName()),
                f.quantity(),
                f.unit(),
                f.baselineCount(),
                f.modifiedCount(),
                number(f.baselineMean()),
                number(f.change()),
                number(f.interval().low()),
                number(f.interval().high()),
                number(f.standardError()),
                number(percent == null ? null : (Double) percent.value()),
                number(percent == null ? null : (Double) percent.interval().low()),
                number(percent == null ? null : (Double) percent.interval().high()),
                number(percent == null ? null : (Double) percent.standardError()),
                number(f.chordFraction()),
                number(fitted == null ? null : fitted.heightMm()),
                number(f.heightOverThickness()),
                CsvCells.defuse(f.setting().flaps()),
                CsvCells.defuse(f.setting().power()),
                CsvCells.defuse(f.setting().centreOfGravity()),
                f.calibrated(),
                f.invented(),
                item.counted(),
                CsvCells.defuse(String.join("; ", item.why())));
    }

    private static String number(@Nullable Double value) {
        return value == null ? "" : String.format(Locale.ROOT, "%.4f", value);
    }
}
