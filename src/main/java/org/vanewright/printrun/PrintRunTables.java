package org.vanewright.printrun;

import java.util.List;
import org.springframework.stereotype.Component;
import org.vanewright.export.Columns;
import org.vanewright.export.RecordTable;
import org.vanewright.export.RecordTables;

/** Print runs in the export. */
@Component
class PrintRunTables implements RecordTables<PrintRunDocument> {
    private static final String MAIN = "print_runs";

    @Override
    public String kind() {
        return "print-run";
    }

    @Override
    public List<RecordTable<PrintRunDocument, ?>> tables() {
        return List.of(runs(), settings(), defects(), samples());
    }

    private static RecordTable<PrintRunDocument, PrintRunDocument> runs() {
        return RecordTable.ofRecords(
                "print-run",
                MAIN,
                "What was printed, and how it came out",
                new Columns<PrintRunDocument>()
                        .text("name", "What people call it", PrintRunDocument::name)
                        .text("description", "Whatever helps to repeat it", PrintRunDocument::description)
                        .revision("device", "devices", "Device that was printed", PrintRunDocument::device)
                        .revision("layout", "layouts", "Layout it was printed for", PrintRunDocument::layout)
                        .day("printed_on", "The day", r -> r.printing().on())
                        .choice(
                                "material",
                                "Class of the material",
                                r -> r.printing().material())
                        .text(
                                "machine_class",
                                "Class of the machine",
                                r -> r.printing().machineClass())
                        .whole(
                                "pieces",
                                "Pieces that were printed",
                                r -> r.outcome().pieces())
                        .number(
                                "duration_min",
                                "min",
                                "From start to end of all plates",
                                r -> r.outcome().minutes())
                        .number(
                                "material_g",
                                "g",
                                "Material used, waste included",
                                r -> r.outcome().materialG())
                        .number(
                                "energy_kwh",
                                "kWh",
                                "Taken from the mains",
                                r -> r.outcome().energyKWh())
                        .number(
                                "tolerance_mm",
                                "mm",
                                "That a measured piece may be off height and thickness",
                                r -> r.outcome().toleranceMm())
                        .whole(
                                "faulty",
                                "Pieces with any fault",
                                r -> r.outcome().faulty())
                        .yesNo("invented", "Whether it is demonstration data", PrintRunDocument::invented));
    }

    private static RecordTable<PrintRunDocument, SettingDocument> settings() {
        return RecordTable.ofParts(
                MAIN,
                "print_run_settings",
                "Settings of the machine, as the person calls them",
                "setting",
                PrintRunDocument::settings,
                new Columns<SettingDocument>()
                        .text("name", "Such as layer height", SettingDocument::name)
                        .text("stands_at", "With its unit", SettingDocument::value));
    }

    private static RecordTable<PrintRunDocument, DefectDocument> defects() {
        return RecordTable.ofParts(
                MAIN,
                "print_run_defects",
                "Pieces that were not fit for use",
                "number",
                r -> r.outcome().defects(),
                new Columns<DefectDocument>()
                        .choice("fault", "Kind of fault", DefectDocument::kind)
                        .whole("pieces", "How many", DefectDocument::count));
    }

    private static RecordTable<PrintRunDocument, SampleDocument> samples() {
        return RecordTable.ofParts(
                MAIN,
                "print_run_samples",
                "Pieces that were measured",
                "sample",
                PrintRunDocument::sample,
                new Columns<SampleDocument>()
                        .number("height_mm", "mm", "Height of the vane above the base", SampleDocument::heightMm)
                        .number("thickness_mm", "mm", "Thickness of the vane", SampleDocument::thicknessMm));
    }
}
