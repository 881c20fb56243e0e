package org.vanewright.sharing;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;
import org.vanewright.airframe.AirframeDocument;
import org.vanewright.airframe.SurfaceDocument;
import org.vanewright.airframe.SurfaceDrawings;
import org.vanewright.campaign.CampaignDocument;
import org.vanewright.campaign.ConfigurationDocument;
import org.vanewright.device.DeviceDocument;
import org.vanewright.device.DeviceSolids;
import org.vanewright.engineering.drawing.Drawing;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.engineering.template.PlanWithDevices;
import org.vanewright.engineering.view.SolidView;
import org.vanewright.layout.LayoutDocument;
import org.vanewright.layout.LayoutPlan;
import org.vanewright.layout.LayoutPlanner;
import org.vanewright.layout.LayoutService;
import org.vanewright.platform.page.UnitSystem;
import org.vanewright.platform.page.Units;
import org.vanewright.record.RecordContent;

/** The drawing that says most of a record, for its card. */
@Component
class CardDrawings {
    private static final Units UNITS = new Units(UnitSystem.METRIC);

    private final LayoutService layouts;
    private final LayoutPlanner planner;
    private final DeviceSolids solids;

    CardDrawings(LayoutService layouts, LayoutPlanner planner, DeviceSolids solids) {
        this.layouts = layouts;
        this.planner = planner;
        this.solids = solids;
    }

    /** Empty for what is no shape, and for what cannot be drawn. */
    Optional<Drawing> of(RecordContent content) {
        try {
            if (content instanceof AirframeDocument airframe) {
                return wing(airframe);
            }
            if (content instanceof LayoutDocument layout) {
                return Optional.of(plan(layout));
            }
            if (content instanceof DeviceDocument device) {
                return Optional.of(SolidView.isometric(solids.exact(device.design()), device.name(), ""));
            }
            if (content instanceof CampaignDocument campaign) {
                return flown(campaign);
            }
            return Optional.empty();
        } catch (InvalidInputException e) {
            return Optional.empty();
        }
    }

    private static Optional<Drawing> wing(AirframeDocument airframe) {
        List<SurfaceDocument> surfaces = airframe.surfaces();
        Stream<SurfaceDocument> wings = surfaces.stream().filter(s -> s.kind() == SurfaceDocument.Kind.WING);
        return Stream.concat(wings, surfaces.stream())
                .findFirst()
                .map(s -> SurfaceDrawings.thumbnail(airframe.name(), s, UNITS));
    }

    private Drawing plan(LayoutDocument layout) {
        LayoutPlan plan = planner.plan(layout);
        LayoutPlan.SurfacePlan surface = plan.surfaces().get(0);
        Drawing bare = SurfaceDrawings.thumbnail(
                layout.name(), SurfaceDrawings.named(plan.airframe().content(), surface.name()), UNITS);
        return PlanWithDevices.add(
                bare, surface.shape().panels(), surface.mirrored(), surface.rows(), surface.placement());
    }

    private Optional<Drawing> flown(CampaignDocument campaign) {
        return campaign.plan().configurations().stream()
                .map(ConfigurationDocument::layout)
                .filter(Objects::nonNull)
                .findFirst()
                .flatMap(layouts::find)
                .map(layout -> plan(layout.content()));
    }
}
