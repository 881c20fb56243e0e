package org.vanewright.engineering.section;

class ClosedTrailingEdgeTest extends SectionContract {
    @Override
    Section section() {
        return Sections.of(new SectionSpec("6409", SectionSpec.TrailingEdge.CLOSED, null, null));
    }
}
