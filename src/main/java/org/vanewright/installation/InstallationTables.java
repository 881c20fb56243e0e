package org.vanewright.installation;

import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.vanewright.export.Columns;
import org.vanewright.export.RecordTable;
import org.vanewright.export.RecordTables;

/** Installations in the export. */
@Component
class InstallationTables implements RecordTables<InstallationDocument> {
    private static final String MAIN = "installations";

    @Override
    public String kind() {
        return "installation";
    }

    @Override
    public List<RecordTable<InstallationDocument, ?>> tables() {
        return List.of(installations(), leftOff(), samples());
    }

    private static RecordTable<InstallationDocument, InstallationDocument> installations() {
        return RecordTable.ofRecords(
                "installation",
                MAIN,
                "What was put on, with what and on what",
                new Columns<InstallationDocument>()
                        .text("name", "What people call it", InstallationDocument::name)
                        .text("description", "Whatever helps to understand it later", InstallationDocument::description)
                        .revision("layout", "layouts", "Layout that was put on", InstallationDocument::layout)
                        .revision("adhesive", "adhesives", "Adhesive", InstallationDocument::adhesive)
                        .text(
                                "adhesive_class",
                                "In words, where there is no record",
                                InstallationDocument::adhesiveClass)
                        .revision("print_run", "print_runs", "Run the pieces came from", InstallationDocument::printRun)
                        .choice("material", "Of the pieces, where there is no run", InstallationDocument::material)
                        .day("installed_on", "The day", InstallationDocument::installedOn)
                        .number(
                                "skin_temperature_c",
                                "°C",
                                "Of the skin, not of the air",
                                i -> i.conditions().skinTemperatureC())
                        .number(
                                "relative_humidity_percent",
                                "percent",
                                "Of the air",
                                i -> i.conditions().relativeHumidityPercent())
                        .choice(
                                "surface_finish",
                                "What they were stuck to",
                                i -> i.conditions().surfaceFinish())
                        .text("done_by", "Role of who did it", InstallationDocument::doneBy)
                        .number(
                                "tolerance_position_mm",
                                "mm",
                                "Beyond which a sample is pointed out",
                                i -> i.tolerances().positionOrUsualMm())
                        .number(
                                "tolerance_angle_deg",
                                "deg",
                                "Beyond which a sample is pointed out",
                                i -> i.tolerances().angleOrUsualDeg())
                        .number(
                                "tolerance_height_mm",
                                "mm",
                                "Beyond which a sample is pointed out",
                                i -> i.tolerances().heightOrUsualMm())
                        .yesNo("invented", "Whether it is demonstration data", InstallationDocument::invented));
    }

    private static RecordTable<InstallationDocument, DeviceAt> leftOff() {
        return RecordTable.ofParts(
                MAIN,
                "installation_left_off",
                "Devices of the layout that were not put on",
                "number",
                InstallationDocument::leftOff,
                place(new Columns<DeviceAt>(), d -> d));
    }

    private static RecordTable<InstallationDocument, SampleDocument> samples() {
        return RecordTable.ofParts(
                MAIN,
                "installation_samples",
                "Devices that were measured after they were put on",
                "sample",
                InstallationDocument::samples,
                place(new Columns<SampleDocument>(), SampleDocument::at)
                        .number(
                                "chord_position_mm",
                                "mm",
                                "Centre of its base along the skin from the leading edge",
                                SampleDocument::chordPositionMm)
                        .number("angle_deg", "deg", "Of the vane, toe-in positive", SampleDocument::angleDeg)
                        .number("height_mm", "mm", "Of the vane above its base", SampleDocument::heightMm));
    }

    private static <R> Columns<R> place(Columns<R> columns, Function<R, @Nullable DeviceAt> at) {
        return columns.text("surface", "Name of the surface", r -> {
                    DeviceAt device = at.apply(r);
                    return device == null ? null : device.surface();
                })
                .choice("wing", "Left or right", r -> {
                    DeviceAt device = at.apply(r);
                    return device == null ? null : device.wing();
                })
                .whole("device", "Its number from the root outward on that wing and surface", r -> {
                    DeviceAt device = at.apply(r);
                    return device == null ? null : device.device();
                });
    }
}
