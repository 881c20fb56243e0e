package org.vanewright.campaign.web;

import static org.vanewright.platform.page.Quantity.MASS;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.vanewright.campaign.CalibrationDocument;
import org.vanewright.campaign.CampaignDocument;
import org.vanewright.campaign.ConditionsDocument;
import org.vanewright.campaign.ConfigurationDocument;
import org.vanewright.campaign.FlyingOrder;
import org.vanewright.campaign.HandlingDocument;
import org.vanewright.campaign.InstrumentDocument;
import org.vanewright.campaign.Measure;
import org.vanewright.campaign.PlanDocument;
import org.vanewright.campaign.PointDocument;
import org.vanewright.campaign.RepeatsDocument;
import org.vanewright.campaign.RoleDocument;
import org.vanewright.campaign.TuftGridDocument;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.form.OriginFields;
import org.vanewright.platform.form.PhotographFields;
import org.vanewright.platform.form.RevisionField;
import org.vanewright.platform.page.UnitSystem;

/**
 * Between a campaign's plan and its form. Fields are named by the document's own paths. What has been recorded is not in
 * it: test points have pages of their own.
 */
final class CampaignForms {
    static final String CONFIGURATIONS = "plan.configurations";
    static final String INSTRUMENTS = "plan.instruments";
    static final String ROLES = "plan.roles";

    private CampaignForms() {}

    /** A campaign on the clean stall of one layout, to start from; its numbers are common practice, no source. */
    static Form blank(UnitSystem units, String airframe) {
        Form form = new Form(units);
        form.put("plan.airframe", airframe)
                .put("plan.measure", Measure.STALL_SPEED)
                .put(CONFIGURATIONS + "[0].key", "A")
                .put(CONFIGURATIONS + "[0].name", "Unmodified")
                .put("plan.conditions.flaps", "up")
                .put("plan.conditions.power", "idle")
                .put("plan.repeats.perConfiguration", "8")
                .put("plan.repeats.perSortie", "2")
                .put("plan.repeats.significance", RepeatsDocument.SIGNIFICANCE)
                .put("plan.repeats.power", RepeatsDocument.POWER)
                .put("plan.repeats.order", FlyingOrder.RANDOMISED_BLOCKS)
                .put("plan.repeats.seed", "1")
                .put("plan.calibration.degree", "1")
                .put(INSTRUMENTS + "[0].name", "Airspeed indicator")
                .put(INSTRUMENTS + "[0].quantity", InstrumentDocument.Quantity.AIRSPEED)
                .put(ROLES + "[0].role", "Pilot");
        addConfiguration(form);
        return form;
    }

    static void addConfiguration(Form form) {
        int index = form.size(CONFIGURATIONS);
        String at = CONFIGURATIONS + "[" + index + "]";
        form.put(at + ".key", String.valueOf((char) ('A' + index)))
                .put(at + ".name", "")
                .put(at + ".layout", "");
    }

    static void addInstrument(Form form) {
        form.put(INSTRUMENTS + "[" + form.size(INSTRUMENTS) + "].name", "");
    }

    static void addRole(Form form) {
        form.put(ROLES + "[" + form.size(ROLES) + "].role", "");
    }

    static Form of(CampaignDocument campaign, UnitSystem units) {
        Form form = new Form(units);
        form.put("name", campaign.name())
                .put("description", campaign.description())
                .put("invented", campaign.invented() ? "true" : "");
        PlanDocument plan = campaign.plan();
        form.put("plan.airframe", RevisionField.value(plan.airframe())).put("plan.measure", plan.measure());
        putConfigurations(form, plan.configurations());
        putConditions(form, plan.conditions());
        for (int i = 0; i < plan.instruments().size(); i++) {
            InstrumentDocument each = plan.instruments().get(i);
            String at = INSTRUMENTS + "[" + i + "]";
            form.put(at + ".name", each.name())
                    .put(at + ".quantity", each.quantity())
                    .put(at + ".resolution", each.resolution())
                    .put(at + ".calibratedOn", each.calibratedOn());
        }
        for (int i = 0; i < plan.roles().size(); i++) {
            form.put(ROLES + "[" + i + "].role", plan.roles().get(i).role())
                    .put(ROLES + "[" + i + "].who", plan.roles().get(i).who());
        }
        putRepeats(form, plan.repeats());
        form.put(
                        "plan.calibration.campaign",
                        RevisionField.value(plan.calibration().campaign()))
                .put("plan.calibration.degree", plan.calibration().degree());
        OriginFields.put(form, campaign);
        PhotographFields.put(form, campaign);
        return form;
    }

