package org.vanewright.campaign.reduction;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.jspecify.annotations.Nullable;
import org.vanewright.campaign.CampaignDocument;
import org.vanewright.campaign.PointDocument;
import org.vanewright.platform.CsvCells;

/** Test points, raw beside reduced, as comma-separated values (RFC 4180), units in the column names. */
public final class ResultsCsv {
    private static final CSVFormat FORMAT = CSVFormat.RFC4180
            .builder()
            .setHeader(
                    "number",
                    "kind",
                    "configuration",
                    "sortie",
                    "block",
                    "at",
                    "indicated_airspeed_kt",
                    "pressure_altitude_ft",
                    "outside_air_temperature_c",
                    "mass_kg",
                    "load_factor",
                    "entry_rate_kt_per_s",
                    "warning_airspeed_kt",
                    "wing_drop_deg",
                    "power_percent",
                    "climb_rate_ft_per_min",
                    "calibrated_airspeed_kt",
                    "true_airspeed_kt",
                    "at_standard_conditions",
                    "compared",
                    "lift_coefficient",
                    "outlier",
                    "remarks")
            .get();

    private ResultsCsv() {}

    /** @param reduced null where nothing follows from the points yet */
    public static String write(CampaignDocument campaign, @Nullable ReducedCampaign reduced) {
        Map<Integer, ReducedPoint> byNumber = new HashMap<>();
        if (reduced != null) {
            reduced.points().forEach(p -> byNumber.put(p.number(), p));
        }
        StringBuilder out = new StringBuilder();
        try (CSVPrinter printer = new CSVPrinter(out, FORMAT)) {
            for (int i = 0; i < campaign.points().size(); i++) {
                printer.printRecord(cells(i + 1, campaign.points().get(i), byNumber.get(i + 1)));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toString();
    }

    private static List<String> cells(int number, PointDocument p, @Nullable ReducedPoint reduced) {
        return List.of(
                String.valueOf(number),
                text(p.kind()),
                CsvCells.defuse(text(p.configuration())),
                text(p.sortie()),
                text(p.block()),
                text(p.at()),
                text(p.indicatedAirspeedKt()),
                text(p.pressureAltitudeFt()),
                text(p.outsideAirTemperatureC()),
                text(p.massThenKg()),
                text(p.loadFactor()),
                text(p.entryRateKtPerS()),
                text(p.warningAirspeedKt()),
                text(p.wingDropDeg()),
                text(p.powerPercent()),
                text(p.climbRateFtPerMin()),
                reduced == null ? "" : fixed(reduced.calibratedKt()),
                reduced == null ? "" : fixed(reduced.trueKt()),
                reduced == null ? "" : fixed(reduced.value()),
                reduced == null ? "" : fixed(reduced.compared()),
                reduced == null || reduced.liftCoefficient() == null ? "" : fixed(reduced.liftCoefficient()),
                reduced == null ? "" : String.valueOf(reduced.outlier()),
                CsvCells.defuse(text(p.remark())));
    }

    private static String text(@Nullable Object value) {
        return value == null ? "" : value.toString();
    }

    private static String fixed(double value) {
        return String.format(Locale.ROOT, "%.3f", value);
    }
}
