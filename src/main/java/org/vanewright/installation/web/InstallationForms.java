package org.vanewright.installation.web;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.vanewright.device.PrintMaterial;
import org.vanewright.installation.ConditionsDocument;
import org.vanewright.installation.DeviceAt;
import org.vanewright.installation.DeviceFields;
import org.vanewright.installation.InstallationDocument;
import org.vanewright.installation.SampleDocument;
import org.vanewright.installation.SurfaceFinish;
import org.vanewright.installation.TolerancesDocument;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.form.OriginFields;
import org.vanewright.platform.form.PhotographFields;
import org.vanewright.platform.form.RevisionField;
import org.vanewright.platform.page.UnitSystem;

/**
 * Between an installation and its form. Fields are named by the document's own paths. Small measures are in millimetres and
 * degrees Celsius, whatever the units of airframes.
 */
final class InstallationForms {
    static final String LEFT_OFF = "leftOff";
    static final String SAMPLES = "samples";

    private InstallationForms() {}

    /** One to start from. */
    static Form blank(String layout, String printRun, String name) {
        return new Form(UnitSystem.METRIC)
                .put("layout", (Object) layout)
                .put("printRun", (Object) printRun)
                .put("name", (Object) name)
                .put("tolerances.positionMm", (Double) TolerancesDocument.POSITION_MM)
                .put("tolerances.angleDeg", (Double) TolerancesDocument.ANGLE_DEG)
                .put("tolerances.heightMm", (Double) TolerancesDocument.HEIGHT_MM);
    }

    static void addLeftOff(Form form) {
        form.put(LEFT_OFF + "[" + form.size(LEFT_OFF) + "]", "");
    }

    static void addSample(Form form, String key) {
        form.put(SAMPLES + "[" + form.size(SAMPLES) + "].at", (Object) key);
    }

    static Form of(InstallationDocument d) {
        Form form = new Form(UnitSystem.METRIC);
        form.put("name", d.name())
                .put("description", d.description())
                .put("invented", d.invented() ? "true" : "")
                .put("layout", RevisionField.value(d.layout()))
                .put("adhesive", RevisionField.value(d.adhesive()))
                .put("adhesiveClass", d.adhesiveClass())
                .put("printRun", RevisionField.value(d.printRun()))
                .put("material", d.material())
                .put("installedOn", d.installedOn())
                .put("conditions.skinTemperatureC", d.conditions().skinTemperatureC())
                .put("conditions.relativeHumidityPercent", d.conditions().relativeHumidityPercent())
                .put("conditions.surfaceFinish", d.conditions().surfaceFinish())
                .put("doneBy", d.doneBy())
                .put("tolerances.positionMm", d.tolerances().positionMm())
                .put("tolerances.angleDeg", d.tolerances().angleDeg())
                .put("tolerances.heightMm", d.tolerances().heightMm());
        for (int i = 0; i < d.leftOff().size(); i++) {
            form.put(LEFT_OFF + "[" + i + "]", d.leftOff().get(i).key());
        }
        for (int i = 0; i < d.samples().size(); i++) {
            SampleDocument sample = d.samples().get(i);
            String at = SAMPLES + "[" + i + "]";
            form.put(at + ".at", sample.at() == null ? "" : sample.at().key())
                    .put(at + ".chordPositionMm", sample.chordPositionMm())
                    .put(at + ".angleDeg", sample.angleDeg())
                    .put(at + ".heightMm", sample.heightMm());
        }
        OriginFields.put(form, d);
        PhotographFields.put(form, d);
        return form;
    }

    /** The installation as typed; what cannot be read is noted in the form. */
    static InstallationDocument read(Form form) {
        String name = form.text("name");
        return new InstallationDocument(
                name == null ? "" : name,
                form.text("description"),
                RevisionField.read(form, "layout"),
                RevisionField.read(form, "adhesive"),
                form.text("adhesiveClass"),
                RevisionField.read(form, "printRun"),
                form.choice("material", PrintMaterial.class),
                form.text("installedOn"),
                new ConditionsDocument(
                        form.number("conditions.skinTemperatureC"),
                        form.number("conditions.relativeHumidityPercent"),
                        form.choice("conditions.surfaceFinish", SurfaceFinish.class)),
                form.text("doneBy"),
                list(form, LEFT_OFF, at -> deviceOrNone(form, at)),
                new TolerancesDocument(
                        form.number("tolerances.positionMm"),
                        form.number("tolerances.angleDeg"),
                        form.number("tolerances.heightMm")),
                list(form, SAMPLES, at -> sample(form, at)),
                form.checked("invented"),
                OriginFields.read(form),
                PhotographFields.read(form));
    }

    private static DeviceAt deviceOrNone(Form form, String at) {
        DeviceAt device = DeviceFields.read(form, at);
        return device == null ? new DeviceAt(null, null, null) : device;
    }

    private static SampleDocument sample(Form form, String at) {
        return new SampleDocument(
                DeviceFields.read(form, at + ".at"),
                form.number(at + ".chordPositionMm"),
                form.number(at + ".angleDeg"),
                form.number(at + ".heightMm"));
    }

    private static <T> List<T> list(Form form, String path, Function<String, T> read) {
        List<T> entries = new ArrayList<>();
        for (int i = 0; i < form.size(path); i++) {
            entries.add(read.apply(path + "[" + i + "]"));
        }
        return entries;
    }
}
