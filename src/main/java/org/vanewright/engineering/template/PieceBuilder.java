package org.vanewright.engineering.template;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.vanewright.engineering.drawing.Drawing;
import org.vanewright.engineering.drawing.Shape;
import org.vanewright.engineering.placement.RowPlan;
import org.vanewright.engineering.placement.Station;
import org.vanewright.engineering.placement.Wing;
import org.vanewright.engineering.section.SurfaceSide;

/** Draws one piece: outline, bases, ends and lettering. */
final class PieceBuilder {
    private final TemplateRow row;
    private final TemplateLabel label;
    private final Wing wing;

    PieceBuilder(TemplateRow row, TemplateLabel label, Wing wing) {
        this.row = row;
        this.label = label;
        this.wing = wing;
    }

    Drawing draw(String name, SheetFrame frame, List<Station> stations) {
        PieceExtent extent = new PieceExtent(frame, row, stations);
        extent.requireRegisterClearOfBases();
        List<Shape> shapes = new ArrayList<>(new PieceOutline(frame, extent, row.register()).shapes());
        shapes.addAll(new PieceMarks(frame, extent, row.plan().footprint()).shapes(stations));
        shapes.addAll(PieceEnds.shapes(frame, extent));
        List<String> lines = lines(name, frame, extent.fromMm(), extent.toMm());
        shapes.addAll(new PieceLettering(frame, extent).shapes(lines));
        return new Drawing(title(name), description(name, stations), shapes);
    }

    private List<String> lines(String name, SheetFrame frame, double fromMm, double toMm) {
        String strain = frame.skin().maximumStrain() == 0
                ? ""
                : String.format(
                        Locale.ROOT,
                        " · strain up to %.2f %%",
                        100 * frame.skin().maximumStrain());
        return List.of(
                place(wing, row.plan()) + " · ROW " + (row.plan().index() + 1) + " · "
                        + row.plan().name() + " · piece " + name,
                label.line(),
                row.deviceName() + " · " + PieceLettering.span(fromMm, toMm) + " from the centre line · "
                        + registerWords() + strain);
    }

    String registerWords() {
        return switch (row.register()) {
            case LEADING_EDGE -> "fold lies on the leading edge";
            case TRAILING_EDGE -> "rear edge lies on the trailing edge";
            case SPAR_LINE ->
                String.format(
                        Locale.ROOT, "register edge lies on the line at %.1f %% chord", 100 * row.registerXOverC());
        };
    }

    /** Such as {@code LEFT WING · UPPER SIDE}. */
    String place(Wing onWing, RowPlan plan) {
        return (label.mirrored() ? onWing.name() + " " : "")
                + label.surfaceName().toUpperCase(Locale.ROOT) + " · "
                + (plan.side() == SurfaceSide.UPPER ? "UPPER SIDE" : "LOWER SIDE");
    }

    String title(String name) {
        return label.layoutName() + " revision " + label.revision() + ", piece " + name;
    }

    private String description(String name, List<Station> stations) {
        return String.format(
                Locale.ROOT,
                "Full-size placement template, piece %s: %d bases of row %s on the %s, %s side, devices %d to %d.",
                name,
                stations.size(),
                row.plan().name(),
                (wing + " " + label.surfaceName()).toLowerCase(Locale.ROOT),
                row.plan().side().name().toLowerCase(Locale.ROOT),
                stations.get(0).number(),
                stations.get(stations.size() - 1).number());
    }
}
