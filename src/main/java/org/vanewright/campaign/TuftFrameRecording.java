package org.vanewright.campaign;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.engineering.tuft.FrameFindings;
import org.vanewright.engineering.tuft.FrameSequence;
import org.vanewright.engineering.tuft.FrameShift;
import org.vanewright.engineering.tuft.GreyFrame;
import org.vanewright.engineering.tuft.TuftMark;
import org.vanewright.engineering.tuft.TuftMotion;
import org.vanewright.engineering.tuft.TuftState;
import org.vanewright.engineering.tuft.TuftSurvey;
import org.vanewright.photograph.GreyPictures;
import org.vanewright.photograph.GreyPictures.Grey;
import org.vanewright.record.Draft;

/**
 * Proposes what tufts did from still frames. Frames are read one after another and none is kept; the proposal stands in
 * the draft as a survey that says nothing yet, until a person has gone through it and saved it.
 */
@Service
public class TuftFrameRecording {
    /** Frames are made smaller to this many pixels on their longer side. */
    public static final int LONGEST_PX = 1024;
    /** All files of a sequence together. */
    public static final long MOST_BYTES = 150_000_000;

    private static final long WAIT_S = 30;
    /** A sequence takes 70 MB at most while it is looked at, and a processor for some seconds. */
    private static final Semaphore AT_ONCE = new Semaphore(1, true);

    private final CampaignService campaigns;
    private final TuftRecording recording;

    TuftFrameRecording(CampaignService campaigns, TuftRecording recording) {
        this.campaigns = campaigns;
        this.recording = recording;
    }

    /** A frame as it was sent. */
    public interface FrameFile {
        long size();

        byte[] bytes() throws IOException;
    }

    /**
     * Adds a survey with a proposal to a grid.
     *
     * @param survey its condition; states and frames are made here
     * @param marks of tufts, by their place in the grid, in pixels of the first frame
     * @param files JPEG or PNG, the first of which was marked
     * @throws InvalidInputException with every problem; fields {@code frames} and {@code marks}, and those of a survey
     */
    public Draft<CampaignDocument> propose(
            String draftId,
            TuftGridDocument grid,
            TuftSurveyDocument survey,
            SortedMap<Integer, TuftMark> marks,
            List<FrameFile> files)
            throws IOException {
        TuftSurveyDocument blank =
                survey.withStates(String.valueOf(TuftState.NOT_SEEN.code()).repeat(grid.size()));
        check(campaigns.drafts().open(draftId).content(), grid, blank, marks, files);
        TuftFramesDocument frames = look(grid.size(), marks, files);
        return recording.put(draftId, String.valueOf(grid.id()), blank.withFrames(frames), List.of());
    }

    private static void check(
            CampaignDocument campaign,
            TuftGridDocument grid,
            TuftSurveyDocument survey,
            SortedMap<Integer, TuftMark> marks,
            List<FrameFile> files) {
        Checks checks = new Checks();
        TuftRules.survey(survey, grid, campaign).forEach(checks::add);
        checks.require(
                grid.surveys().stream()
                        .noneMatch(s -> String.valueOf(survey.id()).equals(s.id()) && !s.unconfirmed()),
                "id",
                survey.id(),
                "a new survey: this one is saved with what somebody saw");
        checks.require(!marks.isEmpty(), "marks", "no tuft", "at least one tuft marked on the first frame");
        checks.require(
                marks.isEmpty() || marks.lastKey() < grid.size(),
                "marks",
                "more tufts than the grid has",
                "tufts 1 to " + grid.size());
        String allowed = FrameSequence.FEWEST + " to " + FrameSequence.MOST + " frames";
        checks.require(
                files.size() >= FrameSequence.FEWEST && files.size() <= FrameSequence.MOST,
                "frames",
                files.size() + " files",
                allowed);
        for (int i = 0; i < files.size(); i++) {
            checks.require(
                    files.get(i).size() <= GreyPictures.MOST_BYTES,
                    "frames",
                    files.get(i).size() + " bytes",
                    "files of at most 8 MiB each; frame " + (i + 1) + " has "
                            + files.get(i).size() + " bytes");
        }
        checks.throwIfAny();
    }

