package org.vanewright.platform.attachment;

/** The object storage does not answer, or refuses what it should not. It passes. */
public final class AttachmentsAwayException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    AttachmentsAwayException(String words, Throwable cause) {
        super(words, cause);
    }
}
