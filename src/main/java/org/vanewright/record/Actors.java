package org.vanewright.record;

/** Knows who is asking now. */
public interface Actors {
    /** Who sent the request that is being answered; a visitor outside of any. */
    Actor current();
}
