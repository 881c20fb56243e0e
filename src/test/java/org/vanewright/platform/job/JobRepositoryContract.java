package org.vanewright.platform.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import com.github.kagkarlsson.scheduler.SchedulerState;
import com.zaxxer.hikari.HikariDataSource;
import io.micrometer.core.instrument.simple.SimpleMeterRegistry;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.SequenceInputStream;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.springframework.core.io.Resource;
import org.springframework.dao.DuplicateKeyException;
import org.vanewright.testing.Databases;
import tools.jackson.databind.json.JsonMapper;

/** Keeping and running jobs on one kind of database. */
abstract class JobRepositoryContract {
    private static final Instant NOW = Instant.parse("2026-05-17T10:00:00Z");

    private final HikariDataSource source;
    private final JobRepository jobs;

    JobRepositoryContract(Databases.Engine engine) {
        source = Databases.migrated(engine);
        jobs = Databases.transactional(source, JobRepository::new);
    }

    @AfterEach
    void close() {
        source.close();
    }

    private void added(String id, String text) {
        jobs.add(waiting(id, text));
    }

    private static Job waiting(String id, String text) {
        return new Job(
                id,
                "note",
                "Note",
                "{\"text\":\"" + text + "\"}",
                "anna",
                JobState.WAITING,
                0,
                0,
                0,
                null,
                null,
                null,
                null,
                NOW,
                null);
    }

    private JobState state(String id) {
        return jobs.find(id).orElseThrow().state();
    }

    /** The first run's process has ended, or only seems to. */
    @Test
    void ofTwoRunsTheLastOneCounts() throws IOException {
        added("a", "x");
        assertThat(jobs.begin("a", "one", NOW)).isTrue();
        assertThat(jobs.progress("a", "one", 3, 10, "reading", NOW)).isTrue();
        assertThat(jobs.find("a").orElseThrow().percent()).isEqualTo(30);
        assertThat(jobs.begin("a", "two", NOW)).isTrue();
        assertThat(jobs.progress("a", "one", 9, 10, "reading", NOW)).isFalse();
        assertThat(jobs.finish("a", "one", JobState.DONE, JobResult.at("/one"), null, NOW))
                .isFalse();
        assertThat(jobs.finish("a", "two", JobState.DONE, JobResult.at("/two"), null, NOW))
                .isTrue();
        assertThat(jobs.finish("a", "two", JobState.FAILED, null, "again", NOW)).isFalse();
        Job job = jobs.find("a").orElseThrow();
        assertThat(job.link()).isEqualTo("/two");
        assertThat(job.attempts()).isEqualTo(2);
        assertThat(job.finishedAt()).isEqualTo(NOW);
        assertThat(jobs.begin("a", "three", NOW)).as("it is done").isFalse();
    }

    @Test
    void aFileComesBackByteByByte() throws IOException {
        byte[] random = new byte[2_000_001];
        new Random(3).nextBytes(random);
        added("a", "x");
        jobs.begin("a", "one", NOW);
        jobs.finish("a", "one", JobState.DONE, JobResult.file("kit.zip", "application/zip", random), null, NOW);
        Job.FileHead head = new Job.FileHead("kit.zip", "application/zip", random.length);
        assertThat(jobs.find("a").orElseThrow().file()).isEqualTo(head);
        Resource file = new JobFileResource(jobs, "a", head);
        assertThat(file.getContentAsByteArray()).isEqualTo(random);
        assertThat(file.contentLength()).isEqualTo(random.length);
        try (InputStream content = file.getInputStream()) {
            content.skipNBytes(1_900_000);
            assertThat(content.readNBytes(11)).isEqualTo(Arrays.copyOfRange(random, 1_900_000, 1_900_011));
        }
        assertThat(jobs.removeFinishedBefore(NOW)).isZero();
        assertThat(jobs.removeFinishedBefore(NOW.plusSeconds(1))).isEqualTo(1);
        assertThat(jobs.piece("a", 0)).isEmpty();
    }

