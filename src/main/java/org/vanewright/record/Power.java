package org.vanewright.record;

/** What somebody may do beyond reading what is published. */
public enum Power {
    /** See one's own unpublished work. */
    READ_OWN,
    /** Write drafts and submit them. */
    SUBMIT,
    /** See, return, publish and withdraw what others submitted. */
    REVIEW,
    /** Run the instance: people, invitations, settings, the audit log. */
    RUN
}
