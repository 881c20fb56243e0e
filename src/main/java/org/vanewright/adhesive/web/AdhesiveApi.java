package org.vanewright.adhesive.web;

import io.swagger.v3.oas.annotations.tags.Tag;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import org.vanewright.adhesive.AdhesiveDocument;
import org.vanewright.adhesive.AdhesiveService;
import org.vanewright.record.web.RecordApi;

/** Adhesives as JSON. */
@RestController
@RequestMapping("/api/v1/adhesives")
@Tag(name = "Adhesives", description = "Tapes and glues by class and measured property, as immutable revisions.")
class AdhesiveApi extends RecordApi<AdhesiveDocument> {
    AdhesiveApi(AdhesiveService adhesives) {
        super(adhesives);
    }
}
