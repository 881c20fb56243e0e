package org.vanewright.campaign;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.vanewright.export.Columns;
import org.vanewright.export.RecordTable;
import org.vanewright.export.RecordTables;
import org.vanewright.record.RecordState;
import org.vanewright.record.Revision;

/** Campaigns in the export: plan, flights, test points, tufts, and what the published revision of each came to. */
@Component
class CampaignTables implements RecordTables<CampaignDocument> {
    static final String MAIN = "campaigns";

    private final CampaignComparisons comparisons;

    CampaignTables(CampaignComparisons comparisons) {
        this.comparisons = comparisons;
    }

    @Override
    public String kind() {
        return "campaign";
    }

    @Override
    public List<RecordTable<CampaignDocument, ?>> tables() {
        return List.of(
                campaigns(),
                configurations(),
                instruments(),
                roles(),
                flights(),
                PointTables.points(),
                PointTables.legs(),
                handling(),
                TuftTables.surveys(),
                TuftTables.tufts(),
                ComparisonTable.of(this::compared));
    }

    /** An earlier or withdrawn revision has no say. */
    private List<CampaignComparisons.Compared> compared(Revision<CampaignDocument> revision) {
        return revision.state() == RecordState.PUBLISHED ? comparisons.of(revision) : List.of();
    }

    private static RecordTable<CampaignDocument, CampaignDocument> campaigns() {
        Columns<CampaignDocument> columns = new Columns<CampaignDocument>()
                .text("name", "What people call it", CampaignDocument::name)
                .text("description", "What it is for", CampaignDocument::description)
                .revision("airframe", "airframes", "Aircraft", c -> c.plan().airframe())
                .choice("measure", "What is compared", c -> c.plan().measure());
        conditions(columns);
        repeats(columns);
        columns.revision(
                        "calibration",
                        MAIN,
                        "Campaign that its airspeeds are calibrated by; its own where empty",
                        c -> c.plan().calibration().campaign())
                .yesNo("invented", "Whether it is demonstration data", CampaignDocument::invented);
        return RecordTable.ofRecords(
                "campaign", MAIN, "Flights made to compare configurations of one airframe", columns);
    }

    private static void conditions(Columns<CampaignDocument> columns) {
        columns.text("flaps", "Their setting", c -> c.plan().conditions().flaps())
                .text("power", "Its setting", c -> c.plan().conditions().power())
                .text(
                        "centre_of_gravity",
                        "Where it is",
                        c -> c.plan().conditions().centreOfGravity())
                .number(
                        "lowest_ft",
                        "ft",
                        "Pressure altitude below which nothing is flown",
                        c -> c.plan().conditions().lowestFt())
                .number(
                        "highest_ft",
                        "ft",
                        "Pressure altitude above which nothing is flown",
                        c -> c.plan().conditions().highestFt())
                .number(
                        "standard_mass_kg",
                        "kg",
                        "Mass to which results are brought",
                        c -> c.plan().conditions().standardMassKg());
    }

    /** Scatter and change stand in the measure's unit, which depends on the row. */
    private static void repeats(Columns<CampaignDocument> columns) {
        columns.text(
                        "measure_unit",
                        "Unit of scatter and change",
                        c -> c.plan().measure() == null
                                ? null
                                : c.plan().measure().unit())
                .ratio(
                        "scatter",
                        "Guessed standard deviation of one test point, in measure_unit",
                        c -> c.plan().repeats().scatter())
                .ratio(
                        "smallest_change",
                        "Smallest change worth finding, in measure_unit",
                        c -> c.plan().repeats().change())
                .ratio(
                        "significance",
                        "Chance of a false alarm that is accepted; 0.05 where empty",
                        c -> c.plan().repeats().significance())
                .ratio(
                        "chance_of_finding",
                        "Chance of finding that change; 0.8 where empty",
                        c -> c.plan().repeats().power())
                .whole(
                        "per_configuration",
                        "Test points planned for each configuration",
                        c -> c.plan().repeats().perConfiguration())
                .choice(
                        "flying_order",
                        "How configurations follow each other",
                        c -> c.plan().repeats().order())
                .whole(
                        "seed",
                        "Of the drawing of lots; 1 where empty",
                        c -> c.plan().repeats().seed());
    }

