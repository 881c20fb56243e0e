package org.vanewright.platform.page;

import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Heading;
import org.commonmark.node.Image;
import org.commonmark.node.Node;
import org.commonmark.parser.PostProcessor;

/** Puts headings below those of the page, and the words that describe an image in its place. */
final class NoteShape implements PostProcessor {
    private static final int LEVELS_OF_THE_PAGE = 2;
    private static final int DEEPEST_HEADING = 6;

    @Override
    public Node process(Node document) {
        document.accept(new AbstractVisitor() {
            @Override
            public void visit(Heading heading) {
                heading.setLevel(Math.min(DEEPEST_HEADING, heading.getLevel() + LEVELS_OF_THE_PAGE));
                visitChildren(heading);
            }

            @Override
            public void visit(Image image) {
                visitChildren(image);
                while (image.getFirstChild() != null) {
                    image.insertBefore(image.getFirstChild());
                }
                image.unlink();
            }
        });
        return document;
    }
}
