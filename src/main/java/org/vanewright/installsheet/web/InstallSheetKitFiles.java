package org.vanewright.installsheet.web;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;
import org.vanewright.engineering.drawing.sheet.Paper;
import org.vanewright.installsheet.InstallFacts;
import org.vanewright.installsheet.InstallSheets;
import org.vanewright.kit.KitFile;
import org.vanewright.kit.KitFiles;
import org.vanewright.layout.LayoutDocument;
import org.vanewright.platform.page.Cautions;
import org.vanewright.record.Revision;

/** The install sheet in the kit of a layout; adhesive and print run are left to be filled in. */
@Component
class InstallSheetKitFiles implements KitFiles<LayoutDocument> {
    private final InstallSheets sheets;
    private final Cautions cautions;

    InstallSheetKitFiles(InstallSheets sheets, Cautions cautions) {
        this.sheets = sheets;
        this.cautions = cautions;
    }

    @Override
    public String kind() {
        return "layout";
    }

    @Override
    public List<KitFile> of(Revision<LayoutDocument> layout) {
        return Stream.of(Paper.A4, Paper.LETTER)
                .map(paper -> new KitFile(
                        "install-sheet-" + paper.name().toLowerCase(Locale.ROOT) + ".pdf",
                        "application/pdf",
                        "Install sheet, " + paper.label(),
                        () -> pdf(layout, paper)))
                .toList();
    }

    private byte[] pdf(Revision<LayoutDocument> layout, Paper paper) {
        InstallFacts facts = sheets.of(layout, null, null, null);
        return InstallSheetPdf.of(facts, paper, cautions.all(facts.invented()));
    }
}
