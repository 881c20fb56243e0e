package org.vanewright.record;

/** A visitor asked for what only people with an account may do. */
public class SignInNeededException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public SignInNeededException() {
        super("Sign in to do this.");
    }
}
