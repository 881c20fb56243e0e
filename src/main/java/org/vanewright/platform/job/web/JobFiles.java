package org.vanewright.platform.job.web;

import org.springframework.core.io.Resource;
import org.springframework.http.CacheControl;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.vanewright.platform.job.Job;
import org.vanewright.platform.job.Jobs;
import org.vanewright.record.RecordNotFoundException;

/** The file that came of a job, to be saved. */
final class JobFiles {
    private JobFiles() {}

    static ResponseEntity<Resource> answer(Jobs jobs, String id) {
        Job job = jobs.find(id);
        Job.FileHead file = job.file();
        if (file == null) {
            throw new RecordNotFoundException("file of job", id, null);
        }
        String disposition =
                ContentDisposition.attachment().filename(file.name()).build().toString();
        return ResponseEntity.ok()
                .cacheControl(CacheControl.noStore().cachePrivate())
                .contentType(MediaType.parseMediaType(file.type()))
                .header(HttpHeaders.CONTENT_DISPOSITION, disposition)
                .body(jobs.file(job));
    }
}
