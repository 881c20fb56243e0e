package org.vanewright.engineering.tuft;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.InvalidInputException;

/**
 * Still frames of tufts from a fixed camera, taken in one after another; of each only what is summed up of it is kept, so
 * that memory does not grow with their number. A frame is moved back by its shift against the first and made as light as
 * that, then each pixel's mean and variance go on (B. P. Welford, Note on a Method for Calculating Corrected Sums of
 * Squares and Products, Technometrics 4, 1962; from memory). One that has too little in common with the first, or is
 * much darker or lighter, is left out.
 *
 * <p>Frames tell whether a tuft's picture changes between them, not how fast. A tuft that waves slower than the sequence
 * lasts looks steady; one so fast that each frame blurs it may not be seen at all; one that lifts off toward the camera
 * looks short. A shadow or a reflection that crosses a cell counts as movement. What turns or comes nearer is not
 * aligned.
 */
public final class FrameSequence {
    public static final int FEWEST = 5;
    public static final int MOST = 60;
    /** Peaks of pictures that have nothing in common stay below this: common practice of this code. */
    static final double LEAST_SHARPNESS = 0.15;

    private static final double MOST_GAIN = 2;
    /** Tufts in a regular grid look the same one tuft further on, so only a shift of less than half of that is looked for. */
    private static final double HALF = 0.5;

    private final GreyFrame first;
    private final TuftCells cells;
    private final PhaseCorrelation correlation;
    private final ShiftRefinement refinement;
    private final PixelSums sums;
    private final double light;
    private final List<FrameShift> shifts = new ArrayList<>();
    private final List<Boolean> used = new ArrayList<>();

    /**
     * @param marks one for each tuft, null where it is not in the picture
     * @throws InvalidInputException fields {@code marks}, {@code marks[i]}: none, outside, too short, or far too long
     */
    public FrameSequence(GreyFrame first, List<@Nullable TuftMark> marks) {
        this.first = first;
        this.cells = TuftCells.of(first.widthPx(), first.heightPx(), marks);
        PhaseCorrelation.Region region = cells.region(first.widthPx(), first.heightPx());
        this.correlation = new PhaseCorrelation(first, region, HALF * cells.apartPx());
        this.refinement = new ShiftRefinement(first, region);
        this.sums = new PixelSums(cells, first.widthPx());
        this.light = sums.sample(first, FrameShift.NONE);
        note(FrameShift.NONE, true);
        sums.take(1);
    }

    /**
     * The next frame.
     *
     * @throws InvalidInputException field {@code frames}: of another size, or one too many
     */
    public FrameShift add(GreyFrame frame) {
        Checks checks = new Checks();
        checks.require(
                frame.widthPx() == first.widthPx() && frame.heightPx() == first.heightPx(),
                "frames",
                frame.widthPx() + " × " + frame.heightPx() + " pixels",
                "frames of one size");
        checks.require(shifts.size() < MOST, "frames", "one more frame", "at most " + MOST + " frames");
        checks.throwIfAny();
        FrameShift shift = refinement.of(frame, correlation.of(frame));
        double gain = light / sums.sample(frame, shift);
        boolean alike = shift.sharpness() >= LEAST_SHARPNESS && gain <= MOST_GAIN && gain >= 1 / MOST_GAIN;
        note(shift, alike);
        if (alike) {
            sums.take(gain);
        }
        return shift;
    }

    private void note(FrameShift shift, boolean counts) {
        shifts.add(shift);
        used.add(counts);
    }

    /**
     * What they show.
     *
     * @throws InvalidInputException field {@code frames}: fewer than {@value #FEWEST} that can be used
     */
    public FrameFindings finish() {
        long count = used.stream().filter(u -> u).count();
        Checks checks = new Checks();
        checks.require(
                count >= FEWEST,
                "frames",
                count,
                "at least " + FEWEST + " frames of the same tufts from a fixed camera; " + count + " of " + used.size()
                        + " fit together");
        checks.throwIfAny();
        return new FrameFindings(shifts, used, new CellStatistics(cells, sums, first.widthPx()).motions());
    }
}
