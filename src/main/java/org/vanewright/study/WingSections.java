package org.vanewright.study;

import java.util.ArrayList;
import java.util.List;
import org.vanewright.engineering.flow.SectionFlow;
import org.vanewright.engineering.section.Section;
import org.vanewright.engineering.wing.WingPanel;
import org.vanewright.engineering.wing.WingShape;

/**
 * The sections of a wing, each ready for many flights. Between the ends of a panel the nearer end's section stands; between
 * the roots the root section goes on.
 */
final class WingSections {
    private final WingShape shape;
    private final List<Ends> panels = new ArrayList<>();
    private final List<End> distinct = new ArrayList<>();

    /** A section with its panels and factors; {@code chordMm} is that of its first use. */
    record End(Section section, SectionFlow flow, double chordMm) {}

    /** Both ends of a panel. */
    record Ends(End inner, End outer) {}

    WingSections(WingShape shape) {
        this.shape = shape;
        for (WingPanel panel : shape.panels()) {
            End inner = end(panel.innerSection(), panel.innerChordMm());
            panels.add(new Ends(inner, end(panel.outerSection(), panel.outerChordMm())));
        }
    }

    private End end(Section section, double chordMm) {
        for (End end : distinct) {
            if (end.section().sameShapeAs(section)) {
                return end;
            }
        }
        End end = new End(section, SectionFlow.of(section, SectionFlow.USUAL_PANELS), chordMm);
        distinct.add(end);
        return end;
    }

    WingShape shape() {
        return shape;
    }

    List<Ends> panels() {
        return panels;
    }

    /** Sections of different shape, each with factors of its own. */
    List<End> distinct() {
        return distinct;
    }

    End at(double stationMm) {
        int index = shape.panelIndex(stationMm);
        Ends ends = panels.get(index);
        return shape.panels().get(index).spanFraction(stationMm) <= 0.5 ? ends.inner() : ends.outer();
    }

    double chordMm(double stationMm) {
        double inside = Math.max(stationMm, shape.innerStationMm());
        return shape.panels().get(shape.panelIndex(inside)).chordMm(inside);
    }
}
