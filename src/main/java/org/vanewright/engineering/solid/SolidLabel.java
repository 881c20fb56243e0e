package org.vanewright.engineering.solid;

/**
 * What a file says about the solid in it.
 *
 * @param title of the file
 * @param designName name of the device design
 * @param revision of that design
 * @param sha256 of the revision, hexadecimal
 */
public record SolidLabel(String title, String designName, int revision, String sha256) {}
