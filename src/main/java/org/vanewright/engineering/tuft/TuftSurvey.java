package org.vanewright.engineering.tuft;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;

/**
 * What was seen of a grid's tufts at one condition.
 *
 * @param grid where they are
 * @param states one for each tuft, in the grid's order
 */
public record TuftSurvey(TuftGrid grid, List<TuftState> states) {
    public TuftSurvey {
        states = List.copyOf(states);
        if (states.size() != grid.size()) {
            throw new InvalidInputException(new FieldProblem(
                    "states", states.size() + " tufts", "one state for each of the grid's " + grid.size() + " tufts"));
        }
    }

    /**
     * From a compact line of letters.
     *
     * @throws InvalidInputException naming {@code states} where a letter or the length is wrong
     */
    public static TuftSurvey of(TuftGrid grid, String letters) {
        return new TuftSurvey(grid, read(letters));
    }

    /** The states of a compact line: {@code S}, {@code U}, {@code R}, or {@code -} for each tuft. */
    public static List<TuftState> read(String letters) {
        List<TuftState> states = new ArrayList<>(letters.length());
        for (int i = 0; i < letters.length(); i++) {
            Optional<TuftState> state = TuftState.of(letters.charAt(i));
            if (state.isEmpty()) {
                throw new InvalidInputException(
                        new FieldProblem("states", letters.substring(i, i + 1), "the letters S, U, R, and - only"));
            }
            states.add(state.get());
        }
        return states;
    }

    /** As a compact line of letters. */
    public static String letters(List<TuftState> states) {
        return states.stream().map(s -> String.valueOf(s.code())).collect(Collectors.joining());
    }

    /** Area fractions by the tufts' cells; those not seen are left out and counted apart. */
    public AreaShares shares() {
        return shares(grid, states);
    }

    static AreaShares shares(TuftGrid grid, List<TuftState> states) {
        double[] areas = new double[TuftState.values().length];
        int seen = 0;
        for (int i = 0; i < states.size(); i++) {
            areas[states.get(i).ordinal()] += grid.tufts().get(i).areaMm2();
            seen += states.get(i).seen() ? 1 : 0;
        }
        double steady = areas[TuftState.STEADY.ordinal()];
        double unsteady = areas[TuftState.UNSTEADY.ordinal()];
        double reversed = areas[TuftState.REVERSED.ordinal()];
        double sum = steady + unsteady + reversed;
        double by = sum == 0 ? 1 : sum;
        return new AreaShares(steady / by, unsteady / by, reversed / by, sum, grid.areaMm2(), seen, grid.size());
    }
}
