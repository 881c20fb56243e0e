package org.vanewright.sharing;

import java.io.StringWriter;
import java.net.URI;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import org.jspecify.annotations.Nullable;

/**
 * Writes a feed in the Atom Syndication Format (RFC 4287), with paging by RFC 5005, section 3. Identities are tag URIs (RFC
 * 4151) of the configured address's host, so they stay the same as long as the instance keeps its address.
 */
final class AtomWriter {
    static final String NAMESPACE = "http://www.w3.org/2005/Atom";

    /** From this day on the scheme of identities is as it is. */
    private static final String TAGGED = ",2026:";

    /** What XML 1.0 cannot say, section 2.2. */
    private static final String UNSAYABLE = "[^\\t\\n\\r\\x20-\\uD7FF\\uE000-\\uFFFD\\x{10000}-\\x{10FFFF}]";

    private final String base;
    private final StringWriter out = new StringWriter();
    private final XMLStreamWriter xml;

    /** @param base address of the instance, without a slash at its end */
    AtomWriter(String base) {
        this.base = base;
        try {
            this.xml = XMLOutputFactory.newFactory().createXMLStreamWriter(out);
        } catch (XMLStreamException e) {
            throw new IllegalStateException("the platform writes XML", e);
        }
    }

    /**
     * A feed.
     *
     * @param title of it
     * @param path of its first page
     * @param about path of the page it is about
     */
    record Head(String title, String path, String about) {}

    String write(Head head, Feeds.Page page, List<FeedEntry> entries) {
        try {
            xml.writeStartDocument("UTF-8", "1.0");
            xml.writeStartElement("feed");
            xml.writeDefaultNamespace(NAMESPACE);
            text("id", tag(head.path()));
            text("title", head.title());
            text("updated", time(page.updatedAt()));
            text("generator", "Vanewright");
            link("self", "application/atom+xml", at(head.path(), page.number()));
            link("alternate", "text/html", head.about());
            paging(head, page);
            for (FeedEntry entry : entries) {
                entry(entry);
            }
            xml.writeEndElement();
            xml.writeEndDocument();
            return out.toString();
        } catch (XMLStreamException e) {
            throw new IllegalStateException("nothing is written but to memory", e);
        }
    }

    private void paging(Head head, Feeds.Page page) throws XMLStreamException {
        link("first", "application/atom+xml", at(head.path(), 1));
        if (page.number() > 1) {
            link("previous", "application/atom+xml", at(head.path(), page.number() - 1));
        }
        if (page.more()) {
            link("next", "application/atom+xml", at(head.path(), page.number() + 1));
        }
    }

    private static String at(String path, int number) {
        return number == 1 ? path : path + "?page=" + number;
    }

    private void entry(FeedEntry entry) throws XMLStreamException {
        xml.writeStartElement("entry");
        text("id", tag(entry.path()));
        text("title", entry.name());
        text("updated", time(entry.publishedAt()));
        text("published", time(entry.publishedAt()));
        xml.writeStartElement("author");
        text("name", entry.contributor());
        xml.writeEndElement();
        link("alternate", "text/html", entry.path());
        xml.writeEmptyElement("category");
        xml.writeAttribute("term", entry.kind());
        if (entry.licence() != null) {
            text("rights", entry.licence().label());
            xml.writeEmptyElement("link");
            xml.writeAttribute("rel", "license");
            xml.writeAttribute("href", entry.licence().url());
        }
        text("summary", summary(entry));
        xml.writeEndElement();
    }

    private static String summary(FeedEntry entry) {
        String kind = entry.kind().replace('-', ' ');
        String what = Character.toUpperCase(kind.charAt(0)) + kind.substring(1) + ", revision " + entry.revision() + "."
                + (entry.invented() ? " Invented for demonstration." : "");
        return entry.summary() == null || entry.summary().isBlank() ? what : what + " " + entry.summary();
    }

    private void link(String rel, @Nullable String type, String path) throws XMLStreamException {
        xml.writeEmptyElement("link");
        xml.writeAttribute("rel", rel);
        if (type != null) {
            xml.writeAttribute("type", type);
        }
        xml.writeAttribute("href", base + path);
    }

    private void text(String name, String text) throws XMLStreamException {
        xml.writeStartElement(name);
        xml.writeCharacters(text.replaceAll(UNSAYABLE, "\uFFFD"));
        xml.writeEndElement();
    }

    private String tag(String path) {
        String host = URI.create(base).getHost();
        return "tag:" + (host == null ? "localhost" : host) + TAGGED + path;
    }

    private static String time(Instant at) {
        return at.truncatedTo(ChronoUnit.SECONDS).toString();
    }
}
