package org.vanewright.layout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.stereotype.Component;
import org.vanewright.airframe.AirframeDocument;
import org.vanewright.airframe.AirframeService;
import org.vanewright.airframe.KeepOutDocument;
import org.vanewright.airframe.KeepOutSide;
import org.vanewright.airframe.SurfaceDocument;
import org.vanewright.airframe.Surfaces;
import org.vanewright.device.DeviceDocument;
import org.vanewright.device.DeviceService;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.engineering.placement.Placer;
import org.vanewright.engineering.placement.RowPlan;
import org.vanewright.engineering.template.TemplateRow;
import org.vanewright.engineering.wing.KeepOut;
import org.vanewright.engineering.wing.WingShape;
import org.vanewright.record.RecordContent;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;

/** Looks up what a layout names and places its devices. */
@Component
public class LayoutPlanner {
    private static final Logger LOG = LoggerFactory.getLogger(LayoutPlanner.class);

    private final AirframeService airframes;
    private final DeviceService devices;

    public LayoutPlanner(AirframeService airframes, DeviceService devices) {
        this.airframes = airframes;
        this.devices = devices;
    }

    /** @throws InvalidInputException naming every field that stands in the way */
    public LayoutPlan plan(LayoutDocument layout) {
        return plan(layout, airframes::find, devices::find);
    }

    /**
     * Plans published layouts that a list shows, with what they name looked up for all of them at once.
     *
     * @return by revision; those that cannot be placed are left out
     */
    public Map<RevisionRef, LayoutPlan> plans(List<Revision<LayoutDocument>> layouts) {
        Map<RevisionRef, Revision<AirframeDocument>> carrying = byRef(airframes.allPublic(
                layouts.stream().map(r -> r.content().airframe()).distinct().toList()));
        Map<RevisionRef, Revision<DeviceDocument>> carried = byRef(devices.allPublic(layouts.stream()
                .flatMap(r -> r.content().rows().stream())
                .flatMap(row -> Stream.ofNullable(row.device()))
                .distinct()
                .toList()));
        Map<RevisionRef, LayoutPlan> plans = new HashMap<>();
        for (Revision<LayoutDocument> each : layouts) {
            try {
                plans.put(
                        each.ref(),
                        plan(
                                each.content(),
                                ref -> Optional.ofNullable(carrying.get(ref)),
                                ref -> Optional.ofNullable(carried.get(ref))));
            } catch (InvalidInputException e) {
                LOG.warn("{} cannot be placed: {}", each.ref(), e.problems());
            }
        }
        return plans;
    }

    private static <T extends RecordContent> Map<RevisionRef, Revision<T>> byRef(List<Revision<T>> revisions) {
        return revisions.stream().collect(Collectors.toMap(Revision::ref, Function.identity()));
    }

    private LayoutPlan plan(
            LayoutDocument layout,
            Function<RevisionRef, Optional<Revision<AirframeDocument>>> airframes,
            Function<RevisionRef, Optional<Revision<DeviceDocument>>> devices) {
        Checks checks = new Checks();
        LayoutRules.check(layout).forEach(checks::add);
        checks.throwIfAny();
        Revision<AirframeDocument> airframe = airframes
                .apply(layout.airframe())
                .orElseThrow(() -> new InvalidInputException(unknown("airframe", layout.airframe(), "airframe")));
        List<Revision<DeviceDocument>> found = devices(layout, devices, checks);
        Map<String, List<Integer>> bySurface = bySurface(layout, airframe.content(), checks);
        checks.throwIfAny();
        List<LayoutPlan.SurfacePlan> surfaces = new ArrayList<>();
        bySurface.forEach((name, indices) -> surfaces.add(surface(layout, airframe.content(), found, name, indices)));
        return new LayoutPlan(airframe, found, surfaces);
    }

    private static List<Revision<DeviceDocument>> devices(
            LayoutDocument layout, Function<RevisionRef, Optional<Revision<DeviceDocument>>> devices, Checks checks) {
        List<Revision<DeviceDocument>> found = new ArrayList<>();
        for (int i = 0; i < layout.rows().size(); i++) {
            RevisionRef ref = Objects.requireNonNull(layout.rows().get(i).device());
            String field = "rows[" + i + "].device";
            devices.apply(ref).ifPresentOrElse(found::add, () -> checks.add(unknown(field, ref, "device")));
        }
        return found;
    }

    private static Map<String, List<Integer>> bySurface(
            LayoutDocument layout, AirframeDocument airframe, Checks checks) {
        Map<String, List<Integer>> bySurface = new LinkedHashMap<>();
        for (int i = 0; i < layout.rows().size(); i++) {
            String name = Objects.requireNonNull(layout.rows().get(i).surface());
            int index = i;
            Surfaces.named(airframe, name)
                    .ifPresentOrElse(
                            s -> bySurface
                                    .computeIfAbsent(s.label(), k -> new ArrayList<>())
                                    .add(index),
                            () -> checks.add(new FieldProblem(
                                    "rows[" + index + "].surface",
                                    name,
                                    "a surface of the airframe: " + names(airframe))));
        }
        return bySurface;
    }

    private static LayoutPlan.SurfacePlan surface(
            LayoutDocument layout,
            AirframeDocument airframe,
            List<Revision<DeviceDocument>> devices,
            String name,
            List<Integer> indices) {
        SurfaceDocument surface = Surfaces.named(airframe, name).orElseThrow();
        boolean mirrored = surface.kind() == null || surface.kind().mirrored();
        WingShape shape = shape(surface);
        List<TemplateRow> rows = new ArrayList<>();
        for (int i : indices) {
            rows.add(RowPlans.of(i, layout.rows().get(i), devices.get(i).content(), mirrored));
        }
        List<RowPlan> plans = rows.stream().map(TemplateRow::plan).toList();
        return new LayoutPlan.SurfacePlan(name, mirrored, shape, rows, Placer.place(shape, plans));
    }

    /** One half of a surface, with its keep-outs. */
    public static WingShape shape(SurfaceDocument surface) {
        List<KeepOut> keepOuts =
                surface.keepOuts().stream().map(LayoutPlanner::keepOut).toList();
        return new WingShape(Surfaces.toWing(surface), keepOuts);
    }

    private static KeepOut keepOut(KeepOutDocument k) {
        return new KeepOut(
                Objects.requireNonNull(k.fromMm()),
                Objects.requireNonNull(k.toMm()),
                k.side() != KeepOutSide.LOWER,
                k.side() != KeepOutSide.UPPER,
                Objects.requireNonNull(k.reason()));
    }

    private static String names(AirframeDocument airframe) {
        return String.join(
                ", ", airframe.surfaces().stream().map(SurfaceDocument::label).toList());
    }

    private static FieldProblem unknown(String field, RevisionRef ref, String kind) {
        return new FieldProblem(field, ref.slug() + " revision " + ref.revision(), "an existing " + kind + " revision");
    }
}
