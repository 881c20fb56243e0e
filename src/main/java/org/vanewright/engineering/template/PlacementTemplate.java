package org.vanewright.engineering.template;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.engineering.placement.Placement;
import org.vanewright.engineering.placement.Station;
import org.vanewright.engineering.placement.Wing;
import org.vanewright.engineering.placement.WingSkin;
import org.vanewright.engineering.unroll.FlatSkin;
import org.vanewright.engineering.wing.WingPanel;
import org.vanewright.engineering.wing.WingShape;

/**
 * The full-size placement template of a layout on one wing: for every row and panel one flat piece that is laid on the
 * skin and shows each base's place and angle.
 *
 * <p>Cylinders and cones unroll exactly; a twisted or blended panel is developed so that lengths along its row line
 * hold, and the piece carries the largest strain elsewhere.
 */
public final class PlacementTemplate {
    static final int MAX_PIECES = 60;

    private final WingShape wingShape;
    private final WingSkin skin;
    private final Placement placement;
    private final TemplateLabel label;

    public PlacementTemplate(WingShape wingShape, Placement placement, TemplateLabel label) {
        this.wingShape = wingShape;
        this.skin = new WingSkin(wingShape);
        this.placement = placement;
        this.label = label;
    }

    /**
     * Every piece of one wing, in order of row and panel.
     *
     * @throws InvalidInputException when a register line runs through the bases, or there are very many pieces
     */
    public List<TemplatePiece> pieces(List<TemplateRow> rows, Wing wing) {
        requireFewPieces(rows, wing);
        List<TemplatePiece> pieces = new ArrayList<>();
        for (TemplateRow row : rows) {
            Map<Integer, List<Station>> byPanel = byPanel(row, wing);
            byPanel.forEach((panel, stations) ->
                    pieces.add(piece(row, wing, panel, name(row, wing, panel, byPanel.size()), stations)));
        }
        return pieces;
    }

    /** Largest strain of a row's pieces on one wing, without drawing them; 0 where every panel unrolls exactly. */
    public double maximumStrain(TemplateRow row, Wing wing) {
        return byPanel(row, wing).entrySet().stream()
                .filter(e -> !wingShape.panels().get(e.getKey()).developable())
                .mapToDouble(
                        e -> frame(row, wing, e.getKey(), e.getValue()).skin().maximumStrain())
                .max()
                .orElse(0);
    }

    /** Unrolling a twisted panel of rough sections takes a second or two, so many of them would hold up everybody. */
    private void requireFewPieces(List<TemplateRow> rows, Wing wing) {
        int count = rows.stream().mapToInt(row -> byPanel(row, wing).size()).sum();
        if (count > MAX_PIECES) {
            throw new InvalidInputException(new FieldProblem(
                    "rows",
                    count + " template pieces",
                    "at most " + MAX_PIECES + " pieces a wing, one a row and panel"));
        }
    }

    private Map<Integer, List<Station>> byPanel(TemplateRow row, Wing wing) {
        return placement.on(wing, row.plan().index()).stream()
                .collect(Collectors.groupingBy(Station::panel, TreeMap::new, Collectors.toList()));
    }

    /** For every row on a constant-chord panel a short strip that is slid along; none for other rows. */
    public List<TemplatePiece> strips(List<TemplateRow> rows, Wing wing) {
        List<TemplatePiece> strips = new ArrayList<>();
        for (TemplateRow row : rows) {
            for (int panel : stripPanels(wingShape, placement, row, wing)) {
                strips.add(strip(row, wing, panel));
            }
        }
        return strips;
    }

    /** Whether any row has a strip on either wing. */
    public static boolean hasStrips(WingShape shape, Placement placement, List<TemplateRow> rows) {
        return rows.stream()
                .anyMatch(row -> !stripPanels(shape, placement, row, Wing.LEFT).isEmpty()
                        || !stripPanels(shape, placement, row, Wing.RIGHT).isEmpty());
    }

    private static List<Integer> stripPanels(WingShape shape, Placement placement, TemplateRow row, Wing wing) {
        return placement.on(wing, row.plan().index()).stream()
                .map(Station::panel)
                .distinct()
                .filter(panel -> StripPattern.suits(row, shape.panels().get(panel)))
                .toList();
    }

    private TemplatePiece piece(TemplateRow row, Wing wing, int panel, String name, List<Station> stations) {
        SheetFrame frame = frame(row, wing, panel, stations);
        return new TemplatePiece(
                name,
                wing,
                row.plan().index(),
                panel,
                new PieceBuilder(row, label, wing).draw(name, frame, stations),
                frame.skin().maximumStrain());
    }

    private TemplatePiece strip(TemplateRow row, Wing wing, int panel) {
        String name = name(row, wing, panel, wingShape.panels().size()) + " strip";
        List<Station> stations = placement.on(wing, row.plan().index()).stream()
                .filter(s -> s.panel() == panel)
                .toList();
        SheetFrame frame = frame(row, wing, panel, stations);
        return new TemplatePiece(
                name,
                wing,
                row.plan().index(),
                panel,
                new StripPattern(row, label, wing, frame).draw(name, stations, placement.notes()),
                0);
    }

    private SheetFrame frame(TemplateRow row, Wing wing, int index, List<Station> stations) {
        WingPanel panel = wingShape.panels().get(index);
        FlatSkin whole = skin.flat(row.plan().side(), index);
        SheetFrame frame = SheetFrame.of(whole, panel, row.plan().side(), wing);
        if (panel.developable()) {
            return frame;
        }
        LetteringBand band = LetteringBand.of(frame, row, PieceSpan.of(panel, row, stations));
        return SheetFrame.of(
                RowDevelopment.unroll(panel, row, whole, band),
                panel,
                row.plan().side(),
                wing);
    }

    private static String name(TemplateRow row, Wing wing, int panel, int panels) {
        String base = wing.name().substring(0, 1) + (row.plan().index() + 1);
        return panels > 1 ? base + "-" + (panel + 1) : base;
    }
}
