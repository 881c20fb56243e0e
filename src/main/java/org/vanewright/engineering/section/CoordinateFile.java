package org.vanewright.engineering.section;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.geometry.Point2;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;

/**
 * Reads section coordinates from plain text (common practice, no source): two numbers a line with decimal points,
 * parted by blanks, tabs, a comma or a semicolon; an optional title on the first line; {@code #} starts a comment. The
 * points are either one loop or two lists, upper and lower side; a line with the two point counts may stand before two
 * lists, and blank lines may part them. Chords, percent or any other unit.
 *
 * <p>The result is de-duplicated, ordered trailing edge → upper → leading edge → lower → trailing edge, and normalised:
 * leading edge (the place on the spline farthest from the middle of the trailing edge) at (0, 0), middle of the trailing
 * edge at (1, 0).
 */
public final class CoordinateFile {
    /** Largest file, in bytes. */
    public static final int MOST_BYTES = 64 * 1024;

    static final String FIELD = "coordinates";
    private static final int LONGEST_TITLE = 80;
    private static final int MOST_PROBLEMS = 10;

    private CoordinateFile() {}

    /**
     * @param file UTF-8, with or without byte order mark, at most 64 KiB
     * @return coordinates and title
     * @throws InvalidInputException field {@code coordinates}; the value is the offending line, what is allowed starts
     *     with its number ({@code line 17: …}) or with {@code file: }
     */
    public static SectionSpec parse(byte[] file) {
        if (file.length > MOST_BYTES) {
            throw refused(file.length + " bytes", "file: at most 64 KiB (65536 bytes)");
        }
        try {
            return parse(StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(file))
                    .toString());
        } catch (CharacterCodingException e) {
            throw refused("unreadable bytes", "file: plain text in UTF-8");
        }
    }

    /** As {@link #parse(byte[])}, for text pasted into a form. */
    public static SectionSpec parse(String text) {
        if (text.length() > MOST_BYTES || text.getBytes(StandardCharsets.UTF_8).length > MOST_BYTES) {
            throw refused(text.length() + " characters", "file: at most 64 KiB (65536 bytes)");
        }
        if (text.chars().anyMatch(c -> c < ' ' && c != '\t' && c != '\n' && c != '\r' && c != '\f')) {
            throw refused("control characters", "file: plain text in UTF-8");
        }
        String plain = text.startsWith("\uFEFF") ? text.substring(1) : text;
        List<CoordinateLine> lines = new ArrayList<>(CoordinateLine.of(plain));
        String title = takeTitle(lines);
        List<FilePoint> loop = LoopOrder.loop(blocks(lines));
        return new SectionSpec(null, null, NormalisedLoop.of(loop), title);
    }

    /** Removes the leading blank lines and the title; the title is a first line that is not meant as a point. */
    private static @Nullable String takeTitle(List<CoordinateLine> lines) {
        while (!lines.isEmpty() && lines.get(0).isBlank()) {
            lines.remove(0);
        }
        if (lines.isEmpty() || lines.get(0).meantAsPoint()) {
            return null;
        }
        String title = lines.remove(0).text().replaceAll("\\s+", " ");
        return CoordinateLine.abbreviated(title, LONGEST_TITLE);
    }

    /** Points parted by blank lines. */
    private static List<List<FilePoint>> blocks(List<CoordinateLine> lines) {
        checkPoints(lines);
        List<List<FilePoint>> blocks = new ArrayList<>();
        boolean parted = true;
        for (CoordinateLine line : lines) {
            Point2 point = line.point();
            if (point == null) {
                parted = true;
            } else {
                if (parted) {
                    blocks.add(new ArrayList<>());
                }
                parted = false;
                blocks.get(blocks.size() - 1).add(new FilePoint(line, point));
            }
        }
        return blocks;
    }

    /** Every line that is not blank must hold a point, and there must not be too many. */
    private static void checkPoints(List<CoordinateLine> lines) {
        Checks checks = new Checks();
        int count = 0;
        int most = OutlineChecks.MOST_POINTS;
        for (CoordinateLine line : lines) {
            if (line.isBlank()) {
                continue;
            }
            Point2 point = line.point();
            if (point == null) {
                checks.add(line.notAPoint());
            } else if (++count == 1 && LoopOrder.couldBeCounts(point)) {
                most++;
            } else if (count > most) {
                checks.add(line.problem("at most 2,000 points"));
                break;
            }
            if (checks.problems().size() >= MOST_PROBLEMS) {
                break;
            }
        }
        checks.throwIfAny();
    }

    static InvalidInputException refused(String value, String allowed) {
        return new InvalidInputException(new FieldProblem(FIELD, value, allowed));
    }
}