    private static TuftFramesDocument look(int tufts, SortedMap<Integer, TuftMark> marks, List<FrameFile> files)
            throws IOException {
        enter();
        try {
            Grey first = grey(files, 0);
            FrameSequence sequence = sequence(first, tufts, marks);
            for (int i = 1; i < files.size(); i++) {
                sequence.add(frame(sized(grey(files, i), first, i)));
            }
            return document(first, marks, sequence.finish());
        } finally {
            AT_ONCE.release();
        }
    }

    private static void enter() {
        try {
            if (AT_ONCE.tryAcquire(WAIT_S, TimeUnit.SECONDS)) {
                return;
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        throw refused("frames", "busy", "sent again in a minute: another sequence is being looked at");
    }

    private static Grey grey(List<FrameFile> files, int index) throws IOException {
        try {
            return GreyPictures.read(files.get(index).bytes(), LONGEST_PX);
        } catch (InvalidInputException e) {
            throw new InvalidInputException(e.problems().stream()
                    .map(p -> new FieldProblem(
                            "frames", p.value(), p.allowed() + "; frame " + (index + 1) + " is " + p.value()))
                    .toList());
        }
    }

    private static Grey sized(Grey frame, Grey first, int index) {
        if (frame.widthPx() != first.widthPx() || frame.heightPx() != first.heightPx()) {
            String size = frame.widthPx() + " × " + frame.heightPx() + " pixels";
            throw refused(
                    "frames",
                    size,
                    "frames of one size, " + first.widthPx() + " × " + first.heightPx() + " pixels as the first; frame "
                            + (index + 1) + " has " + size);
        }
        return frame;
    }

    private static GreyFrame frame(Grey grey) {
        return new GreyFrame(grey.columns(), grey.rows(), grey.levels());
    }

    private static FrameSequence sequence(Grey first, int tufts, SortedMap<Integer, TuftMark> marks) {
        List<@Nullable TuftMark> all = new ArrayList<>();
        for (int i = 0; i < tufts; i++) {
            TuftMark mark = marks.get(i);
            all.add(mark == null ? null : mark.scaled(first.scale()));
        }
        try {
            return new FrameSequence(frame(first), all);
        } catch (InvalidInputException e) {
            throw new InvalidInputException(
                    e.problems().stream().map(TuftFrameRecording::numbered).toList());
        }
    }

    /** As people count tufts. */
    private static FieldProblem numbered(FieldProblem p) {
        if (!p.field().startsWith("marks[")) {
            return p;
        }
        int tuft = Integer.parseInt(p.field().replaceAll("\\D", "")) + 1;
        return new FieldProblem("marks", p.value(), p.allowed() + "; tuft " + tuft + " is " + p.value());
    }

    private static TuftFramesDocument document(Grey first, SortedMap<Integer, TuftMark> marks, FrameFindings found) {
        List<TuftFramesDocument.Frame> frames = new ArrayList<>();
        for (int i = 0; i < found.shifts().size(); i++) {
            FrameShift shift = found.shifts().get(i);
            frames.add(new TuftFramesDocument.Frame(
                    rounded(shift.rightPx() / first.scale(), 100),
                    rounded(shift.downPx() / first.scale(), 100),
                    rounded(shift.sharpness(), 1000),
                    found.used().get(i) ? null : (Boolean) true));
        }
        List<TuftFramesDocument.Marked> tufts = new ArrayList<>();
        double[] noise = {0};
        marks.forEach((tuft, mark) -> {
            TuftMotion motion = found.motions().get(tuft);
            noise[0] = Math.max(noise[0], motion.noise());
            tufts.add(new TuftFramesDocument.Marked(
                    tuft,
                    rounded(mark.rootX(), 10),
                    rounded(mark.rootY(), 10),
                    rounded(mark.tipX(), 10),
                    rounded(mark.tipY(), 10),
                    rounded(motion.variance(), 100),
                    rounded(motion.moving(), 1000),
                    rounded(motion.along(), 1000)));
        });
        return new TuftFramesDocument(
                first.widthPx(),
                first.heightPx(),
                frames,
                tufts,
                rounded(noise[0], 100),
                TuftSurvey.letters(found.proposed()));
    }

    private static double rounded(double value, double perUnit) {
        return Math.round(value * perUnit) / perUnit;
    }

    private static InvalidInputException refused(String field, String value, String allowed) {
        return new InvalidInputException(new FieldProblem(field, value, allowed));
    }
}
