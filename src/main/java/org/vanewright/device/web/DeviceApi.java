package org.vanewright.device.web;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.springframework.web.server.ResponseStatusException;
import org.vanewright.device.DeviceDocument;
import org.vanewright.device.DeviceService;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;
import org.vanewright.record.web.Contributors;
import org.vanewright.record.web.RevisionBody;
import org.vanewright.record.web.RevisionResponses;
import org.vanewright.record.web.RevisionSummary;
import org.vanewright.record.web.Verification;

/** Devices as JSON. */
@RestController
@RequestMapping("/api/v1/devices")
@Tag(name = "Devices", description = "The printed pieces that clubs share, as immutable revisions.")
class DeviceApi {
    private static final String PLURAL = "devices";

    private final DeviceService devices;

    DeviceApi(DeviceService devices) {
        this.devices = devices;
    }

    @Operation(summary = "Published devices, newest first, by cursor")
    @GetMapping
    RevisionSummary.Page list(
            @RequestParam(name = "cursor", required = false) @Nullable String cursor,
            @RequestParam(name = "limit", defaultValue = "50") int limit) {
        return RevisionSummary.Page.of(devices.list(cursor, limit));
    }

    @Operation(summary = "Publish a new device")
    @PostMapping
    ResponseEntity<RevisionBody<DeviceDocument>> create(@RequestBody DeviceDocument device) {
        return RevisionResponses.created(PLURAL, devices.create(device, Contributors.OPEN_EDITING, null));
    }

    @Operation(summary = "The published revision")
    @GetMapping("/{slug}")
    ResponseEntity<RevisionBody<DeviceDocument>> latest(@PathVariable("slug") String slug) {
        return RevisionResponses.ok(devices.published(slug));
    }

    @Operation(summary = "Every revision, newest first")
    @GetMapping("/{slug}/revisions")
    List<RevisionSummary> history(@PathVariable("slug") String slug) {
        devices.published(slug);
        return devices.history(slug).stream().map(RevisionSummary::of).toList();
    }

    /** The next revision; {@code If-Match} names the one it changes by its entity tag. */
    @Operation(summary = "Publish the next revision")
    @PostMapping("/{slug}/revisions")
    ResponseEntity<RevisionBody<DeviceDocument>> revise(
            @PathVariable("slug") String slug,
            @RequestHeader(name = "If-Match", required = false) @Nullable String ifMatch,
            @RequestBody DeviceDocument device) {
        Revision<DeviceDocument> current = devices.published(slug);
        if (ifMatch == null) {
            throw new ResponseStatusException(
                    HttpStatus.PRECONDITION_REQUIRED, "If-Match must name the entity tag of the revision you change.");
        }
        if (!RevisionResponses.matches(ifMatch, current)) {
            throw new ResponseStatusException(
                    HttpStatus.PRECONDITION_FAILED, "Revision " + current.number() + " is published by now.");
        }
        return RevisionResponses.created(PLURAL, devices.revise(current.ref(), device, Contributors.OPEN_EDITING));
    }

    @Operation(summary = "One exact revision")
    @GetMapping("/{slug}/revisions/{number}")
    ResponseEntity<RevisionBody<DeviceDocument>> revision(
            @PathVariable("slug") String slug, @PathVariable("number") int number) {
        return RevisionResponses.ok(devices.exactly(new RevisionRef(slug, number)));
    }

    @Operation(summary = "Compute the hash of a revision again")
    @GetMapping("/{slug}/revisions/{number}/verify")
    Verification verify(@PathVariable("slug") String slug, @PathVariable("number") int number) {
        Revision<DeviceDocument> revision = devices.exactly(new RevisionRef(slug, number));
        return Verification.of(revision, devices.verify(revision));
    }
}
