package org.vanewright.campaign.web;

import static org.vanewright.platform.page.Quantity.MASS;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.campaign.LegDocument;
import org.vanewright.campaign.PointDocument;
import org.vanewright.campaign.PointKind;
import org.vanewright.campaign.PointRules;
import org.vanewright.campaign.PointSource;
import org.vanewright.campaign.Recording;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.page.UnitSystem;

/** Between a test point and its form. Fields are named as in the document. */
final class PointForms {
    private static final int LEGS_OFFERED = 4;

    private PointForms() {}

    /**
     * A form for the next test point.
     *
     * @param before the last one of that kind, whose flight most likely goes on; null for the first
     */
    static Form next(UnitSystem units, PointKind kind, @Nullable PointDocument before, String firstKey) {
        Form form = new Form(units);
        form.put("id", Recording.newId())
                .put("kind", kind)
                .put("configuration", firstKey)
                .put("sortie", "1");
        if (before != null) {
            form.put("configuration", before.configuration())
                    .put("sortie", before.sortie())
                    .put("block", before.block())
                    .put("startMassKg", MASS, before.startMassKg())
                    .put("massKg", MASS, before.startMassKg() == null ? before.massKg() : null)
                    .put("pressureAltitudeFt", before.pressureAltitudeFt())
                    .put("outsideAirTemperatureC", before.outsideAirTemperatureC())
                    .put("powerPercent", before.powerPercent());
        }
        return kind == PointKind.AIRSPEED ? withLegs(form) : form;
    }

    private static Form withLegs(Form form) {
        for (int i = form.size("legs"); i < LEGS_OFFERED; i++) {
            form.put("legs[" + i + "].groundSpeedKt", "");
        }
        return form;
    }

    static Form of(PointDocument p, UnitSystem units) {
        Form form = new Form(units);
        form.put("id", p.id())
                .put("kind", p.kind())
                .put("configuration", p.configuration())
                .put("sortie", p.sortie())
                .put("block", p.block())
                .put("at", p.at())
                .put("indicatedAirspeedKt", p.indicatedAirspeedKt())
                .put("pressureAltitudeFt", p.pressureAltitudeFt())
                .put("outsideAirTemperatureC", p.outsideAirTemperatureC())
                .put("massKg", MASS, p.massKg())
                .put("startMassKg", MASS, p.startMassKg())
                .put("fuelUsedKg", MASS, p.fuelUsedKg())
                .put("loadFactor", p.loadFactor())
                .put("entryRateKtPerS", p.entryRateKtPerS())
                .put("warningAirspeedKt", p.warningAirspeedKt())
                .put("wingDropDeg", p.wingDropDeg())
                .put("powerPercent", p.powerPercent())
                .put("climbRateFtPerMin", p.climbRateFtPerMin())
                .put("remark", p.remark());
        for (int i = 0; i < p.legs().size(); i++) {
            LegDocument leg = p.legs().get(i);
            form.put("legs[" + i + "].groundSpeedKt", leg.groundSpeedKt())
                    .put("legs[" + i + "].trackDeg", leg.trackDeg())
                    .put("legs[" + i + "].headingDeg", leg.headingDeg());
        }
        return p.kind() == PointKind.AIRSPEED ? withLegs(form) : form;
    }

    /** The test point as typed; what cannot be read is noted in the form. */
    static PointDocument read(Form form, PointSource source) {
        String id = form.text("id");
        return new PointDocument(
                id == null ? Recording.newId() : id,
                form.choice("kind", PointKind.class),
                form.text("configuration"),
                form.integer("sortie"),
                form.integer("block"),
                form.text("at"),
                form.number("indicatedAirspeedKt"),
                form.number("pressureAltitudeFt"),
                form.number("outsideAirTemperatureC"),
                form.number("massKg", MASS),
                form.number("startMassKg", MASS),
                form.number("fuelUsedKg", MASS),
                form.number("loadFactor"),
                form.number("entryRateKtPerS"),
                form.number("warningAirspeedKt"),
                form.number("wingDropDeg"),
                form.number("powerPercent"),
                form.number("climbRateFtPerMin"),
                legs(form),
                form.text("remark"),
                source);
    }

    private static List<LegDocument> legs(Form form) {
        List<LegDocument> legs = new ArrayList<>();
        for (int i = 0; i < Math.min(form.size("legs"), PointRules.MAX_LEGS); i++) {
            String at = "legs[" + i + "].";
            LegDocument leg = new LegDocument(
                    form.number(at + "groundSpeedKt"), form.number(at + "trackDeg"), form.number(at + "headingDeg"));
            if (leg.groundSpeedKt() != null || leg.trackDeg() != null || leg.headingDeg() != null) {
                legs.add(leg);
            }
        }
        return legs;
    }
}
