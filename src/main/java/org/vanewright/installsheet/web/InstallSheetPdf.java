package org.vanewright.installsheet.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.drawing.PdfDocumentSpec;
import org.vanewright.engineering.drawing.PdfWriter;
import org.vanewright.engineering.drawing.sheet.FlowingSheet;
import org.vanewright.engineering.drawing.sheet.FlowingSheet.Table;
import org.vanewright.engineering.drawing.sheet.Paper;
import org.vanewright.engineering.drawing.sheet.TextColumn.Paragraph;
import org.vanewright.engineering.placement.PlacementTolerance;
import org.vanewright.engineering.placement.PlacementTolerance.Limit;
import org.vanewright.engineering.placement.Wing;
import org.vanewright.installsheet.InstallFacts;
import org.vanewright.installsheet.SetMass;
import org.vanewright.layout.StationTolerance;
import org.vanewright.record.Revision;

/** Sets the install sheet on pages. */
final class InstallSheetPdf {
    private static final double TEXT_MM = 2.4;
    private static final double SMALL_MM = 2.1;
    private static final double WRITE_MM = 7;
    private static final double FIGURES_MM = 42;
    private static final int SYMMETRY_ROWS = 8;

    private final InstallFacts facts;
    private final FlowingSheet sheet;

    private InstallSheetPdf(InstallFacts facts, Paper paper) {
        this.facts = facts;
        this.sheet = new FlowingSheet(paper.portrait(), footer(facts));
    }

    /** @param cautions of the service, in the order of weight */
    static byte[] of(InstallFacts facts, Paper paper, List<String> cautions) {
        InstallSheetPdf pdf = new InstallSheetPdf(facts, paper);
        pdf.head();
        pdf.work();
        pdf.steps();
        pdf.checks();
        pdf.measurements();
        pdf.symmetry();
        pdf.masses();
        pdf.record(cautions);
        String title = "Install sheet: " + facts.layout().printedName() + ", revision "
                + facts.layout().number();
        return PdfWriter.write(new PdfDocumentSpec(
                title,
                "What to have, steps, check list, measurements with tolerances, mass and moment.",
                facts.layout().createdAt(),
                pdf.sheet.pages()));
    }

    private static List<String> footer(InstallFacts facts) {
        return List.of(
                "Layout " + facts.layout().slug() + " · revision "
                        + facts.layout().number() + " · SHA-256 "
                        + facts.layout().shortHash() + (facts.invented() ? " · INVENTED, for demonstration" : "")
                        + (facts.layout().isReleased() ? "" : " · " + Revision.NOT_PUBLISHED),
                "No approval. The aircraft's operating limitations, local authority and licensed practice come first.");
    }

    private void head() {
        sheet.set(List.of(
                Paragraph.plain("Install sheet", 5),
                Paragraph.plain(facts.layout().printedName(), 3.6),
                Paragraph.plain(
                        "Revision " + facts.layout().number() + " · "
                                + (facts.wing() == null
                                        ? "both wings"
                                        : facts.wing() == Wing.LEFT ? "LEFT wing" : "RIGHT wing")
                                + " · for " + facts.plan().airframe().content().name() + ", revision "
                                + facts.plan().airframe().number(),
                        TEXT_MM)));
        if (facts.invented()) {
            sheet.set(List.of(Paragraph.plain("INVENTED, for demonstration: do not build from it.", TEXT_MM)));
        }
        List<List<String>> rows =
                List.of(InstallWords.BLANKS.stream().map(b -> "").toList());
        sheet.table(new Table(
                InstallWords.BLANKS, InstallWords.BLANKS.stream().map(b -> 1.0).toList(), rows, WRITE_MM + 1));
        sheet.set(List.of(Paragraph.plain("Print run: " + InstallWords.run(facts.run()), TEXT_MM)));
    }

    private void work() {
        list("What to have", InstallWords.have(facts));
        numbered("Order of work", InstallWords.ORDER);
        list("Surface", InstallWords.SURFACE);
        sheet.heading("Adhesive");
        sheet.set(InstallWords.adhesive(facts.adhesive()).stream()
                .map(l -> new Paragraph("", l, TEXT_MM, 0))
                .toList());
        sheet.set(List.of(Paragraph.plain(InstallWords.PRACTICE, SMALL_MM)));
    }

