package org.vanewright.campaign.web;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.form.Option;

/**
 * The decision tree that leads to a rating: three questions, each of which bounds it. G. E. Cooper, R. P. Harper, The Use of
 * Pilot Rating in the Evaluation of Aircraft Handling Qualities, NASA TN D-5153, 1969, figure 7 (from memory; words our own).
 */
final class CooperHarper {
    static final List<Option> ANSWERS = List.of(new Option("YES", "Yes"), new Option("NO", "No"));

    static final List<Option> RATINGS = List.of(
            new Option("1", "1 – excellent, nothing to wish for"),
            new Option("2", "2 – good, nothing that matters"),
            new Option("3", "3 – fair, a little unpleasant; little for the pilot to make up for"),
            new Option("4", "4 – minor faults that annoy; moderate effort to reach what was asked"),
            new Option("5", "5 – moderate faults; much effort for what was asked"),
            new Option("6", "6 – very objectionable but bearable; great effort for it"),
            new Option("7", "7 – what was asked is not reached even with the greatest bearable effort"),
            new Option("8", "8 – great effort only to keep control"),
            new Option("9", "9 – the utmost effort only to keep control"),
            new Option("10", "10 – control is lost during part of the task"));

    private CooperHarper() {}

    /** What the answers to the questions do not allow; null where they agree, or are not given. */
    static @Nullable FieldProblem contradiction(Form form, @Nullable Integer rating) {
        if (rating == null) {
            return null;
        }
        if (form.is("controllable", "NO") && rating != 10) {
            return refused(rating, "10, since the aircraft was not controllable");
        }
        if (form.is("controllable", "YES") && rating == 10) {
            return refused(rating, "1 to 9, since the aircraft was controllable");
        }
        if (form.is("adequate", "NO") && rating < 7) {
            return refused(rating, "7 to 10, since what was asked was not reached with a bearable effort");
        }
        if (form.is("adequate", "YES") && rating >= 7) {
            return refused(rating, "1 to 6, since what was asked was reached with a bearable effort");
        }
        if (form.is("satisfactory", "NO") && rating < 4) {
            return refused(rating, "4 to 10, since something should be improved");
        }
        if (form.is("satisfactory", "YES") && rating >= 4) {
            return refused(rating, "1 to 3, since nothing needs to be improved");
        }
        return null;
    }

    private static FieldProblem refused(int rating, String allowed) {
        return new FieldProblem("rating", String.valueOf(rating), allowed);
    }
}
