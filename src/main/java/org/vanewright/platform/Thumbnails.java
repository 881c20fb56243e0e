package org.vanewright.platform;

import java.nio.charset.StandardCharsets;
import java.util.function.Supplier;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Component;
import org.springframework.web.context.request.WebRequest;
import org.vanewright.record.Revision;

/**
 * Small drawings of exact revisions as files of their own, so that lists are quick and whatever is in front may keep the
 * drawings for ever. They bring the page's colours for light and dark with them.
 */
@Component
public class Thumbnails {
    /** Behind the address of an exact revision. */
    public static final String FILE = "/thumbnail.svg";

    private static final MediaType SVG = MediaType.parseMediaType("image/svg+xml");

    /** As the style sheet of the pages has it. */
    private static final String COLOURS = """
            <style>
            :root { --ink: #1a242e; --edge: #716c60; --tint: #e3ddc8; --accent: #a0105c; --filled: #d987b1; }
            @media (prefers-color-scheme: dark) {
              :root { --ink: #f1ead9; --edge: #8895a0; --tint: #2a3843; --accent: #ff8cc0; --filled: #a03a70; }
            }
            [class*="pen-"] { stroke: var(--ink); stroke-width: 1; fill: none; }
            .pen-fine { stroke: var(--edge); stroke-width: .8; }
            .pen-thick { stroke-width: 1.8; }
            .pen-dashed { stroke-dasharray: 5 3; }
            .layer-cut[class*="pen-"] { stroke: var(--accent); }
            .fill-tint { fill: var(--tint); }
            .fill-accent { fill: var(--filled); fill-opacity: .75; }
            .fill-solid { fill: var(--ink); }
            .lettering { fill: var(--ink); stroke: none; font-family: sans-serif; }
            </style>
            """;

    private final Downloads downloads;

    Thumbnails(Downloads downloads) {
        this.downloads = downloads;
    }

    /** Address of a record's drawing at one revision. */
    public static String address(String plural, Revision<?> revision) {
        return "/" + plural + "/" + revision.slug() + "/revisions/" + revision.number() + FILE;
    }

    /** @param inline makes the drawing as it would stand in a page */
    public ResponseEntity<byte[]> send(WebRequest request, Revision<?> revision, Supplier<String> inline) {
        return downloads.send(
                request,
                new GeneratedFile(
                        revision.slug() + "-r" + revision.number() + ".svg",
                        SVG,
                        revision.contentKey() + " " + revision.number() + " thumbnail",
                        true,
                        () -> coloured(inline.get()).getBytes(StandardCharsets.UTF_8)),
                true,
                revision);
    }

    static String coloured(String inline) {
        int content = inline.indexOf('>') + 1;
        return inline.substring(0, content) + "\n" + COLOURS + inline.substring(content);
    }
}
