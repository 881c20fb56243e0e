package org.vanewright.platform;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.context.annotation.Profile;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.springframework.web.context.request.WebRequest;
import org.springframework.web.multipart.MultipartFile;
import org.vanewright.engineering.input.Checks;
import org.vanewright.record.DraftClosedException;
import org.vanewright.record.DraftNotFoundException;
import org.vanewright.record.RecordContent;
import org.vanewright.record.RecordNotFoundException;
import org.vanewright.record.RecordState;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionConflictException;
import org.vanewright.record.RevisionRef;
import org.vanewright.record.Standing;

/** Controllers that fail in every way a real one can, so that the answers can be looked at. */
final class Probe {
    private Probe() {}

    enum Side {
        UPPER,
        LOWER
    }

    record Part(
            @Nullable Double chordMm,
            @Nullable Integer count,
            @Nullable Side side,
            @Nullable Boolean mirrored) {}

    record Body(@Nullable String name, @Nullable List<Part> parts) {}

    record Note(String name, boolean invented) implements RecordContent {}

    static Exception failure(String kind) {
        RevisionRef base = new RevisionRef("kite", 1);
        return switch (kind) {
            case "missing" -> new RecordNotFoundException("airframe", "kite", 7);
            case "conflict" ->
                new RevisionConflictException(
                        base,
                        new Revision<>(
                                "kite",
                                2,
                                RecordState.PUBLISHED,
                                new Note("Kite", true),
                                "ab".repeat(32),
                                "Club",
                                Instant.parse("2026-01-02T03:04:05Z"),
                                base,
                                new Standing(null, null, null, null, null, null, null, null, null)));
            case "closed" -> new DraftClosedException("It waits.");
            case "draft" -> new DraftNotFoundException();
            default -> new IllegalStateException("secret of the house");
        };
    }

    @RestController
    @Profile("probe")
    static class Api {
        @PostMapping(path = "/api/v1/probe", consumes = "application/json", produces = "application/json")
        Body read(@RequestBody Body body) {
            Checks checks = new Checks();
            List<Part> parts = body.parts() == null ? List.of() : body.parts();
            for (int i = 0; i < parts.size(); i++) {
                checks.range("parts[" + i + "].chordMm", parts.get(i).chordMm(), 1, 5000, "mm");
            }
            checks.throwIfAny();
            return body;
        }

        @PostMapping(path = "/api/v1/calculations/probe")
        Body calculate(@RequestBody Body body) {
            return body;
        }

        @GetMapping("/api/v1/probe/fail/{kind}")
        String fail(@PathVariable String kind) throws Exception {
            throw failure(kind);
        }

        @GetMapping("/api/v1/probe/list")
        int list(@RequestParam int limit) {
            return limit;
        }
    }

    @Controller
    @Profile("probe")
    static class Pages {
        private final Downloads downloads;

        Pages(Downloads downloads) {
            this.downloads = downloads;
        }

        @GetMapping("/probe/fail/{kind}")
        String fail(@PathVariable String kind) throws Exception {
            throw failure(kind);
        }

        @GetMapping("/probe/number/{number}")
        String number(@PathVariable int number) {
            throw new IllegalStateException("never reached with a word, but with " + number);
        }

        @PostMapping("/probe/upload")
        ResponseEntity<Long> upload(@RequestParam MultipartFile file) {
            return ResponseEntity.ok(file.getSize());
        }

        @GetMapping("/probe/stations.csv")
        ResponseEntity<byte[]> file(WebRequest request, @RequestParam(required = false) @Nullable Integer revision) {
            GeneratedFile file = new GeneratedFile(
                    "Käte's \"stations\"\r\n.csv",
                    MediaType.parseMediaType("text/csv"),
                    "kite@" + revision,
                    false,
                    () -> "a,b\n".getBytes(StandardCharsets.UTF_8));
            return downloads.send(request, file, revision != null);
        }
    }
}
