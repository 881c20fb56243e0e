package org.vanewright.evidence.web;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.Parameters;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.vanewright.engineering.input.Checks;
import org.vanewright.evidence.EvidenceService;
import org.vanewright.evidence.EvidenceStudy;
import org.vanewright.evidence.EvidenceStudy.Item;

/** Published comparisons as JSON. */
@RestController
@Tag(name = "Evidence", description = "Every published comparison, and what comparable ones come to.")
class EvidenceApi {
    private static final int MOST = 200;

    private final EvidenceService evidence;

    EvidenceApi(EvidenceService evidence) {
        this.evidence = evidence;
    }

    @Operation(summary = "Every published comparison of one quantity, with a summary of those that are comparable")
    @Parameters({
        @Parameter(name = "quantity", description = "STALL_SPEED (where absent), CRUISE_SPEED or CLIMB_RATE"),
        @Parameter(name = "group", description = "Key of the comparable ones to sum up; where absent the largest"),
        @Parameter(name = "scale", description = "PERCENT (where absent) of the unmodified aircraft's, or UNIT"),
        @Parameter(name = "method", description = "REML (where absent) or DERSIMONIAN_LAIRD")
    })
    @GetMapping(path = "/api/v1/evidence", produces = MediaType.APPLICATION_JSON_VALUE)
    EvidenceBody show(
            @Parameter(hidden = true) HttpServletRequest asked,
            @Parameter(description = "nextCursor of an earlier page")
                    @RequestParam(name = "cursor", required = false)
                    @Nullable
                    String cursor,
            @Parameter(description = "Most findings wanted, 1 to 200")
                    @RequestParam(name = "limit", defaultValue = "100")
                    int limit) {
        Checks checks = new Checks();
        checks.require(limit >= 1 && limit <= MOST, "limit", limit, "a whole number from 1 to " + MOST);
        checks.throwIfAny();
        EvidenceStudy study = evidence.study(EvidenceAsked.query(EvidenceAsked.form(asked)));
        List<Item> items = study.items();
        int from = cursor == null ? 0 : after(cursor, items);
        int to = Math.min(items.size(), from + limit);
        String next = to < items.size() ? items.get(to - 1).finding().reference() : null;
        return EvidenceBody.of(study, items.subList(from, to), next);
    }

    private static int after(String cursor, List<Item> items) {
        for (int i = 0; i < items.size(); i++) {
            if (items.get(i).finding().reference().equals(cursor)) {
                return i + 1;
            }
        }
        Checks checks = new Checks();
        checks.require(false, "cursor", cursor, "the nextCursor of an earlier page, unchanged");
        checks.throwIfAny();
        return 0;
    }
}
