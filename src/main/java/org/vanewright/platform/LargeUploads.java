package org.vanewright.platform;

/** Where files may be sent that are larger than forms elsewhere. */
public interface LargeUploads {
    /**
     * Whether that request may bring a large file.
     *
     * @param method such as {@code POST}
     * @param path of the request
     */
    boolean accepts(String method, String path);
}