    private void steps() {
        StepFigures figures = StepFigures.of(facts.plan());
        sheet.need(FIGURES_MM + 40);
        sheet.heading("Placing with the template");
        sheet.figures(
                List.of(figures::register, figures::peel, figures::press),
                List.of(
                        "1. Register. Lay the template's register line on its line of the wing: where that is the leading"
                                + " edge, fold it there and wrap the flap under. Span mark on the span station. Tape it"
                                + " down, no wrinkle.",
                        "2. Peel. Hold the device by its vane over its cut-out, leading edge forward, draw the liner off,"
                                + " touch no adhesive. Set the front edge down first, then the rest.",
                        "3. Press. Straight down on the base on both sides of the vane, never on the vane, with the"
                                + " pressure and time of the data sheet. Lift the template only when the row is done."),
                FIGURES_MM,
                SMALL_MM);
        sheet.set(List.of(Paragraph.plain(
                "With a placing gauge: push it home against the leading edge, its inboard face against the base before; press"
                        + " the base against the front of the slot and the side that faces it; draw the gauge off straight"
                        + " forward. Pushed home a slot stands up to its clearance farther aft.",
                SMALL_MM)));
    }

    private void checks() {
        sheet.heading("Check list");
        List<List<String>> rows = new ArrayList<>();
        for (String check : InstallWords.CHECKS) {
            rows.add(List.of(String.valueOf(rows.size() + 1), check, "", ""));
        }
        sheet.table(new Table(
                List.of("No.", "Done", "Left, initials", "Right, initials"),
                List.of(0.6, 7.0, 1.5, 1.5),
                rows,
                WRITE_MM));
    }

    private void measurements() {
        sheet.heading("Measured on the wing");
        sheet.set(List.of(Paragraph.plain(
                "A sample of each row. Along the skin: from the leading edge to the middle of the base. Angle: to the local"
                        + " chordwise direction, toe-in positive. Height: of the vane over its base. ± is the tolerance;"
                        + " the letter says how it is known: E from the effect, R as fine as a steel rule shows, W widest"
                        + " allowed, engineering judgement.",
                SMALL_MM)));
        List<List<String>> rows = new ArrayList<>();
        for (StationTolerance s : facts.sample()) {
            PlacementTolerance t = s.tolerance();
            rows.add(List.of(
                    s.device() + " " + (s.wing() == Wing.LEFT ? "L" : "R"),
                    String.valueOf(s.row()),
                    figure("%.0f", s.spanStationMm()),
                    nominal("%.1f", s.arcFromLeadingEdgeMm(), t.arc()),
                    "",
                    nominal("%.1f", s.angleDeg(), t.angle()),
                    "",
                    nominal("%.1f", s.heightMm(), t.height()),
                    "",
                    ""));
        }
        sheet.table(new Table(
                List.of(
                        "Device",
                        "Row",
                        "Span station",
                        "Along the skin, mm",
                        "Measured",
                        "Angle, °",
                        "Measured",
                        "Height, mm",
                        "Measured",
                        "Initials"),
                List.of(0.9, 0.6, 1.1, 1.7, 1.3, 1.6, 1.3, 1.5, 1.3, 1.1),
                rows,
                WRITE_MM));
        PlacementTolerance first = facts.sample().get(0).tolerance();
        sheet.set(List.of(Paragraph.plain(
                PlacementTolerance.METHOD
                        + String.format(
                                Locale.ROOT,
                                " Share: %.0f %% (engineering judgement, no source). Speed: %.0f m/s, from the airframe's"
                                        + " record where it states one. For the first line above the layer is %.1f mm thick"
                                        + " and height over thickness %.2f; the flat plate has no pressure gradient.",
                                100 * first.share(),
                                first.speedMps(),
                                first.layerThicknessMm(),
                                first.heightToThickness()),
                SMALL_MM)));
    }

    private static String nominal(String format, double value, Limit limit) {
        String letter = switch (limit.basis()) {
            case EFFECT -> "E";
            case RULE -> "R";
            case WIDEST -> "W";
        };
        return figure(format, value) + " ± " + figure("%.1f", limit.plusMinus()) + " " + letter;
    }

    private static String figure(String format, double value) {
        return String.format(Locale.ROOT, format, value).replace('-', '−');
    }