    private static void putConfigurations(Form form, List<ConfigurationDocument> configurations) {
        for (int i = 0; i < configurations.size(); i++) {
            ConfigurationDocument each = configurations.get(i);
            String at = CONFIGURATIONS + "[" + i + "]";
            form.put(at + ".key", each.key())
                    .put(at + ".name", each.name())
                    .put(at + ".layout", RevisionField.value(each.layout()));
        }
    }

    private static void putConditions(Form form, ConditionsDocument conditions) {
        form.put("plan.conditions.flaps", conditions.flaps())
                .put("plan.conditions.power", conditions.power())
                .put("plan.conditions.centreOfGravity", conditions.centreOfGravity())
                .put("plan.conditions.lowestFt", conditions.lowestFt())
                .put("plan.conditions.highestFt", conditions.highestFt())
                .put("plan.conditions.standardMassKg", MASS, conditions.standardMassKg());
    }

    private static void putRepeats(Form form, RepeatsDocument repeats) {
        form.put("plan.repeats.scatter", repeats.scatter())
                .put("plan.repeats.change", repeats.change())
                .put("plan.repeats.significance", repeats.significance())
                .put("plan.repeats.power", repeats.power())
                .put("plan.repeats.perConfiguration", repeats.perConfiguration())
                .put("plan.repeats.perSortie", repeats.perSortie())
                .put("plan.repeats.order", repeats.order())
                .put("plan.repeats.seed", repeats.seed());
    }

    /**
     * The campaign as typed; what cannot be read is noted in the form.
     *
     * @param before holds what has been recorded, which the form does not show
     */
    static CampaignDocument read(Form form, @Nullable CampaignDocument before) {
        String name = form.text("name");
        List<PointDocument> points = before == null ? List.of() : before.points();
        List<HandlingDocument> handling = before == null ? List.of() : before.handling();
        List<TuftGridDocument> tufts = before == null ? List.of() : before.tufts();
        return new CampaignDocument(
                name == null ? "" : name,
                form.text("description"),
                readPlan(form),
                points,
                handling,
                tufts,
                form.checked("invented"),
                OriginFields.read(form),
                PhotographFields.read(form));
    }

    private static PlanDocument readPlan(Form form) {
        return new PlanDocument(
                RevisionField.read(form, "plan.airframe"),
                form.choice("plan.measure", Measure.class),
                list(form, CONFIGURATIONS, at -> readConfiguration(form, at)),
                new ConditionsDocument(
                        form.text("plan.conditions.flaps"),
                        form.text("plan.conditions.power"),
                        form.text("plan.conditions.centreOfGravity"),
                        form.number("plan.conditions.lowestFt"),
                        form.number("plan.conditions.highestFt"),
                        form.number("plan.conditions.standardMassKg", MASS)),
                list(form, INSTRUMENTS, at -> readInstrument(form, at)),
                list(form, ROLES, at -> new RoleDocument(form.text(at + ".role"), form.text(at + ".who"))),
                readRepeats(form),
                new CalibrationDocument(
                        RevisionField.read(form, "plan.calibration.campaign"),
                        form.integer("plan.calibration.degree")));
    }

    private static ConfigurationDocument readConfiguration(Form form, String at) {
        return new ConfigurationDocument(
                form.text(at + ".key"), form.text(at + ".name"), RevisionField.read(form, at + ".layout"));
    }

    private static InstrumentDocument readInstrument(Form form, String at) {
        return new InstrumentDocument(
                form.text(at + ".name"),
                form.choice(at + ".quantity", InstrumentDocument.Quantity.class),
                form.number(at + ".resolution"),
                form.text(at + ".calibratedOn"));
    }

    private static RepeatsDocument readRepeats(Form form) {
        return new RepeatsDocument(
                form.number("plan.repeats.scatter"),
                form.number("plan.repeats.change"),
                form.number("plan.repeats.significance"),
                form.number("plan.repeats.power"),
                form.integer("plan.repeats.perConfiguration"),
                form.integer("plan.repeats.perSortie"),
                form.choice("plan.repeats.order", FlyingOrder.class),
                form.integer("plan.repeats.seed"));
    }

    private static <T> List<T> list(Form form, String path, Function<String, T> read) {
        List<T> entries = new ArrayList<>();
        for (int i = 0; i < form.size(path); i++) {
            entries.add(read.apply(path + "[" + i + "]"));
        }
        return entries;
    }
}
