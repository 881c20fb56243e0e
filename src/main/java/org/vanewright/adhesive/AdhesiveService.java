package org.vanewright.adhesive;

import java.util.List;
import java.util.stream.Stream;
import org.springframework.stereotype.Service;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.photograph.Photographs;
import org.vanewright.record.RecordDesk;
import org.vanewright.record.RecordService;

/** Adhesives and their revisions. */
@Service
public class AdhesiveService extends RecordService<AdhesiveDocument> {
    private final Photographs photographs;

    AdhesiveService(AdhesiveRepository adhesives, Photographs photographs, RecordDesk desk) {
        super("adhesive", "adhesives", adhesives, desk);
        this.photographs = photographs;
    }

    @Override
    protected List<FieldProblem> problems(AdhesiveDocument adhesive) {
        return Stream.concat(
                        AdhesiveRules.check(adhesive).stream(), photographs.missing(adhesive.photographs()).stream())
                .toList();
    }
}
