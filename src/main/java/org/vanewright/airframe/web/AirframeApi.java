package org.vanewright.airframe.web;

import io.swagger.v3.oas.annotations.tags.Tag;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import org.vanewright.airframe.AirframeDocument;
import org.vanewright.airframe.AirframeService;
import org.vanewright.record.web.RecordApi;

/** Airframes as JSON. */
@RestController
@RequestMapping("/api/v1/airframes")
@Tag(name = "Airframes", description = "Aircraft as clubs describe them, as immutable revisions.")
class AirframeApi extends RecordApi<AirframeDocument> {
    AirframeApi(AirframeService airframes) {
        super(airframes);
    }
}
