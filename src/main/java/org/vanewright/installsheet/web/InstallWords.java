package org.vanewright.installsheet.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.vanewright.adhesive.AdhesiveDocument;
import org.vanewright.adhesive.Temperatures;
import org.vanewright.engineering.placement.Wing;
import org.vanewright.installsheet.InstallFacts;
import org.vanewright.layout.LayoutPlan;
import org.vanewright.platform.page.Numbers;
import org.vanewright.printrun.PrintRunDocument;
import org.vanewright.printrun.PrintingDocument;
import org.vanewright.record.Revision;

/** The words of an install sheet. What has no source is common practice and says so. */
final class InstallWords {
    static final String PRACTICE = "Common practice, no source, unless a source is named.";

    static final List<String> BLANKS =
            List.of("Aircraft", "Date", "Place", "Fitted by", "Looked at by", "Skin temperature, °C", "Humidity, %");

    static final List<String> SURFACE = List.of(
            "Wash the strip of skin that the devices will stand on, a hand's width more all round; rinse, let dry.",
            "Degrease with the cleaner that the maker of the tape names, on a clean white cloth, one way only, a fresh face of"
                    + " the cloth for each stroke, until the cloth stays clean. Try it on a hidden place first: paint, dope"
                    + " and acrylic can suffer.",
            "From here on no finger touches the cleaned skin or the tape: skin oil spoils the bond. Clean gloves, and again"
                    + " where one slipped.",
            "Loose paint, wax, silicone polish and moisture hold no tape. Where the paint lifts, the device goes with it:"
                    + " stop and ask.");

    static final List<String> ORDER = List.of(
            "Read this sheet to its end. Have the layout agreed on and the work overseen as the aircraft's basis asks.",
            "Check prints: height, straight vanes, flat bases. Trim the edge that the raft left rough with a knife.",
            "Stick the tape to each base first, press it on, then trim it to the base's outline. Leave the other liner on.",
            "Measure the scale bars of every template sheet with a steel rule. Lay out all templates and gauges dry, both"
                    + " wings, before anything is stuck.",
            "Mark keep-outs. Measure the first and last station of each row against the table below.",
            "Clean and degrease, one row at a time.",
            "Place row by row, the left and the right wing in turn, from the root outward.",
            "Press each device. Let it dwell. Measure the sample. Count. Fill in the record.");

    static final List<String> CHECKS = List.of(
            "Template or gauge is for this row, this hand and this revision; scale bars measured",
            "Every print looked at; raft edge trimmed; tape trimmed to the base",
            "Keep-outs, vents, stall warning, drains and control gaps clear",
            "Skin cleaned and degreased; temperature and humidity written down",
            "Template taped down on its register line, no wrinkle",
            "Every device in its place, the mark or leading edge forward",
            "Every device pressed on its base for the time that the tape asks",
            "Devices counted, and the same number on the other wing",
            "Sample measured, within tolerance or corrected",
            "Dwell kept before flight and before washing");

    static final List<String> LIMITS = List.of(
            "Before every flight look at every device. One lost on one side can drop that wing: refit it, or take off the one"
                    + " that mirrors it, as the person who agreed to the modification decides.",
            "The tolerances grade care. They are predictions by the method stated, no limits of airworthiness.",
            "This sheet is no approval of a modification and no instruction for continued airworthiness. The aircraft's"
                    + " operating limitations, its local authority and licensed practice come first; no weight, speed or any"
                    + " other limit is raised by devices.");

    private InstallWords() {}

