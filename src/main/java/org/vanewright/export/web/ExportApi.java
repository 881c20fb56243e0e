package org.vanewright.export.web;

import com.fasterxml.jackson.annotation.JsonInclude;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.time.Instant;
import org.jspecify.annotations.Nullable;
import org.springframework.http.CacheControl;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import org.springframework.web.context.request.WebRequest;
import org.vanewright.export.Exports;
import org.vanewright.platform.Downloads;
import org.vanewright.platform.job.Job;

/** Everything public as one file, for programs. */
@RestController
@RequestMapping("/api/v1/export")
@Tag(name = "Export", description = "Everything public as one Data Package.")
class ExportApi {
    private final Exports exports;
    private final Downloads downloads;

    ExportApi(Exports exports, Downloads downloads) {
        this.exports = exports;
        this.downloads = downloads;
    }

    /**
     * Where the export stands.
     *
     * @param revisions that are public now
     * @param file address of the last one that was made; absent where there is none
     * @param fileName names the first digits of its SHA-256
     * @param current whether it holds the record as it is now
     * @param underWay whether one is being made
     * @param percent of that one
     * @param problem why the last one could not be made
     */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    record Body(
            long revisions,
            @Nullable String file,
            @Nullable String fileName,
            @Nullable Long sizeBytes,
            @Nullable Instant madeAt,
            boolean current,
            boolean underWay,
            @Nullable Integer percent,
            @Nullable String problem) {
        static Body of(Exports.Status s) {
            Job.FileHead file = s.made() == null ? null : s.made().file();
            return new Body(
                    s.revisions(),
                    file == null ? null : ExportPages.FILE,
                    file == null ? null : file.name(),
                    file == null ? null : (Long) file.sizeBytes(),
                    s.made() == null ? null : s.made().finishedAt(),
                    s.current(),
                    s.underWay() != null,
                    s.underWay() == null ? null : (Integer) s.underWay().percent(),
                    s.problem());
        }
    }

    @Operation(summary = "Where the export of everything public stands")
    @GetMapping
    ResponseEntity<Body> show() {
        return ResponseEntity.ok().cacheControl(CacheControl.noStore()).body(Body.of(exports.status()));
    }

    @Operation(summary = "Have it made, unless it holds the record as it is now, or one is being made")
    @PostMapping
    ResponseEntity<Body> start(WebRequest request) {
        downloads.admit(request);
        return ResponseEntity.status(HttpStatus.ACCEPTED)
                .cacheControl(CacheControl.noStore())
                .body(Body.of(exports.start()));
    }
}
