package org.vanewright.layout;

import java.util.List;
import java.util.Objects;
import org.springframework.stereotype.Service;
import org.vanewright.airframe.AirframeService;
import org.vanewright.device.DeviceService;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.photograph.Photographs;
import org.vanewright.record.RecordDesk;
import org.vanewright.record.RecordService;
import org.vanewright.record.RevisionHead;
import org.vanewright.record.RevisionRef;

/** Layouts and their revisions. A layout is valid when its devices can be placed and its template drawn. */
@Service
public class LayoutService extends RecordService<LayoutDocument> {
    private final LayoutRepository layouts;
    private final LayoutPlanner planner;
    private final AirframeService airframes;
    private final DeviceService devices;
    private final Photographs photographs;

    LayoutService(
            LayoutRepository layouts,
            LayoutPlanner planner,
            AirframeService airframes,
            DeviceService devices,
            Photographs photographs,
            RecordDesk desk) {
        super("layout", "layouts", layouts, desk);
        this.layouts = layouts;
        this.planner = planner;
        this.airframes = airframes;
        this.devices = devices;
        this.photographs = photographs;
    }

    /** Published layouts for any revision of an airframe, newest first, without what they say. */
    public List<RevisionHead> headsOfAirframe(String airframeSlug, int most) {
        return layouts.headsOfAirframe(airframeSlug, most);
    }

    @Override
    protected List<FieldProblem> problems(LayoutDocument layout) {
        try {
            LayoutTemplates.requireDrawable(planner.plan(layout));
            return photographs.missing(layout.photographs());
        } catch (InvalidInputException e) {
            return e.problems();
        }
    }

    @Override
    protected List<FieldProblem> referenceProblems(LayoutDocument layout) {
        Checks checks = new Checks();
        requirePublic("airframe", layout.airframe(), airframes.find(layout.airframe()), checks);
        for (int i = 0; i < layout.rows().size(); i++) {
            RevisionRef device = Objects.requireNonNull(layout.rows().get(i).device());
            requirePublic("rows[" + i + "].device", device, devices.find(device), checks);
        }
        return checks.problems();
    }
}
