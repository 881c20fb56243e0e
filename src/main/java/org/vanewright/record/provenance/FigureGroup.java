package org.vanewright.record.provenance;

/**
 * Figures of a document that people speak of together.
 *
 * @param path in the document; a group whose path lies beneath another's is a part of it
 * @param words what people call them, such as "Empty mass"
 */
public record FigureGroup(String path, String words) {}
