package org.vanewright.photograph;

/**
 * A photograph as it is kept.
 *
 * @param large JPEG of at most {@value PictureMaker#LARGE_PX} pixels a side
 * @param small JPEG of at most {@value PictureMaker#SMALL_PX} pixels a side
 */
@SuppressWarnings("ArrayRecordComponent") // bytes on their way to the database, never compared
record Picture(byte[] large, byte[] small) {}
