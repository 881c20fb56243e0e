package org.vanewright.engineering.tuft;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.InvalidInputException;

/**
 * The pixels round each marked tuft: within {@value #REACH} of its length from its root, and nearer to it as it was marked
 * than to any other.
 *
 * @param marks one for each tuft, null where it is not in the picture
 * @param pixels of each tuft, by their index in the frame; none where it is not marked
 */
@SuppressWarnings("ArrayRecordComponent") // never compared
record TuftCells(List<@Nullable TuftMark> marks, int[][] pixels) {
    static final double REACH = 1.25;
    static final double SHORTEST_PX = 6;
    private static final double MOST_OVERLAP = 6;

    /** @throws InvalidInputException fields {@code marks}, {@code marks[i]}: none, outside, too short, or far too long */
    static TuftCells of(int widthPx, int heightPx, List<@Nullable TuftMark> marks) {
        check(widthPx, heightPx, marks);
        int[] owner = new int[widthPx * heightPx];
        float[] distance = new float[owner.length];
        Arrays.fill(owner, -1);
        for (int i = 0; i < marks.size(); i++) {
            TuftMark mark = marks.get(i);
            if (mark != null) {
                claim(i, mark, widthPx, heightPx, owner, distance);
            }
        }
        int[][] pixels = new int[marks.size()][];
        int[] counts = new int[marks.size()];
        Arrays.stream(owner).filter(o -> o >= 0).forEach(o -> counts[o]++);
        Arrays.setAll(pixels, i -> new int[counts[i]]);
        for (int at = owner.length - 1; at >= 0; at--) {
            if (owner[at] >= 0) {
                pixels[owner[at]][--counts[owner[at]]] = at;
            }
        }
        return new TuftCells(marks, pixels);
    }

    private static void claim(int tuft, TuftMark mark, int widthPx, int heightPx, int[] owner, float[] distance) {
        double reach = REACH * mark.lengthPx();
        int top = (int) Math.max(0, Math.ceil(mark.rootY() - reach));
        int bottom = (int) Math.min(heightPx - 1, Math.floor(mark.rootY() + reach));
        int left = (int) Math.max(0, Math.ceil(mark.rootX() - reach));
        int right = (int) Math.min(widthPx - 1, Math.floor(mark.rootX() + reach));
        for (int y = top; y <= bottom; y++) {
            for (int x = left; x <= right; x++) {
                if (Math.hypot(x - mark.rootX(), y - mark.rootY()) > reach) {
                    continue;
                }
                int at = y * widthPx + x;
                float far = (float) mark.distancePx(x, y);
                if (owner[at] < 0 || far < distance[at]) {
                    owner[at] = tuft;
                    distance[at] = far;
                }
            }
        }
    }

    private static void check(int widthPx, int heightPx, List<@Nullable TuftMark> marks) {
        Checks checks = new Checks();
        double area = 0;
        List<Integer> marked = new ArrayList<>();
        for (int i = 0; i < marks.size(); i++) {
            TuftMark mark = marks.get(i);
            if (mark == null) {
                continue;
            }
            marked.add(i);
            String field = "marks[" + i + "]";
            boolean inside = inside(mark.rootX(), widthPx)
                    && inside(mark.tipX(), widthPx)
                    && inside(mark.rootY(), heightPx)
                    && inside(mark.tipY(), heightPx);
            if (checks.require(inside, field, "outside the picture", "root and tip within the first frame")) {
                checks.require(
                        mark.lengthPx() >= SHORTEST_PX,
                        field,
                        Math.round(mark.lengthPx()) + " pixels long",
                        "root and tip at least " + (int) SHORTEST_PX + " pixels apart in a picture of " + widthPx
                                + " × " + heightPx + " pixels, to which frames are reduced");
                area += Math.pow(2 * REACH * mark.lengthPx(), 2);
            }
        }
        checks.require(!marked.isEmpty(), "marks", "no tuft", "at least one tuft marked");
        checks.require(
                area <= MOST_OVERLAP * widthPx * heightPx,
                "marks",
                "tufts far longer than their distances",
                "root and tip of each tuft");
        checks.throwIfAny();
    }

    private static boolean inside(double at, int count) {
        return at >= -0.5 && at <= count - 0.5;
    }

    /** Shortest distance between roots; infinite with one tuft. */
    double apartPx() {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < marks.size(); i++) {
            TuftMark one = marks.get(i);
            for (int j = 0; one != null && j < i; j++) {
                TuftMark other = marks.get(j);
                if (other != null) {
                    least = Math.min(least, Math.hypot(one.rootX() - other.rootX(), one.rootY() - other.rootY()));
                }
            }
        }
        return least;
    }

    /** The part of the frame in which tufts are marked, and a little round it. */
    PhaseCorrelation.Region region(int widthPx, int heightPx) {
        double left = widthPx;
        double top = heightPx;
        double right = 0;
        double bottom = 0;
        for (TuftMark mark : marks) {
            if (mark != null) {
                double round = 2 * REACH * mark.lengthPx();
                left = Math.min(left, mark.rootX() - round);
                top = Math.min(top, mark.rootY() - round);
                right = Math.max(right, mark.rootX() + round);
                bottom = Math.max(bottom, mark.rootY() + round);
            }
        }
        int x = (int) Math.max(0, left);
        int y = (int) Math.max(0, top);
        return new PhaseCorrelation.Region(
                x, y, (int) Math.min(widthPx, right + 1) - x, (int) Math.min(heightPx, bottom + 1) - y);
    }
}
