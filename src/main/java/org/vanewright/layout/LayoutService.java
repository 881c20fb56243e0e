package org.vanewright.layout;

import java.util.List;
import org.springframework.stereotype.Service;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.record.RecordService;
import org.vanewright.record.WritePolicy;

/** Layouts and their revisions. A layout is valid when its devices can be placed and its template drawn. */
@Service
public class LayoutService extends RecordService<LayoutDocument> {
    private final LayoutPlanner planner;

    LayoutService(LayoutRepository layouts, LayoutPlanner planner, WritePolicy policy) {
        super("layout", layouts, policy);
        this.planner = planner;
    }

    @Override
    protected List<FieldProblem> problems(LayoutDocument layout) {
        try {
            LayoutTemplates.requireDrawable(planner.plan(layout));
            return List.of();
        } catch (InvalidInputException e) {
            return e.problems();
        }
    }
}
