package org.vanewright.platform.job.web;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.time.Instant;
import org.jspecify.annotations.Nullable;
import org.springframework.core.io.Resource;
import org.springframework.http.CacheControl;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.DeleteMapping;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import org.vanewright.platform.job.Job;
import org.vanewright.platform.job.JobState;
import org.vanewright.platform.job.Jobs;

/** Long work as programs follow it. */
@RestController
@RequestMapping("/api/v1/jobs/{id:[0-9a-f-]{36}}")
@Tag(name = "Jobs", description = "Work that takes longer than a request. You see your own.")
class JobApi {
    private final Jobs jobs;

    JobApi(Jobs jobs) {
        this.jobs = jobs;
    }

    /**
     * How far a job has come.
     *
     * @param done of {@code of} steps; 0 of 0 while nobody knows
     * @param words what is being done
     * @param attempts how often it was begun; more than once where a process ended in the middle
     * @param link where what came of it stands
     * @param file address of the file that came of it
     * @param problem why it could not be done
     */
    record Status(
            String id,
            String kind,
            String title,
            JobState state,
            long done,
            long of,
            int percent,
            @Nullable String words,
            int attempts,
            @Nullable String link,
            @Nullable String file,
            @Nullable String problem,
            Instant createdAt,
            @Nullable Instant finishedAt) {
        static Status of(Job job) {
            return new Status(
                    job.id(),
                    job.kind(),
                    job.title(),
                    job.state(),
                    job.done(),
                    job.of(),
                    job.percent(),
                    job.words(),
                    job.attempts(),
                    job.link(),
                    job.file() == null ? null : "/api/v1/jobs/" + job.id() + "/file",
                    job.problem(),
                    job.createdAt(),
                    job.finishedAt());
        }
    }

    @Operation(summary = "How far a job of yours has come")
    @GetMapping
    ResponseEntity<Status> show(@PathVariable("id") String id) {
        return answer(id);
    }

    @Operation(summary = "Ask a job of yours to stop; one that is finished stays as it is")
    @DeleteMapping
    ResponseEntity<Status> cancel(@PathVariable("id") String id) {
        jobs.cancel(id);
        return answer(id);
    }

    @Operation(summary = "The file that came of a job of yours")
    @GetMapping("/file")
    ResponseEntity<Resource> file(@PathVariable("id") String id) {
        return JobFiles.answer(jobs, id);
    }

    private ResponseEntity<Status> answer(String id) {
        return ResponseEntity.ok()
                .cacheControl(CacheControl.noStore().cachePrivate())
                .body(Status.of(jobs.find(id)));
    }
}
