package org.vanewright.campaign.web;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.DeleteMapping;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.multipart.MultipartHttpServletRequest;
import org.vanewright.campaign.log.FlightLog;
import org.vanewright.campaign.log.FlightLogs;
import org.vanewright.campaign.log.LogEvent;
import org.vanewright.campaign.log.LogFormat;
import org.vanewright.campaign.log.LogState;
import org.vanewright.engineering.flightlog.LogMapping;
import org.vanewright.engineering.flightlog.RowTally.BadRow;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;

/** Recorded logs as programs send them. What is found in them is accepted on pages only, by a person who sees it. */
@RestController
@RequestMapping("/api/v1/campaigns/drafts/{id}/logs")
@Tag(name = "Campaigns")
class LogApi {
    private final FlightLogs logs;

    LogApi(FlightLogs logs) {
        this.logs = logs;
    }

    /**
     * How far a log has come.
     *
     * @param header names of its columns, for the mapping
     * @param rows read until now
     * @param firstBadRows why the first bad ones were left out
     * @param events that were found and are kept
     * @param open of them, those that nobody has looked at yet
     * @param eventsLeft further ones that were found but are not kept, since only the first 500 are
     */
    record Status(
            String id,
            String name,
            LogFormat format,
            LogState state,
            int percent,
            List<String> header,
            @Nullable LogMapping mapping,
            long rows,
            long badRows,
            List<BadRow> firstBadRows,
            int events,
            int open,
            long eventsLeft,
            @Nullable String problem) {}

    private Status status(FlightLog log) {
        List<LogEvent> events = logs.events(log.draftId(), log.id());
        return new Status(
                log.id(),
                log.name(),
                log.format(),
                log.state(),
                log.percent(),
                log.header(),
                log.mapping(),
                log.rows(),
                log.badRows(),
                log.firstBadRows(),
                events.size(),
                (int) events.stream().filter(LogEvent::isOpen).count(),
                log.left(),
                log.problem());
    }

    @Operation(summary = "The recorded logs of a draft of yours")
    @GetMapping
    List<Status> list(@PathVariable("id") String id) {
        return logs.of(id).stream().map(this::status).toList();
    }

    @Operation(summary = "Add a recorded log as part \"file\"; a GPX file is read at once, a table after its mapping")
    @PostMapping
    ResponseEntity<Status> add(@PathVariable("id") String id, HttpServletRequest request) throws IOException {
        // Before the parts are looked at, which may be large.
        logs.requireOpen(id);
        MultipartFile file = request instanceof MultipartHttpServletRequest parts ? parts.getFile("file") : null;
        if (file == null) {
            throw new InvalidInputException(new FieldProblem("file", "missing", "a part with that name and a file"));
        }
        try (InputStream content = file.getInputStream()) {
            Status added = status(logs.add(id, file.getOriginalFilename(), content));
            URI address = URI.create("/api/v1/campaigns/drafts/" + id + "/logs/" + added.id());
            return ResponseEntity.accepted().location(address).body(added);
        }
    }

    @Operation(summary = "How far a recorded log has come")
    @GetMapping("/{log}")
    Status show(@PathVariable("id") String id, @PathVariable("log") String log) {
        return status(logs.find(id, log));
    }

    @Operation(summary = "Say what the columns of a table are, counted from 0, and read it")
    @PutMapping("/{log}/mapping")
    ResponseEntity<Status> map(
            @PathVariable("id") String id, @PathVariable("log") String log, @RequestBody LogMapping mapping) {
        logs.map(id, log, mapping);
        return ResponseEntity.accepted().body(status(logs.find(id, log)));
    }

    @Operation(summary = "Take a recorded log away; test points made of it stay")
    @DeleteMapping("/{log}")
    ResponseEntity<Void> remove(@PathVariable("id") String id, @PathVariable("log") String log) {
        logs.remove(id, log);
        return ResponseEntity.noContent().build();
    }
}
