package org.vanewright.record;

/** Somebody known asked for what they may not do. */
public class NotAllowedException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /** @param missing the power that was needed */
    public NotAllowedException(Power missing) {
        this(
                switch (missing) {
                    case READ_OWN -> "This token may not read unpublished work.";
                    case SUBMIT -> "You may not write drafts here.";
                    case REVIEW -> "Only maintainers may do this.";
                    case RUN -> "Only stewards may do this.";
                });
    }

    /** @param reason a sentence for the person who asked */
    public NotAllowedException(String reason) {
        super(reason);
    }
}
