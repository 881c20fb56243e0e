package org.vanewright.campaign.web;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.vanewright.campaign.Recording;
import org.vanewright.campaign.TuftFramesDocument;
import org.vanewright.campaign.TuftFramesDocument.Marked;
import org.vanewright.campaign.TuftGridDocument;
import org.vanewright.campaign.TuftSurveyDocument;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.tuft.TuftMark;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.page.Numbers;

/** The form that still frames are sent by: the condition, and a line for each tuft that was marked. */
final class FrameForms {
    static final String MARKS = "marks";
    private static final int MOST_LINES = 1000;
    private static final int NUMBERS = 5;

    private FrameForms() {}

    /** Begins with the marks of the grid's last frames, since a camera often stays where it was. */
    static void startMarks(Form form, TuftGridDocument grid) {
        TuftFramesDocument last = null;
        for (TuftSurveyDocument each : grid.surveys()) {
            last = each.frames() == null ? last : each.frames();
        }
        form.put(MARKS, last == null ? "" : marks(last));
    }

    private static String marks(TuftFramesDocument frames) {
        return frames.tufts().stream()
                .filter(t -> t.tuft() != null && t.mark() != null)
                .sorted(Comparator.comparingInt(t -> Objects.requireNonNullElse(t.tuft(), 0)))
                .map(FrameForms::line)
                .collect(Collectors.joining("\n"));
    }

    private static String line(Marked tuft) {
        TuftMark mark = Objects.requireNonNull(tuft.mark());
        return (Objects.requireNonNullElse(tuft.tuft(), 0) + 1) + " " + Numbers.trimmed(mark.rootX(), 1) + " "
                + Numbers.trimmed(mark.rootY(), 1) + " " + Numbers.trimmed(mark.tipX(), 1) + " "
                + Numbers.trimmed(mark.tipY(), 1);
    }

    /** The marks by the tuft's place in the grid; what cannot be read is noted in the form. */
    static SortedMap<Integer, TuftMark> readMarks(Form form, TuftGridDocument grid) {
        SortedMap<Integer, TuftMark> marks = new TreeMap<>();
        String[] lines = form.value(MARKS).split("\\R", MOST_LINES);
        for (int i = 0; i < lines.length; i++) {
            String line = lines[i].strip();
            if (line.isEmpty()) {
                continue;
            }
            List<Double> numbers = numbers(line);
            int tuft = numbers.size() == NUMBERS ? whole(numbers.get(0)) - 1 : -1;
            if (tuft < 0 || tuft >= grid.size() || marks.containsKey(tuft)) {
                form.refuse(new FieldProblem(
                        MARKS,
                        line.length() <= 60 ? line : line.substring(0, 59) + "…",
                        "line " + (i + 1) + ": the number of a tuft from 1 to " + grid.size()
                                + ", each only once, then root and tip as four pixel positions"));
                return marks;
            }
            marks.put(tuft, new TuftMark(numbers.get(1), numbers.get(2), numbers.get(3), numbers.get(4)));
        }
        return marks;
    }

    private static List<Double> numbers(String line) {
        List<Double> numbers = new ArrayList<>();
        for (String each : line.split("[;:\\s]+", NUMBERS + 2)) {
            Optional<Double> number = Numbers.parse(each.replaceAll(",$", ""));
            if (number.isEmpty()) {
                return List.of();
            }
            numbers.add(number.get());
        }
        return numbers;
    }

    private static int whole(double number) {
        return number == Math.rint(number) && Math.abs(number) < 1e6 ? (int) number : -1;
    }

    /** The condition as typed, without states. */
    static TuftSurveyDocument readCondition(Form form) {
        String id = form.text("id");
        return new TuftSurveyDocument(
                id == null ? Recording.newId() : id,
                form.text("configuration"),
                form.number("indicatedAirspeedKt"),
                form.text("flaps"),
                form.text("power"),
                form.text("at"),
                null,
                List.of(),
                form.text("remark"),
                null);
    }
}
