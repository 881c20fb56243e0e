package org.vanewright.retention;

/**
 * What is asked.
 *
 * @param by by what devices are compared
 * @param counted which losses count
 * @param invented whether demonstration data are taken in beside others; alone they always are
 */
public record RetentionQuery(Grouping by, Counted counted, boolean invented) {}
