package org.vanewright.airframe;

import java.util.List;
import org.springframework.stereotype.Service;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.record.RecordDesk;
import org.vanewright.record.RecordService;

/** Airframes and their revisions. */
@Service
public class AirframeService extends RecordService<AirframeDocument> {
    AirframeService(AirframeRepository airframes, RecordDesk desk) {
        super("airframe", "airframes", airframes, desk);
    }

    @Override
    protected List<FieldProblem> problems(AirframeDocument airframe) {
        return AirframeRules.check(airframe);
    }
}
