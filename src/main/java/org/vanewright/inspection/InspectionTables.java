package org.vanewright.inspection;

import java.util.List;
import org.springframework.stereotype.Component;
import org.vanewright.export.Columns;
import org.vanewright.export.RecordTable;
import org.vanewright.export.RecordTables;

/** Inspections in the export. */
@Component
class InspectionTables implements RecordTables<InspectionDocument> {
    @Override
    public String kind() {
        return "inspection";
    }

    @Override
    public List<RecordTable<InspectionDocument, ?>> tables() {
        return List.of(inspections(), losses());
    }

    private static RecordTable<InspectionDocument, InspectionDocument> inspections() {
        return RecordTable.ofRecords(
                "inspection",
                "inspections",
                "Looks at installations",
                new Columns<InspectionDocument>()
                        .text("name", "What people call it", InspectionDocument::name)
                        .text("description", "Notes", InspectionDocument::description)
                        .revision(
                                "installation",
                                "installations",
                                "Installation that was looked at",
                                InspectionDocument::installation)
                        .day("inspected_on", "The day", InspectionDocument::inspectedOn)
                        .number("flown_h", "h", "Hours flown since the installation", InspectionDocument::hoursFlown)
                        .yesNo("invented", "Whether it is demonstration data", InspectionDocument::invented));
    }

    private static RecordTable<InspectionDocument, LossDocument> losses() {
        return RecordTable.ofParts(
                "inspections",
                "inspection_losses",
                "Devices that were missing or loose",
                "number",
                InspectionDocument::losses,
                new Columns<LossDocument>()
                        .text("surface", "Name of the surface", l -> l.at() == null ? null : l.at().surface())
                        .choice("wing", "Left or right", l -> l.at() == null ? null : l.at().wing())
                        .whole(
                                "device",
                                "Its number from the root outward on that wing and surface",
                                l -> l.at() == null ? null : l.at().device())
                        .choice("state", "Missing or loose", LossDocument::state)
                        .choice("cause", "As suspected", LossDocument::cause));
    }
}
