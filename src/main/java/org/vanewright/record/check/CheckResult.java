package org.vanewright.record.check;

/**
 * What one automatic check found.
 *
 * @param name of the check, such as "Solid is closed"
 * @param outcome how it ended
 * @param detail what was looked at and found, in words
 */
public record CheckResult(String name, Outcome outcome, String detail) {
    /** How a check ended. */
    public enum Outcome {
        PASSED,
        /** Worth a look by the reviewer. */
        NOTICED,
        FAILED
    }

    public static CheckResult passed(String name, String detail) {
        return new CheckResult(name, Outcome.PASSED, detail);
    }

    public static CheckResult noticed(String name, String detail) {
        return new CheckResult(name, Outcome.NOTICED, detail);
    }

    public static CheckResult failed(String name, String detail) {
        return new CheckResult(name, Outcome.FAILED, detail);
    }
}
