package org.vanewright.record.photograph;

/** Takes files that people choose in the form of a record. */
public interface PhotographIntake {
    /**
     * Keeps a photograph for the person who asks.
     *
     * @param content of the file as it was sent
     * @return its name: the SHA-256 of the picture that is kept
     * @throws org.vanewright.engineering.input.InvalidInputException naming {@code photographs} for anything that is not
     *     a photograph within the bounds
     */
    String take(byte[] content);
}