    private static RecordTable<CampaignDocument, ConfigurationDocument> configurations() {
        return RecordTable.ofParts(
                MAIN,
                "campaign_configurations",
                "Configurations; the first is the unmodified aircraft",
                "configuration",
                c -> c.plan().configurations(),
                new Columns<ConfigurationDocument>()
                        .text("mark", "Short mark that test points carry", ConfigurationDocument::key)
                        .text("name", "What people call it", ConfigurationDocument::name)
                        .revision(
                                "layout",
                                "layouts",
                                "Layout that is fitted; none on the unmodified aircraft",
                                ConfigurationDocument::layout));
    }

    private static RecordTable<CampaignDocument, InstrumentDocument> instruments() {
        return RecordTable.ofParts(
                MAIN,
                "campaign_instruments",
                "What was read",
                "instrument",
                c -> c.plan().instruments(),
                new Columns<InstrumentDocument>()
                        .text("name", "Its class", InstrumentDocument::name)
                        .choice("quantity", "What it shows", InstrumentDocument::quantity)
                        .text(
                                "quantity_unit",
                                "Unit of the resolution",
                                i -> i.quantity() == null ? null : i.quantity().unit())
                        .ratio(
                                "resolution",
                                "Smallest step that can be read, in quantity_unit",
                                InstrumentDocument::resolution)
                        .day("calibrated_on", "Day of its last check", InstrumentDocument::calibratedOn));
    }

    private static RecordTable<CampaignDocument, RoleDocument> roles() {
        return RecordTable.ofParts(
                MAIN,
                "campaign_roles",
                "Who took part",
                "number",
                c -> c.plan().roles(),
                new Columns<RoleDocument>()
                        .text("role", "Such as pilot", RoleDocument::role)
                        .text("who", "As they wish to be called in public", RoleDocument::who));
    }

    /** What test points say of a flight. */
    private record Flight(int sortie, List<PointDocument> points) {
        /** Texts of one form in one zone, so that their order is that of time. */
        @Nullable
        String firstAt() {
            return points.stream()
                    .map(PointDocument::at)
                    .filter(Objects::nonNull)
                    .map(Objects::requireNonNull)
                    .min(String::compareTo)
                    .orElse(null);
        }

        @Nullable
        String lastAt() {
            return points.stream()
                    .map(PointDocument::at)
                    .filter(Objects::nonNull)
                    .map(Objects::requireNonNull)
                    .max(String::compareTo)
                    .orElse(null);
        }
    }

    private static RecordTable<CampaignDocument, Flight> flights() {
        return RecordTable.ofParts(
                MAIN,
                "campaign_flights",
                "Flights, as far as test points say which they are of",
                "number",
                CampaignTables::flightsOf,
                new Columns<Flight>()
                        .whole("sortie", "Number of the flight", Flight::sortie)
                        .whole("points", "Test points of it", f -> f.points().size())
                        .timeText("first_at", "Time of the first, to the second", Flight::firstAt)
                        .timeText("last_at", "Time of the last, to the second", Flight::lastAt));
    }

    private static List<Flight> flightsOf(CampaignDocument campaign) {
        TreeMap<Integer, List<PointDocument>> bySortie = new TreeMap<>();
        for (PointDocument point : campaign.points()) {
            if (point.sortie() != null) {
                bySortie.computeIfAbsent(point.sortie(), s -> new ArrayList<>()).add(point);
            }
        }
        return bySortie.entrySet().stream()
                .map(e -> new Flight(e.getKey(), e.getValue()))
                .toList();
    }

    private static RecordTable<CampaignDocument, HandlingDocument> handling() {
        return RecordTable.ofParts(
                MAIN,
                "campaign_handling",
                "What pilots say; ratings are ordinal",
                "number",
                CampaignDocument::handling,
                new Columns<HandlingDocument>()
                        .text("mark", "Mark of the configuration", HandlingDocument::configuration)
                        .text("task", "What was flown", HandlingDocument::task)
                        .whole("rating", "On the Cooper-Harper scale, 1 to 10", HandlingDocument::rating)
                        .text("remark", "In the pilot's words", HandlingDocument::remark));
    }
}
