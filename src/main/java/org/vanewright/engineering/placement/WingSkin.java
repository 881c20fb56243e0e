package org.vanewright.engineering.placement;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.geometry.Point2;
import org.vanewright.engineering.section.SurfaceSide;
import org.vanewright.engineering.unroll.FlatSkin;
import org.vanewright.engineering.unroll.SkinStation;
import org.vanewright.engineering.unroll.Unroller;
import org.vanewright.engineering.wing.WingPanel;
import org.vanewright.engineering.wing.WingShape;

/** Finds places on the skin of a whole wing; unrolls each panel once, when first asked. Not thread-safe. */
public final class WingSkin {
    private final WingShape wing;
    private final Map<SurfaceSide, @Nullable FlatSkin[]> flat = new EnumMap<>(SurfaceSide.class);

    public WingSkin(WingShape wing) {
        this.wing = wing;
        for (SurfaceSide side : SurfaceSide.values()) {
            flat.put(side, new FlatSkin[wing.panels().size()]);
        }
    }

    /**
     * A place on the skin.
     *
     * @param panel index of the panel
     * @param chordMm local chord
     * @param xOverC fraction of it
     * @param arcMm along the skin from the leading edge
     * @param wholeArcMm from leading to trailing edge
     * @param radiusMm of the skin along the chord
     */
    public record Spot(int panel, double chordMm, double xOverC, double arcMm, double wholeArcMm, double radiusMm) {}

    /** The place at a span station; null where the position lies beyond the trailing edge or the station off the wing. */
    @Nullable
    public Spot locate(SurfaceSide side, double stationMm, ChordPosition position) {
        if (stationMm < wing.innerStationMm() || stationMm > wing.outerStationMm()) {
            return null;
        }
        int index = wing.panelIndex(stationMm);
        WingPanel panel = wing.panels().get(index);
        FlatSkin skin = flat(side, index);
        double span = panel.spanFraction(stationMm);
        double wholeArc = skin.arcLengthMm(span);
        SkinStation at = station(skin, span, wholeArc, position);
        return at == null
                ? null
                : new Spot(
                        index,
                        panel.chordMm(stationMm),
                        at.chordFraction(),
                        at.arcMm(),
                        wholeArc,
                        at.curvatureRadiusMm());
    }

    @Nullable
    private static SkinStation station(FlatSkin skin, double span, double wholeArc, ChordPosition position) {
        if (position instanceof ChordPosition.DistanceAlongSkin distance) {
            return distance.distanceMm() > wholeArc ? null : skin.stationByArc(span, distance.distanceMm());
        }
        return skin.station(span, ((ChordPosition.FractionOfChord) position).xOverC());
    }

    /** The unrolled panel. */
    public FlatSkin flat(SurfaceSide side, int panel) {
        @Nullable FlatSkin[] skins = Objects.requireNonNull(flat.get(side));
        FlatSkin skin = skins[panel];
        if (skin == null) {
            skin = Unroller.unroll(wing.panels().get(panel), side);
            skins[panel] = skin;
        }
        return skin;
    }

    /** A device's outline on the flat sheet of its panel. */
    List<Point2> onSheet(Station station, List<Point2> outline) {
        WingPanel panel = wing.panels().get(station.panel());
        FlatSkin skin = flat(station.side(), station.panel());
        double span = panel.spanFraction(station.stationMm());
        SkinStation at = skin.stationByArc(span, station.arcMm());
        return DevicePose.of(at, station.angleDeg()).toSheet(outline);
    }
}
