package org.vanewright.installation.web;

import io.swagger.v3.oas.annotations.tags.Tag;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import org.vanewright.installation.InstallationDocument;
import org.vanewright.installation.InstallationService;
import org.vanewright.record.web.RecordApi;

/** Installations as JSON. */
@RestController
@RequestMapping("/api/v1/installations")
@Tag(name = "Installations", description = "Layouts that were put on an aircraft, with what and how well.")
class InstallationApi extends RecordApi<InstallationDocument> {
    InstallationApi(InstallationService installations) {
        super(installations);
    }
}
