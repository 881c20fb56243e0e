package org.vanewright.platform.form;

/** What the button said with which a form was sent. */
public final class FormAction {
    /** Save what was typed. */
    public static final String SAVE = "save";

    /** Save what was typed, and go on to submit it. */
    public static final String SUBMIT = "submit";

    /** Status of an answer that shows a form again because it could not be saved (RFC 9110, 15.5.21). */
    public static final int REFUSED = 422;

    private FormAction() {}

    public static boolean saves(String action) {
        return SAVE.equals(action) || submits(action);
    }

    public static boolean submits(String action) {
        return SUBMIT.equals(action);
    }

    /** Adding or removing an entry of a list is no reason to complain about what is not filled in yet. */
    public static boolean changesList(String action) {
        return action.startsWith("add ") || action.startsWith("remove ");
    }
}
