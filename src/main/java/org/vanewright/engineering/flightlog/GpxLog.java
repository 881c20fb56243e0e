package org.vanewright.engineering.flightlog;

import java.io.InputStream;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * Tracks in the GPS Exchange Format, version 1.1 or 1.0: {@code trkpt} with {@code lat}, {@code lon} in degrees (WGS 84),
 * {@code ele} in metres and {@code time}. The altitude is the receiver's, not that of the altimeter.
 */
public final class GpxLog {
    private static final int MAX_DEPTH = 40;
    private static final int MAX_TEXT = 200;

    private final InputStream file;

    /** @param file read once; not closed */
    public GpxLog(InputStream file) {
        this.file = file;
    }

    /**
     * Reads all points. One without time or place, or no later than a good one before, is a bad row.
     *
     * @throws org.vanewright.engineering.input.InvalidInputException for what is no such file
     */
    public void read(SampleSink sink, RowTally tally) {
        try {
            XMLStreamReader xml = factory().createXMLStreamReader(file);
            try {
                walk(xml, new GpxTrack(sink, tally));
            } finally {
                xml.close();
            }
        } catch (XMLStreamException e) {
            RuntimeException refused = Refused.file("XML that cannot be read", "a GPX 1.1 file");
            refused.addSuppressed(e);
            throw refused;
        }
    }

    private static XMLInputFactory factory() {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        factory.setProperty(XMLInputFactory.IS_REPLACING_ENTITY_REFERENCES, false);
        // Long texts come in parts, of which only the beginning is kept.
        factory.setProperty(XMLInputFactory.IS_COALESCING, false);
        return factory;
    }

    private static void walk(XMLStreamReader xml, GpxTrack track) throws XMLStreamException {
        StringBuilder text = new StringBuilder();
        int depth = 0;
        while (xml.hasNext()) {
            switch (xml.next()) {
                case XMLStreamConstants.DTD, XMLStreamConstants.ENTITY_REFERENCE ->
                    throw Refused.file("a document type or an entity", "GPX without any");
                case XMLStreamConstants.START_ELEMENT -> {
                    depth++;
                    text.setLength(0);
                    start(xml, depth, track);
                }
                case XMLStreamConstants.CHARACTERS -> {
                    int room = Math.min(MAX_TEXT - text.length(), xml.getTextLength());
                    text.append(xml.getTextCharacters(), xml.getTextStart(), room);
                }
                case XMLStreamConstants.END_ELEMENT -> {
                    depth--;
                    track.end(xml.getLocalName(), text.toString().trim());
                    text.setLength(0);
                }
                default -> {}
            }
        }
        track.finish();
    }

    private static void start(XMLStreamReader xml, int depth, GpxTrack track) {
        String name = xml.getLocalName();
        if (depth == 1 && !name.equals("gpx")) {
            throw Refused.file("XML that begins with <" + shortened(name) + ">", "a GPX 1.1 file");
        }
        if (depth > MAX_DEPTH) {
            throw Refused.file("XML more than " + MAX_DEPTH + " levels deep", "a GPX 1.1 file");
        }
        if (name.equals("trkseg")) {
            track.segment();
        }
        if (name.equals("trkpt")) {
            track.point(number(xml, "lat"), number(xml, "lon"));
        }
    }

    private static String shortened(String name) {
        return name.length() <= 40 ? name : name.substring(0, 39) + "…";
    }

    private static double number(XMLStreamReader xml, String attribute) {
        String text = xml.getAttributeValue(null, attribute);
        return text == null ? Double.NaN : CsvNumbers.read(text.trim());
    }
}
