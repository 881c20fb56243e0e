package org.vanewright.kit;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.platform.job.JobProgress;
import org.vanewright.platform.job.Jobs;
import org.vanewright.record.RecordService;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;

/** Kits of layouts. */
@Service
public class Kits {
    private static final Pattern RESULT = Pattern.compile("([a-z0-9-]{1,80})\\.([1-9][0-9]{0,5})");
    private static final int MOST_RESULTS = 50;

    private final KitPlanner planner;
    private final KitWriter writer;
    private final Jobs jobs;
    private final KitJob job;

    Kits(KitPlanner planner, KitWriter writer, Jobs jobs, KitJob job) {
        this.planner = planner;
        this.writer = writer;
        this.jobs = jobs;
        this.job = job;
    }

    /**
     * What the kit of a layout holds.
     *
     * @param number of its revision; absent asks for the published one
     * @param results campaigns whose results it holds, as {@code slug.revision} with commas between, or {@code none};
     *     absent asks for those published now
     * @throws InvalidInputException naming {@code results} or {@code revision}
     */
    public KitPlan plan(String slug, @Nullable Integer number, @Nullable String results) {
        RecordService<?> layouts = planner.service("layouts");
        Revision<?> layout = number == null ? layouts.published(slug) : layouts.exactly(new RevisionRef(slug, number));
        if (!layout.isReleased()) {
            throw new InvalidInputException(new FieldProblem(
                    "revision", String.valueOf(layout.number()), "a published revision; others have no kit"));
        }
        return planner.plan(layout, results == null ? planner.flying(layout.ref()) : results(results));
    }

    /** What its file is called. */
    public static String fileName(KitPlan plan) {
        return plan.layout().slug() + "-r" + plan.layout().number() + "-kit.zip";
    }

    private List<RevisionRef> results(String typed) {
        if (typed.equals(KitPlan.NONE)) {
            return List.of();
        }
        List<RevisionRef> refs = new ArrayList<>();
        for (String each : typed.split(",", -1)) {
            Matcher matcher = RESULT.matcher(each);
            RevisionRef ref =
                    matcher.matches() ? new RevisionRef(matcher.group(1), Integer.parseInt(matcher.group(2))) : null;
            boolean released = ref != null
                    && planner.service("campaigns")
                            .find(ref)
                            .filter(Revision::isReleased)
                            .isPresent();
            if (!released || refs.size() >= MOST_RESULTS) {
                throw new InvalidInputException(new FieldProblem(
                        "results",
                        each,
                        "published campaigns as slug.revision with commas between, at most " + MOST_RESULTS
                                + ", or none"));
            }
            refs.add(ref);
        }
        return KitPlanner.sorted(refs);
    }

    /**
     * Writes a kit into a file.
     *
     * @throws IOException where there is no room for it; the file is the caller's to remove
     */
    public void write(KitPlan plan, Path file, JobProgress progress) throws IOException {
        try (OutputStream out = Files.newOutputStream(file)) {
            writer.write(plan, out, progress);
        }
    }

    /**
     * Has the kit of something public made as a job of the one who asks.
     *
     * @return id of the job
     */
    public String start(KitPlan plan) {
        if (!plan.layout().isPublic()) {
            throw new InvalidInputException(new FieldProblem(
                    "revision",
                    String.valueOf(plan.layout().number()),
                    "a published revision; kits of others are made while you wait"));
        }
        return jobs.start(
                job,
                "The kit of " + plan.layout().content().name() + ", revision "
                        + plan.layout().number(),
                new KitJob.Parameters(plan.layout().slug(), plan.layout().number(), plan.resultsParameter()));
    }
}
