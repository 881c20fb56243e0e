package org.vanewright.campaign;

import java.util.ArrayList;
import java.util.List;
import org.vanewright.export.Columns;
import org.vanewright.export.RecordTable;

/** Test points in the export. */
final class PointTables {
    private PointTables() {}

    static RecordTable<CampaignDocument, PointDocument> points() {
        return RecordTable.ofParts(
                CampaignTables.MAIN,
                "test_points",
                "Test points as they were read",
                "point",
                CampaignDocument::points,
                new Columns<PointDocument>()
                        .choice("point_kind", "What it is", PointDocument::kind)
                        .text("mark", "Mark of the configuration flown", PointDocument::configuration)
                        .whole("sortie", "Number of the flight", PointDocument::sortie)
                        .whole("block", "Block of the order of flying", PointDocument::block)
                        .timeText("at", "When, to the second", PointDocument::at)
                        .number(
                                "indicated_airspeed_kt",
                                "kt",
                                "As read: of a stall its lowest, else steady",
                                PointDocument::indicatedAirspeedKt)
                        .number("pressure_altitude_ft", "ft", "At 1013.25 hPa", PointDocument::pressureAltitudeFt)
                        .number("outside_air_temperature_c", "°C", "As read", PointDocument::outsideAirTemperatureC)
                        .number("mass_kg", "kg", "Of the aircraft then", PointDocument::massKg)
                        .number("start_mass_kg", "kg", "At the start of the flight", PointDocument::startMassKg)
                        .number("fuel_used_kg", "kg", "Since then", PointDocument::fuelUsedKg)
                        .ratio("load_factor", "At the break; 1 where empty", PointDocument::loadFactor)
                        .number(
                                "entry_rate_kt_per_s",
                                "kt/s",
                                "Slowing down before the stall",
                                PointDocument::entryRateKtPerS)
                        .number(
                                "warning_airspeed_kt",
                                "kt",
                                "Indicated airspeed at the first warning",
                                PointDocument::warningAirspeedKt)
                        .number("wing_drop_deg", "deg", "Largest bank in the stall", PointDocument::wingDropDeg)
                        .number("power_percent", "percent", "Of rated power", PointDocument::powerPercent)
                        .number(
                                "climb_rate_ft_per_min",
                                "ft/min",
                                "Of pressure altitude",
                                PointDocument::climbRateFtPerMin)
                        .text("remark", "Anything else", PointDocument::remark)
                        .choice("source", "How it came here", PointDocument::source));
    }

    /** A leg with the number of its point. */
    private record Leg(int point, LegDocument is) {}

    static RecordTable<CampaignDocument, ?> legs() {
        return RecordTable.ofParts(
                CampaignTables.MAIN,
                "test_point_legs",
                "Legs of airspeed calibrations",
                "number",
                PointTables::legsOf,
                new Columns<Leg>()
                        .whole("point", "Number of its test point", Leg::point)
                        .number("ground_speed_kt", "kt", "By satellite", l -> l.is().groundSpeedKt())
                        .number("track_deg", "deg", "True track over the ground", l -> l.is().trackDeg())
                        .number("heading_deg", "deg", "True heading", l -> l.is().headingDeg()));
    }

    private static List<Leg> legsOf(CampaignDocument campaign) {
        List<Leg> legs = new ArrayList<>();
        for (int i = 0; i < campaign.points().size(); i++) {
            for (LegDocument leg : campaign.points().get(i).legs()) {
                legs.add(new Leg(i + 1, leg));
            }
        }
        return legs;
    }
}
