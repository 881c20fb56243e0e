package org.vanewright.engineering.section;

class UploadedSectionTest extends SectionContract {
    private static final SectionSpec SPEC = CoordinateFile.parse(
            "Cambered, as uploaded\n" + CoordinateFileTest.lines(SplinedSectionTest.sampled("4415", 70), 100, "\t"));

    @Override
    Section section() {
        return Sections.of(SPEC);
    }
}
