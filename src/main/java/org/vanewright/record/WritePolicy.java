package org.vanewright.record;

/** Says who may change records; every write path of every feature asks it. */
public interface WritePolicy {
    /** Lets only those pass who may change records; throws for everybody else. */
    void requireOpen();
}
