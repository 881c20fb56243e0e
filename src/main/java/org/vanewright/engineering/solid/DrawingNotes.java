package org.vanewright.engineering.solid;

import static org.vanewright.engineering.solid.DimensionLines.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.vanewright.engineering.solid.DeviceDesign.BaseOutline;
import org.vanewright.engineering.solid.DeviceDesign.Planform;

/** What a three-view drawing says in words: everything that carries no dimension line. */
final class DrawingNotes {
    private DrawingNotes() {}

    static List<String> of(Dimensions d) {
        List<String> notes = new ArrayList<>();
        notes.add(vane(d));
        if (d.paired()) {
            notes.add("Pair: each vane at " + figure(Math.abs(Math.toDegrees(d.toeIn()))) + "° to the base, "
                    + (d.toeIn() >= 0 ? "toe-in (leading edges towards each other)" : "toe-out") + ", gap "
                    + figure(d.gap()) + " between mid-length points");
        }
        notes.add(base(d));
        if (d.undersideCurvature() != 0) {
            notes.add("Underside: cylinder of radius " + figure(Math.abs(1 / d.undersideCurvature())) + ", "
                    + (d.undersideCurvature() > 0 ? "for a bulging skin" : "for a hollow skin")
                    + "; thickness at its thinnest");
        }
        if (d.footed()) {
            notes.add("Foot for printing: " + figure(d.footWidth()) + " wide at the trailing edge, sloped "
                    + figure(Math.toDegrees(d.footAngle())) + "°");
        }
        return notes;
    }

    private static String vane(Dimensions d) {
        StringBuilder note = new StringBuilder("Vane: " + words(d.planform()) + ", " + figure(d.height()) + " high, "
                + figure(d.length()) + " long, " + figure(d.thickness()) + " thick");
        if (d.planform() == Planform.SWEPT_TRAPEZIUM) {
            note.append(", tip ").append(figure(d.tipLength()));
        }
        note.append("; leading edge ").append(words(d.leadingEdge()));
        note.append(", trailing edge ").append(words(d.trailingEdge()));
        radius(note, "tip radius", d.tipRadius());
        radius(note, "fillet", d.fillet());
        return note.toString();
    }

    private static String base(Dimensions d) {
        StringBuilder note = new StringBuilder("Base: " + words(d.outline()));
        if (d.outline() == BaseOutline.ROUNDED_RECTANGLE) {
            radius(note, "corner radius", d.cornerRadius());
        }
        radius(note, "edge bevel at 45°", d.bevel());
        note.append(d.flush() ? "; rear end square, flush with the trailing edge" : "");
        note.append(d.indexMark() ? "; raised mark points forward" : "");
        return note.toString();
    }

    private static void radius(StringBuilder note, String name, double mm) {
        if (mm > 0) {
            note.append(", ").append(name).append(' ').append(figure(mm));
        }
    }

    private static String words(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