    @Test
    void aFileThatBreaksOffLeavesTheJobAsItWas() {
        added("a", "x");
        jobs.begin("a", "one", NOW);
        InputStream broken = new SequenceInputStream(new ByteArrayInputStream(new byte[2_000_000]), new InputStream() {
            @Override
            public int read() throws IOException {
                throw new IOException("no more");
            }
        });
        JobResult result = new JobResult(null, new JobResult.JobFile("n", "text/plain", 3_000_000, broken));
        assertThatExceptionOfType(IOException.class)
                .isThrownBy(() -> jobs.finish("a", "one", JobState.DONE, result, null, NOW));
        assertThat(state("a")).isEqualTo(JobState.RUNNING);
        assertThat(jobs.piece("a", 0)).isEmpty();
    }

    @Test
    void ofASlotThereIsOneAtATime() throws IOException {
        Job first = waiting("a", "x");
        jobs.add(first, "note");
        assertThatExceptionOfType(DuplicateKeyException.class).isThrownBy(() -> jobs.add(waiting("b", "x"), "note"));
        jobs.add(waiting("c", "x"), null);
        assertThat(jobs.inSlot("note")).contains(first);
        jobs.begin("a", "one", NOW);
        jobs.finish("a", "one", JobState.FAILED, null, "no ink", NOW);
        assertThat(jobs.inSlot("note")).isEmpty();
        jobs.add(waiting("b", "x"), "note");
        jobs.begin("b", "two", NOW);
        jobs.finish("b", "two", JobState.DONE, JobResult.file("n", "text/plain", new byte[3]), null, NOW);
        assertThat(jobs.last("note", JobState.DONE)).map(Job::id).hasValue("b");
        assertThat(jobs.last("note", JobState.CANCELLED)).isEmpty();
        jobs.removeFinishedBut("note", "b");
        assertThat(jobs.find("a")).as("finished").isEmpty();
        assertThat(jobs.find("c")).as("waits").isPresent();
        assertThat(jobs.piece("b", 0)).isPresent();
    }

    @Test
    void whatIsCancelledIsTold() throws IOException {
        added("a", "x");
        jobs.begin("a", "one", NOW);
        jobs.cancel("a", NOW);
        assertThat(jobs.isCancelAsked("a")).isTrue();
        assertThat(jobs.progress("a", "one", 9, 10, "reading", NOW)).isFalse();
        jobs.finish("a", "one", JobState.CANCELLED, null, null, NOW);
        added("b", "x");
        jobs.begin("b", "one", NOW);
        jobs.finish("b", "one", JobState.DONE, JobResult.at("/b"), null, NOW);
        jobs.cancel("b", NOW);
        assertThat(state("b")).as("finished before").isEqualTo(JobState.DONE);
        assertThat(jobs.isCancelAsked("b")).isFalse();
    }

    @Test
    void whatEndsEveryProcessIsGivenUp() {
        JobRunner runner = new JobRunner(
                jobs,
                List.of(new NoteJob()),
                JsonMapper.builder().build(),
                Clock.fixed(NOW, ZoneOffset.UTC),
                new SimpleMeterRegistry());
        SchedulerState process = new SchedulerState.SettableSchedulerState();
        added("a", "x");
        for (int i = 0; i < JobRunner.MOST_ATTEMPTS; i++) {
            jobs.begin("a", "process " + i, NOW);
        }
        runner.run("a", process);
        assertThat(jobs.find("a").orElseThrow().problem()).contains("never came to an end");
        assertThat(NoteJob.GAVE_UP).containsKey("a");
        added("b", "kept");
        runner.run("b", process);
        runner.run("b", process);
        runner.run("no such job", process);
        assertThat(jobs.find("b").orElseThrow().attempts()).isEqualTo(1);
        assertThat(jobs.piece("b", 0).orElseThrow()).asString().isEqualTo("kept");
    }
}
