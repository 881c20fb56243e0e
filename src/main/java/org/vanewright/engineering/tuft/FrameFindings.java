package org.vanewright.engineering.tuft;

import java.util.List;

/**
 * What a sequence of still frames shows.
 *
 * @param shifts of every frame against the first, in pixels of the frames
 * @param used for every frame, whether it counts
 * @param motions one for each tuft, in the order of the marks
 */
public record FrameFindings(List<FrameShift> shifts, List<Boolean> used, List<TuftMotion> motions) {
    public FrameFindings {
        shifts = List.copyOf(shifts);
        used = List.copyOf(used);
        motions = List.copyOf(motions);
    }

    public int usedCount() {
        return (int) used.stream().filter(u -> u).count();
    }

    /** What may be proposed for each tuft. */
    public List<TuftState> proposed() {
        return motions.stream().map(TuftMotion::proposed).toList();
    }
}