    static List<String> have(InstallFacts facts) {
        List<String> lines = new ArrayList<>();
        for (LayoutPlan.SurfacePlan surface : facts.plan().surfaces()) {
            surface.rows().forEach(row -> {
                int index = row.plan().index();
                int left = facts.covers(Wing.LEFT)
                        ? surface.placement().on(Wing.LEFT, index).size()
                        : 0;
                int right = facts.covers(Wing.RIGHT)
                        ? surface.placement().on(Wing.RIGHT, index).size()
                        : 0;
                lines.add(String.format(
                        Locale.ROOT,
                        "Row %d, %s: %d × %s, revision %d (%d left, %d right), and spares.",
                        index + 1,
                        row.plan().name(),
                        left + right,
                        row.deviceName(),
                        facts.plan().devices().get(index).number(),
                        left,
                        right));
            });
        }
        lines.add(
                "Templates of this revision, printed at 100 %, their scale bars measured; gauges where they are used.");
        lines.add(
                "Tape with its data sheet, sharp knife, cleaner, white cloths, clean gloves, masking tape, soft pencil.");
        lines.add("Steel rule with half millimetres, tape measure, square, thermometer for the skin.");
        return lines;
    }

    static List<String> adhesive(@Nullable Revision<AdhesiveDocument> given) {
        if (given == null) {
            return List.of(
                    "Tape, from its data sheet: ________________________________   batch: ________________",
                    "Skin and piece at application: from ______ °C to ______ °C.   Dwell before flight: ______ h.",
                    "Pressure: ______ for ______ s on each base.   In service: from ______ °C to ______ °C.");
        }
        AdhesiveDocument tape = given.content();
        List<String> lines = new ArrayList<>();
        lines.add(given.printedName() + ", revision " + given.number()
                + (tape.thicknessMm() == null ? "" : ", " + number(tape.thicknessMm()) + " mm thick")
                + (tape.invented() ? " (INVENTED, for demonstration)" : "") + ".   Batch: ________________");
        lines.add("Skin and piece at application: " + range(tape.application()) + ".   Dwell before flight: "
                + (tape.dwellHours() == null ? "______ h, from the data sheet" : number(tape.dwellHours()) + " h")
                + ".");
        lines.add("In service: " + range(tape.service())
                + ".   Pressure, from the data sheet of your tape: ______ for ______ s on each base.");
        lines.add("Figures as its record here states them; the data sheet of the tape at hand decides.");
        return lines;
    }

    static String run(@Nullable Revision<PrintRunDocument> given) {
        if (given == null) {
            return "________________________   Material: ____________   Printed on: ____________";
        }
        PrintingDocument printing = given.content().printing();
        return given.printedName() + ", revision " + given.number()
                + (printing.material() == null ? "" : ", " + printing.material().label())
                + (printing.on() == null ? "" : ", printed on " + printing.on())
                + (given.content().invented() ? " (INVENTED, for demonstration)" : "");
    }

    private static String range(@Nullable Temperatures t) {
        return t == null
                ? "from ______ °C to ______ °C, from the data sheet"
                : "from " + end(t.lowestC()) + " °C to " + end(t.highestC()) + " °C";
    }

    private static String end(@Nullable Double celsius) {
        return celsius == null ? "______" : number(celsius);
    }

    /** To be adapted by the aircraft's owner; states what was done and nothing more. */
    static String recordSentence(InstallFacts facts) {
        int devices = facts.masses().stream().mapToInt(m -> m.count()).sum();
        return "“On ____________ , ______ vortex generators (as drawn: " + devices + ") were bonded to the surface"
                + (facts.plan().surfaces().size() == 1 ? " " : "s ")
                + String.join(
                        ", ",
                        facts.plan().surfaces().stream()
                                .map(LayoutPlan.SurfacePlan::name)
                                .toList())
                + " of this aircraft in accordance with layout "
                + facts.layout().slug() + ", revision "
                + facts.layout().number() + ", SHA-256 " + facts.layout().shortHash()
                + ", with ________________ tape, batch ________ . Mass added ______ at arm ______ ; weight and balance"
                + " record amended. Basis of the modification and agreed by: ________________________ .”";
    }

    static String number(double figure) {
        return Numbers.trimmed(figure, 2).replace('-', '−');
    }
}
