package org.vanewright.bench.web;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import org.vanewright.bench.SolidCalculation;
import org.vanewright.bench.SolidRequest;
import org.vanewright.bench.SolidResult;

/** The solid of a design, in the format the caller accepts; JSON where any will do. */
@RestController
@RequestMapping(path = "/api/v1/calculations/solid", consumes = MediaType.APPLICATION_JSON_VALUE)
@Tag(name = Calculations.TAG)
class SolidCalculations {
    private static final String STL = "model/stl";
    private static final String THREE_MF = "model/3mf";
    private static final String SUMMARY = "The solid of a device design";
    private static final String DESCRIPTION = "A design as it would be published, name optional. Accept chooses figures"
            + " (application/json), binary STL in mm (model/stl) or 3MF (model/3mf).";

    private final SolidCalculation solid;

    SolidCalculations(SolidCalculation solid) {
        this.solid = solid;
    }

    @PostMapping(produces = MediaType.APPLICATION_JSON_VALUE)
    @Operation(summary = SUMMARY, description = DESCRIPTION)
    SolidResult figures(@RequestBody SolidRequest request) {
        return solid.figures(request);
    }

    @PostMapping(produces = STL)
    @Operation(summary = SUMMARY, description = DESCRIPTION)
    ResponseEntity<byte[]> stl(@RequestBody SolidRequest request) {
        return file(solid.stl(request), STL, "solid.stl");
    }

    @PostMapping(produces = THREE_MF)
    @Operation(summary = SUMMARY, description = DESCRIPTION)
    ResponseEntity<byte[]> threeMf(@RequestBody SolidRequest request) {
        return file(solid.threeMf(request), THREE_MF, "solid.3mf");
    }

    private static ResponseEntity<byte[]> file(byte[] bytes, String type, String name) {
        return ResponseEntity.ok()
                .contentType(MediaType.parseMediaType(type))
                .header(
                        HttpHeaders.CONTENT_DISPOSITION,
                        ContentDisposition.attachment().filename(name).build().toString())
                .body(bytes);
    }
}
