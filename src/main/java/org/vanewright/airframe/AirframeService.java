package org.vanewright.airframe;

import java.util.List;
import org.springframework.stereotype.Service;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.record.RecordService;
import org.vanewright.record.WritePolicy;

/** Airframes and their revisions. */
@Service
public class AirframeService extends RecordService<AirframeDocument> {
    AirframeService(AirframeRepository airframes, WritePolicy policy) {
        super("airframe", airframes, policy);
    }

    @Override
    protected List<FieldProblem> problems(AirframeDocument airframe) {
        return AirframeRules.check(airframe);
    }
}
