package org.vanewright.campaign;

import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.engineering.tuft.FrameSequence;
import org.vanewright.engineering.tuft.TuftSurvey;

/** What must hold of what was made of still frames. */
final class TuftFrameRules {
    private static final int MOST_PX = 12_000;
    private static final double MOST_LEVELS_SQUARED = 255 * 255;

    private TuftFrameRules() {}

    /** Problems, with the fields named as they stand in {@code frames} of a survey. */
    static List<FieldProblem> check(TuftFramesDocument frames, int tufts) {
        Checks checks = new Checks();
        whole("widthPx", frames.widthPx(), 1, MOST_PX, checks);
        whole("heightPx", frames.heightPx(), 1, MOST_PX, checks);
        int count = frames.frames().size();
        String allowed = FrameSequence.FEWEST + " to " + FrameSequence.MOST + " frames";
        checks.require(count <= FrameSequence.MOST, "frames", count, allowed);
        checks.require(frames.usedCount() >= FrameSequence.FEWEST, "frames", frames.usedCount() + " used", allowed);
        for (int i = 0; i < Math.min(count, FrameSequence.MOST); i++) {
            TuftFramesDocument.Frame each = frames.frames().get(i);
            String at = "frames[" + i + "].";
            checks.range(at + "rightPx", each.rightPx(), -MOST_PX, MOST_PX, "px");
            checks.range(at + "downPx", each.downPx(), -MOST_PX, MOST_PX, "px");
            checks.range(at + "sharpness", each.sharpness(), -1, 1.01, "");
        }
        checks.range("noise", frames.noise(), 0, MOST_LEVELS_SQUARED, "");
        tufts(frames, tufts, checks);
        proposed(frames.proposed(), tufts, checks);
        return checks.problems();
    }

    private static void whole(String field, @Nullable Integer value, int low, int high, Checks checks) {
        checks.require(
                value != null && value >= low && value <= high,
                field,
                value,
                "a whole number from " + low + " to " + high);
    }

    private static void tufts(TuftFramesDocument frames, int most, Checks checks) {
        double width = Objects.requireNonNullElse(frames.widthPx(), MOST_PX);
        double height = Objects.requireNonNullElse(frames.heightPx(), MOST_PX);
        Set<Integer> known = new HashSet<>();
        int count = frames.tufts().size();
        checks.require(count >= 1 && count <= most, "tufts", count, "1 to " + most + " tufts");
        for (int i = 0; i < Math.min(count, most); i++) {
            TuftFramesDocument.Marked each = frames.tufts().get(i);
            String at = "tufts[" + i + "].";
            Integer tuft = each.tuft();
            checks.require(
                    tuft != null && tuft >= 0 && tuft < most && known.add(tuft),
                    at + "tuft",
                    tuft,
                    "a tuft from 0 to " + (most - 1) + ", only once");
            checks.range(at + "rootX", each.rootX(), -0.5, width, "px");
            checks.range(at + "rootY", each.rootY(), -0.5, height, "px");
            checks.range(at + "tipX", each.tipX(), -0.5, width, "px");
            checks.range(at + "tipY", each.tipY(), -0.5, height, "px");
            checks.range(at + "variance", each.variance(), 0, MOST_LEVELS_SQUARED, "");
            checks.range(at + "moving", each.moving(), 0, 1, "");
            checks.range(at + "along", each.along(), -1, 1, "");
        }
    }

    private static void proposed(@Nullable String letters, int tufts, Checks checks) {
        boolean fits = letters != null && letters.length() == tufts;
        if (checks.require(
                fits, "proposed", letters == null ? null : letters.length() + " letters", "a letter for each tuft")) {
            try {
                TuftSurvey.read(Objects.requireNonNull(letters));
            } catch (InvalidInputException e) {
                checks.require(false, "proposed", e.problems().get(0).value(), "the letters S, U, R, and - only");
            }
        }
    }
}
