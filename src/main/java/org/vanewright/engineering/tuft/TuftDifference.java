package org.vanewright.engineering.tuft;

import java.util.List;
import java.util.stream.IntStream;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;

/**
 * Two surveys of one grid, tuft by tuft, and in the area that was seen both times.
 *
 * @param changes one for each tuft, in the grid's order
 * @param before area fractions of the first, of the area seen both times
 * @param after area fractions of the second, of the area seen both times
 */
public record TuftDifference(List<Change> changes, AreaShares before, AreaShares after) {
    public TuftDifference {
        changes = List.copyOf(changes);
    }

    /** How one tuft differs. */
    public enum Change {
        SAME,
        BECAME_STEADY,
        NO_LONGER_STEADY,
        /** Unsteady before and reversed after, or the other way about. */
        OTHERWISE,
        /** Not seen both times. */
        UNKNOWN;

        static Change between(TuftState before, TuftState after) {
            if (!before.seen() || !after.seen()) {
                return UNKNOWN;
            }
            if (before == after) {
                return SAME;
            }
            return after == TuftState.STEADY
                    ? BECAME_STEADY
                    : before == TuftState.STEADY ? NO_LONGER_STEADY : OTHERWISE;
        }
    }

    /**
     * The second against the first.
     *
     * @throws InvalidInputException where their grids differ
     */
    public static TuftDifference of(TuftSurvey before, TuftSurvey after) {
        if (!before.grid().tufts().equals(after.grid().tufts())) {
            throw new InvalidInputException(new FieldProblem("grid", "another grid", "two surveys of one grid"));
        }
        return new TuftDifference(
                IntStream.range(0, before.states().size())
                        .mapToObj(i -> Change.between(
                                before.states().get(i), after.states().get(i)))
                        .toList(),
                TuftSurvey.shares(before.grid(), seenBoth(before.states(), after.states())),
                TuftSurvey.shares(before.grid(), seenBoth(after.states(), before.states())));
    }

    private static List<TuftState> seenBoth(List<TuftState> states, List<TuftState> others) {
        return IntStream.range(0, states.size())
                .mapToObj(i -> others.get(i).seen() ? states.get(i) : TuftState.NOT_SEEN)
                .toList();
    }

    /** Change of the area fraction in a state, of the area seen both times. */
    public double change(TuftState state) {
        return after.of(state) - before.of(state);
    }

    /** Number of tufts that differ so. */
    public int count(Change change) {
        return (int) changes.stream().filter(c -> c == change).count();
    }
}
