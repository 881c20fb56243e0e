package org.vanewright.campaign.web;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.vanewright.campaign.TuftFramesDocument;
import org.vanewright.campaign.TuftFramesDocument.Frame;
import org.vanewright.campaign.TuftFramesDocument.Marked;
import org.vanewright.campaign.TuftSurveyDocument;
import org.vanewright.engineering.tuft.Tuft;
import org.vanewright.engineering.tuft.TuftState;
import org.vanewright.platform.page.Units;

/**
 * What still frames showed, beside the form in which a person says what counts.
 *
 * @param facts how many frames there were and how far they lay apart
 * @param unconfirmed whether nobody has saved any state yet
 * @param rows one for each marked tuft
 * @param shifts one for each frame
 */
public record FramesView(String facts, boolean unconfirmed, List<Row> rows, List<Shift> shifts) {
    /** One tuft in figures. */
    public record Row(String tuft, String proposed, String moving, String along, String variance) {}

    /** One frame against the first. */
    public record Shift(int number, String right, String down, String sharpness, String use) {}

    /** Empty where a survey has no frames. */
    static Optional<FramesView> of(TuftSurveyDocument survey, List<Tuft> tufts, Units units) {
        TuftFramesDocument frames = survey.frames();
        return frames == null
                ? Optional.empty()
                : Optional.of(new FramesView(
                        facts(frames), survey.unconfirmed(), rows(frames, tufts, units), shifts(frames)));
    }

    private static String facts(TuftFramesDocument frames) {
        int sent = frames.frames().size();
        int used = frames.usedCount();
        double farthest = frames.frames().stream()
                .filter(Frame::used)
                .mapToDouble(f -> Math.hypot(number(f.rightPx()), number(f.downPx())))
                .max()
                .orElse(0);
        return String.format(
                Locale.ROOT,
                "%s of %d × %d pixels; %s moved against the first by up to %.1f pixels and laid back on it. "
                        + "Pixels that no tuft crosses vary by %.1f grey levels.",
                used == sent ? sent + " frames" : used + " of " + sent + " frames",
                Objects.requireNonNullElse(frames.widthPx(), 0),
                Objects.requireNonNullElse(frames.heightPx(), 0),
                used == sent ? "they" : "those used",
                farthest,
                Math.sqrt(Math.max(0, number(frames.noise()))));
    }

    private static List<Row> rows(TuftFramesDocument frames, List<Tuft> tufts, Units units) {
        List<Row> rows = new ArrayList<>();
        frames.tufts().stream()
                .filter(t -> t.tuft() != null && t.tuft() >= 0 && t.tuft() < tufts.size())
                .sorted(Comparator.comparingInt(t -> Objects.requireNonNullElse(t.tuft(), 0)))
                .forEach(t -> rows.add(row(t, String.valueOf(frames.proposed()), tufts, units)));
        return rows;
    }

    private static Row row(Marked marked, String proposed, List<Tuft> tufts, Units units) {
        int tuft = Objects.requireNonNullElse(marked.tuft(), 0);
        TuftState state = tuft < proposed.length()
                ? TuftState.of(proposed.charAt(tuft)).orElse(TuftState.NOT_SEEN)
                : TuftState.NOT_SEEN;
        boolean seen = state.seen();
        return new Row(
                (tuft + 1) + ": " + TuftWords.place(tufts.get(tuft), units),
                seen ? TuftWords.state(state) : "nothing stands out",
                seen ? TuftWords.share(number(marked.moving())) : "–",
                seen
                        ? String.format(Locale.ROOT, "%.2f", number(marked.along()))
                                .replace('-', '−')
                        : "–",
                String.format(Locale.ROOT, "%.1f", number(marked.variance())));
    }

    private static List<Shift> shifts(TuftFramesDocument frames) {
        List<Shift> shifts = new ArrayList<>();
        for (Frame each : frames.frames()) {
            shifts.add(new Shift(
                    shifts.size() + 1,
                    pixels(each.rightPx()),
                    pixels(each.downPx()),
                    String.format(Locale.ROOT, "%.2f", number(each.sharpness())),
                    each.used() ? "used" : "left out"));
        }
        return shifts;
    }

    private static String pixels(@Nullable Double value) {
        return String.format(Locale.ROOT, "%.1f px", number(value)).replace('-', '−');
    }

    private static double number(@Nullable Double value) {
        return value == null ? 0 : value;
    }
}
