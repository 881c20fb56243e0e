package org.vanewright.campaign;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.record.RevisionRef;
import org.vanewright.record.photograph.PhotographRules;
import org.vanewright.record.provenance.ProvenanceRules;

/** What must hold of a campaign by itself, before its airframe and layouts are looked up. */
public final class CampaignRules {
    public static final int MAX_CONFIGURATIONS = 6;
    public static final int MAX_INSTRUMENTS = 20;
    public static final int MAX_ROLES = 12;
    /** So many fit into a draft. */
    public static final int MAX_POINTS = 2000;

    public static final int MAX_HANDLING = 90;
    public static final int MAX_REPEATS = 200;

    private static final double MAX_FT = 20_000;

    private CampaignRules() {}

    public static List<FieldProblem> check(CampaignDocument campaign) {
        Checks checks = new Checks();
        checks.text("name", campaign.name(), 120);
        checks.optionalText("description", campaign.description(), 4_000);
        checks.addUnder("plan", plan(campaign.plan()));
        points(campaign, checks);
        handling(campaign, checks);
        TuftRules.check(campaign, checks);
        ProvenanceRules.check(campaign, campaign.provenance()).forEach(checks::add);
        PhotographRules.check(campaign.photographs()).forEach(checks::add);
        return checks.problems();
    }

    private static List<FieldProblem> plan(PlanDocument plan) {
        Checks checks = new Checks();
        reference("airframe", plan.airframe(), checks);
        checks.present("measure", plan.measure(), "STALL_SPEED, CRUISE_SPEED or CLIMB_RATE");
        configurations(plan.configurations(), checks);
        conditions(plan.conditions(), checks);
        instruments(plan.instruments(), checks);
        roles(plan.roles(), checks);
        checks.addUnder("repeats", repeats(plan.repeats(), plan.measure()));
        CalibrationDocument calibration = plan.calibration();
        if (calibration.campaign() != null) {
            reference("calibration.campaign", calibration.campaign(), checks);
        }
        Integer degree = calibration.degree();
        checks.require(
                degree == null || degree == 1 || degree == 2, "calibration.degree", degree, "1 (line) or 2 (parabola)");
        return checks.problems();
    }

    private static void configurations(List<ConfigurationDocument> all, Checks checks) {
        boolean count = checks.require(
                !all.isEmpty() && all.size() <= MAX_CONFIGURATIONS,
                "configurations",
                all.size(),
                "1 to " + MAX_CONFIGURATIONS + " configurations");
        Set<String> keys = new HashSet<>();
        for (int i = 0; count && i < all.size(); i++) {
            ConfigurationDocument each = all.get(i);
            String at = "configurations[" + i + "]";
            String key = each.key();
            boolean known = key != null && key.matches("[A-Z][A-Z0-9]{0,3}");
            checks.require(known, at + ".key", key, "a capital letter, then up to three letters or digits, such as A");
            checks.require(!known || keys.add(key), at + ".key", key, "a key that no other configuration has");
            checks.text(at + ".name", each.name(), 80);
            if (i == 0) {
                checks.require(
                        each.layout() == null,
                        at + ".layout",
                        text(each.layout()),
                        "no layout: the unmodified aircraft is flown first");
            } else {
                reference(at + ".layout", each.layout(), checks);
            }
        }
    }

    private static void conditions(ConditionsDocument c, Checks checks) {
        checks.text("conditions.flaps", c.flaps(), 80);
        checks.text("conditions.power", c.power(), 80);
        checks.text("conditions.centreOfGravity", c.centreOfGravity(), 120);
        boolean low = checks.range("conditions.lowestFt", c.lowestFt(), 0, MAX_FT, "ft");
        boolean high = checks.range("conditions.highestFt", c.highestFt(), 0, MAX_FT, "ft");
        if (low && high) {
            checks.require(
                    value(c.highestFt()) > value(c.lowestFt()),
                    "conditions.highestFt",
                    c.highestFt(),
                    "more than the lowest altitude");
        }
        checks.range("conditions.standardMassKg", c.standardMassKg(), 60, 5700, "kg");
    }

