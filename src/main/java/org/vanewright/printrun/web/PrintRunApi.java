package org.vanewright.printrun.web;

import io.swagger.v3.oas.annotations.tags.Tag;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import org.vanewright.printrun.PrintRunDocument;
import org.vanewright.printrun.PrintRunService;
import org.vanewright.record.web.RecordApi;

/** Print runs as JSON. */
@RestController
@RequestMapping("/api/v1/print-runs")
@Tag(name = "Print runs", description = "What was printed, how long it took and how good it came out.")
class PrintRunApi extends RecordApi<PrintRunDocument> {
    PrintRunApi(PrintRunService runs) {
        super(runs);
    }
}
