package org.vanewright.campaign;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.tuft.TuftMark;
import org.vanewright.record.Lists;

/**
 * What the service made of a sequence of still frames, from which a person then said what the tufts did. The frames
 * themselves are not kept.
 *
 * @param widthPx of a frame, upright
 * @param heightPx likewise
 * @param frames one entry for each, in the order they came; marks and shifts are in its pixels
 * @param tufts those that were marked
 * @param noise variance of pixels that no tuft crosses, in grey levels squared
 * @param proposed letters as in {@link TuftSurveyDocument#states()}, one for each tuft of the grid
 */
public record TuftFramesDocument(
        @Nullable Integer widthPx,
        @Nullable Integer heightPx,
        List<Frame> frames,
        List<Marked> tufts,
        @Nullable Double noise,
        @Nullable String proposed) {
    @SuppressWarnings("NullAway") // documents arrive with parts missing; the rules name them
    public TuftFramesDocument {
        frames = Lists.present(frames);
        tufts = Lists.present(tufts);
    }

    /**
     * A frame.
     *
     * @param rightPx how far its picture lies to the right of the first one's
     * @param downPx likewise downward
     * @param sharpness how much it has in common with the first, 0 to 1
     * @param leftOut true where it was not used; absent else
     */
    public record Frame(
            @Nullable Double rightPx,
            @Nullable Double downPx,
            @Nullable Double sharpness,

            @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable
            Boolean leftOut) {
        public boolean used() {
            return !Boolean.TRUE.equals(leftOut);
        }
    }

    /**
     * A tuft, as it was marked and as it was found.
     *
     * @param tuft its place in the grid, from 0
     * @param rootX where it is stuck down on the first frame
     * @param rootY likewise
     * @param tipX where its free end lies in attached flow
     * @param tipY likewise
     * @param variance in its cell, in grey levels squared
     * @param moving part of its contrast that changes in time, 0 to 1
     * @param along 1 downstream of its root as marked, −1 upstream
     */
    public record Marked(
            @Nullable Integer tuft,
            @Nullable Double rootX,
            @Nullable Double rootY,
            @Nullable Double tipX,
            @Nullable Double tipY,
            @Nullable Double variance,
            @Nullable Double moving,
            @Nullable Double along) {
        /** Null where a coordinate is missing. */
        public @Nullable TuftMark mark() {
            return rootX == null || rootY == null || tipX == null || tipY == null
                    ? null
                    : new TuftMark(rootX, rootY, tipX, tipY);
        }
    }

    public int usedCount() {
        return (int) frames.stream().filter(Frame::used).count();
    }
}