    private static void instruments(List<InstrumentDocument> all, Checks checks) {
        checks.require(
                all.size() <= MAX_INSTRUMENTS,
                "instruments",
                all.size(),
                "at most " + MAX_INSTRUMENTS + " instruments");
        for (int i = 0; i < all.size(); i++) {
            InstrumentDocument each = all.get(i);
            String at = "instruments[" + i + "]";
            checks.text(at + ".name", each.name(), 120);
            checks.present(at + ".quantity", each.quantity(), "what it shows");
            InstrumentDocument.Quantity shown = each.quantity();
            checks.range(
                    at + ".resolution",
                    each.resolution(),
                    0.0001,
                    shown == null ? 1000 : shown.coarsest(),
                    shown == null ? "" : shown.unit());
            if (each.calibratedOn() != null) {
                checks.day(at + ".calibratedOn", each.calibratedOn());
            }
        }
    }

    private static void roles(List<RoleDocument> all, Checks checks) {
        checks.require(all.size() <= MAX_ROLES, "roles", all.size(), "at most " + MAX_ROLES + " roles");
        for (int i = 0; i < all.size(); i++) {
            checks.text("roles[" + i + "].role", all.get(i).role(), 80);
            checks.optionalText("roles[" + i + "].who", all.get(i).who(), 120);
        }
    }

    private static List<FieldProblem> repeats(RepeatsDocument r, @Nullable Measure measure) {
        Checks checks = new Checks();
        String unit = measure == null ? "" : measure.unit();
        checks.range("scatter", r.scatter(), 0.01, 1000, unit);
        checks.range("change", r.change(), 0.01, 1000, unit);
        checks.optionalRange("significance", r.significance(), 0.001, 0.2, "");
        checks.optionalRange("power", r.power(), 0.5, 0.99, "");
        Integer each = r.perConfiguration();
        checks.require(
                each != null && each >= 1 && each <= MAX_REPEATS,
                "perConfiguration",
                each,
                "a whole number from 1 to " + MAX_REPEATS);
        Integer together = r.perSortie();
        checks.require(
                together == null || together >= 1 && together <= 50,
                "perSortie",
                together,
                "a whole number from 1 to 50");
        checks.present("order", r.order(), "one of the orders of flying");
        checks.require(
                r.seed() == null || r.seed() >= 0 && r.seed() <= 999_999,
                "seed",
                r.seed(),
                "a whole number from 0 to 999999");
        return checks.problems();
    }

    private static void points(CampaignDocument campaign, Checks checks) {
        List<PointDocument> points = campaign.points();
        checks.require(points.size() <= MAX_POINTS, "points", points.size(), "at most " + MAX_POINTS + " test points");
        Set<String> ids = new HashSet<>();
        for (int i = 0; i < Math.min(points.size(), MAX_POINTS); i++) {
            PointDocument point = points.get(i);
            checks.addUnder("points", i, PointRules.check(point, campaign.plan()));
            String id = point.id();
            if (id != null && !ids.add(id)) {
                checks.require(false, "points[" + i + "].id", id, "an id that no other test point has");
            }
        }
    }

    private static void handling(CampaignDocument campaign, Checks checks) {
        List<HandlingDocument> all = campaign.handling();
        checks.require(all.size() <= MAX_HANDLING, "handling", all.size(), "at most " + MAX_HANDLING + " ratings");
        for (int i = 0; i < Math.min(all.size(), MAX_HANDLING); i++) {
            HandlingDocument each = all.get(i);
            String at = "handling[" + i + "]";
            checks.require(
                    campaign.plan().configuration(each.configuration()).isPresent(),
                    at + ".configuration",
                    each.configuration(),
                    "the key of one of the configurations");
            checks.text(at + ".task", each.task(), 120);
            Integer rating = each.rating();
            checks.require(
                    rating != null && rating >= 1 && rating <= 10,
                    at + ".rating",
                    rating,
                    "a whole number from 1 to 10");
            checks.optionalText(at + ".remark", each.remark(), 1000);
        }
    }

    private static void reference(String field, @Nullable RevisionRef ref, Checks checks) {
        boolean ok = ref != null && ref.slug() != null && !ref.slug().isBlank() && ref.revision() >= 1;
        checks.require(ok, field, text(ref), "a record and its revision, such as {\"slug\":\"…\",\"revision\":1}");
    }

    private static @Nullable String text(@Nullable RevisionRef ref) {
        return ref == null ? null : ref.slug() + ", revision " + ref.revision();
    }

    private static double value(@Nullable Double number) {
        return number == null ? Double.NaN : number;
    }
}
