package org.vanewright.inspection.web;

import io.swagger.v3.oas.annotations.tags.Tag;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import org.vanewright.inspection.InspectionDocument;
import org.vanewright.inspection.InspectionService;
import org.vanewright.record.web.RecordApi;

/** Inspections as JSON. */
@RestController
@RequestMapping("/api/v1/inspections")
@Tag(
        name = "Inspections",
        description = "What was seen of installations after how many hours: devices missing or loose, and why.")
class InspectionApi extends RecordApi<InspectionDocument> {
    InspectionApi(InspectionService inspections) {
        super(inspections);
    }
}