    private void symmetry() {
        sheet.heading("Left against right");
        sheet.set(List.of(Paragraph.plain(
                "The same number on both wings, and the same place. Where left and right differ by more than the tolerance"
                        + " above, find out why before the next device.",
                SMALL_MM)));
        List<List<String>> rows = new ArrayList<>();
        for (StationTolerance s : facts.sample()) {
            boolean once = s.wing() == facts.sample().get(0).wing();
            if (once && rows.size() < SYMMETRY_ROWS) {
                rows.add(List.of(s.row() + ", no. " + s.device(), "", "", "", "", "", ""));
            }
        }
        sheet.table(new Table(
                List.of(
                        "Row, device",
                        "Span from centre line, left",
                        "right",
                        "Along the skin, left",
                        "right",
                        "Angle, left",
                        "right"),
                List.of(1.2, 1.6, 1.2, 1.5, 1.2, 1.2, 1.2),
                rows,
                WRITE_MM));
    }

    private void masses() {
        sheet.heading("Mass and moment of the whole set");
        List<List<String>> rows = new ArrayList<>();
        double mass = 0;
        double moment = 0;
        boolean whole = true;
        for (SetMass m : facts.masses()) {
            Double grams = m.massG();
            Double about = m.momentKgMm();
            whole = whole && grams != null;
            mass += grams == null ? 0 : grams;
            moment += about == null ? 0 : about;
            rows.add(List.of(
                    m.row() + ", " + m.surface(),
                    m.left() + " + " + m.right(),
                    figure("%.2f cm³", m.volumeMm3() / 1000),
                    m.densityKgM3() == null ? "not stated" : figure("%.0f", m.densityKgM3()),
                    or("%.2f", m.eachG()),
                    or("%.0f", grams),
                    figure("%.0f", m.meanArmMm()),
                    or("%.2f", about),
                    figure("%.0f cm²", m.tapeAreaMm2() / 100)));
        }
        rows.add(List.of(
                "Devices, all rows",
                "",
                "",
                "",
                "",
                whole ? figure("%.0f", mass) : "",
                "",
                whole ? figure("%.2f", moment) : "",
                ""));
        rows.add(List.of("Tape, weighed", "", "", "", "", "", "", "", ""));
        rows.add(List.of("Set, weighed", "", "", "", "", "", "", "", ""));
        sheet.table(new Table(
                List.of(
                        "Row, surface",
                        "Left + right",
                        "Volume",
                        "Density, kg/m³",
                        "Each, g",
                        "Mass, g",
                        "Mean arm, mm",
                        "Moment, kg mm",
                        "Tape area"),
                List.of(1.7, 1.1, 1.1, 1.1, 0.9, 1.0, 1.1, 1.2, 1.0),
                rows,
                WRITE_MM - 1));
        sheet.set(List.of(
                Paragraph.plain(SetMass.METHOD, SMALL_MM),
                Paragraph.plain(
                        "The mass of the tape is not in its record: weigh a piece of known area. Datum of the surface lies"
                                + " at arm ________ of the aircraft's datum. Both wings are counted, whichever wing this"
                                + " sheet is for.",
                        SMALL_MM)));
    }

    private static String or(String format, @Nullable Double value) {
        return value == null ? "" : figure(format, value);
    }

    private void record(List<String> cautions) {
        sheet.heading("For the aircraft's record");
        sheet.set(List.of(
                Paragraph.plain(
                        "A sentence to be adapted by the aircraft's owner and by whoever may sign for the work:",
                        SMALL_MM),
                Paragraph.plain(InstallWords.recordSentence(facts), TEXT_MM)));
        list("Cautions and limits", InstallWords.LIMITS);
        sheet.set(cautions.stream().map(c -> Paragraph.item("–", c, SMALL_MM)).toList());
    }

    private void list(String heading, List<String> lines) {
        sheet.heading(heading);
        sheet.set(lines.stream().map(l -> Paragraph.item("–", l, TEXT_MM)).toList());
    }

    private void numbered(String heading, List<String> lines) {
        sheet.heading(heading);
        List<Paragraph> items = new ArrayList<>();
        for (String line : lines) {
            items.add(Paragraph.item((items.size() + 1) + ".", line, TEXT_MM));
        }
        sheet.set(items);
    }
}
