package org.vanewright.platform.job;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import org.awaitility.Awaitility;
import org.springframework.context.ApplicationContext;
import org.springframework.stereotype.Component;

/** A job of tests: makes a file of a text, or does what the text says. */
@Component
public class NoteJob implements JobKind<NoteJob.Note> {
    static final Map<String, String> GAVE_UP = new ConcurrentHashMap<>();
    static final Set<String> RUN = ConcurrentHashMap.newKeySet();

    private static final String HOLD = "hold:";

    private final Semaphore never = new Semaphore(0);

    /** @param text {@code wait} until cancelled, {@code hold:} as long as the file named behind it is there, {@code refuse}, {@code break}, or anything else */
    public record Note(String text) {}

    @Override
    public String name() {
        return "note";
    }

    @Override
    public Class<Note> parameters() {
        return Note.class;
    }

    @Override
    public JobResult run(Note note, JobProgress progress) {
        RUN.add(note.text());
        String text = note.text();
        if (text.startsWith("refuse")) {
            throw new JobFailure("There is no ink.");
        }
        if (text.startsWith("break")) {
            throw new IllegalStateException("secret of the house");
        }
        while (text.startsWith("wait")
                || text.startsWith(HOLD) && Files.exists(Path.of(text.substring(HOLD.length())))) {
            progress.report(1, 4, "waiting for ink");
            pause();
        }
        return JobResult.file("note.txt", "text/plain", text.getBytes(UTF_8));
    }

    private void pause() {
        try {
            if (never.tryAcquire(20, TimeUnit.MILLISECONDS)) {
                throw new IllegalStateException("nobody releases it");
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }

    @Override
    public void gaveUp(String jobId, Note note, String words) {
        GAVE_UP.put(jobId, words);
    }

    /** Starts one in the name of whoever acts; gives its id. */
    public static String start(ApplicationContext service, String text) {
        return service.getBean(Jobs.class).start(service.getBean(NoteJob.class), "Note: " + text, new Note(text));
    }

    /** Returns when it stands there. */
    public static void await(ApplicationContext service, String id, JobState state) {
        JobRepository jobs = service.getBean(JobRepository.class);
        Awaitility.await("job " + state)
                .atMost(Duration.ofMinutes(1))
                .until(() -> jobs.find(id).map(Job::state).orElse(null) == state);
    }
}
