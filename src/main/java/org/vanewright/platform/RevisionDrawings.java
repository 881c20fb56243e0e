package org.vanewright.platform;

import java.nio.charset.StandardCharsets;
import java.util.function.Supplier;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Component;
import org.springframework.web.context.request.WebRequest;
import org.vanewright.platform.picture.SheetStyle;
import org.vanewright.record.Revision;

/**
 * Drawings of exact revisions as files of their own, so that pages and lists are quick and whatever is in front may keep
 * the drawings for ever. They bring the page's colours for light and dark with them.
 */
@Component
public class RevisionDrawings {
    /** A small drawing for lists, behind the address of an exact revision. */
    public static final String THUMBNAIL = "/thumbnail.svg";

    private static final MediaType SVG = MediaType.parseMediaType("image/svg+xml");

    private final Downloads downloads;

    RevisionDrawings(Downloads downloads) {
        this.downloads = downloads;
    }

    /** Address of a record's small drawing at one revision. */
    public static String thumbnail(String plural, Revision<?> revision) {
        return address(plural, revision, THUMBNAIL);
    }

    /** @param file such as {@link #THUMBNAIL} */
    public static String address(String plural, Revision<?> revision, String file) {
        return "/" + plural + "/" + revision.slug() + "/revisions/" + revision.number() + file;
    }

    /**
     * @param file as in its address
     * @param inline makes the drawing as it would stand in a page
     */
    public ResponseEntity<byte[]> send(WebRequest request, Revision<?> revision, String file, Supplier<String> inline) {
        return downloads.send(
                request,
                new GeneratedFile(
                        revision.slug() + "-r" + revision.number() + ".svg",
                        SVG,
                        revision.contentKey() + " " + revision.number() + " " + file,
                        true,
                        () -> SheetStyle.in(inline.get(), SheetStyle.DRAWING_RULES)
                                .getBytes(StandardCharsets.UTF_8)),
                true,
                revision);
    }
}
