package org.vanewright.airframe;

import java.util.List;
import java.util.stream.Stream;
import org.springframework.stereotype.Service;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.photograph.Photographs;
import org.vanewright.record.RecordDesk;
import org.vanewright.record.RecordService;

/** Airframes and their revisions. */
@Service
public class AirframeService extends RecordService<AirframeDocument> {
    private final Photographs photographs;

    AirframeService(AirframeRepository airframes, Photographs photographs, RecordDesk desk) {
        super("airframe", "airframes", airframes, desk);
        this.photographs = photographs;
    }

    @Override
    protected List<FieldProblem> problems(AirframeDocument airframe) {
        return Stream.concat(
                        AirframeRules.check(airframe).stream(), photographs.missing(airframe.photographs()).stream())
                .toList();
    }
}
