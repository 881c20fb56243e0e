package org.vanewright.retention.web;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.Parameters;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.servlet.http.HttpServletRequest;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RestController;
import org.vanewright.retention.RetentionService;

/** Retention across the club as JSON. */
@RestController
@Tag(name = "Retention", description = "How long devices stay on, from published installations and inspections.")
class RetentionApi {
    private final RetentionService retention;

    RetentionApi(RetentionService retention) {
        this.retention = retention;
    }

    @Operation(summary = "How long devices stay on, across the club")
    @Parameters({
        @Parameter(name = "by", description = "ALL, ADHESIVE (where absent), MATERIAL, FINISH or ROW"),
        @Parameter(name = "count", description = "ALL (where absent) or NOT_HANDLING: without knocks, ice and washing"),
        @Parameter(name = "invented", description = "true takes demonstration data in beside others")
    })
    @GetMapping(path = "/api/v1/retention", produces = MediaType.APPLICATION_JSON_VALUE)
    RetentionBody show(@Parameter(hidden = true) HttpServletRequest asked) {
        return RetentionBody.of(retention.study(RetentionAsked.query(RetentionAsked.form(asked))));
    }
}
