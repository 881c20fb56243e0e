package org.vanewright.engineering.drawing;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSDocument;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.cos.COSObjectKey;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;

/** A PDF with nothing in it compressed, so that its bytes do not depend on a build of zlib. */
public final class PlainPdf {
    private PlainPdf() {}

    /** The same pages, larger. */
    public static byte[] of(byte[] pdf) {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            COSDocument objects = document.getDocument();
            List<COSObjectKey> keys = new ArrayList<>(objects.getXrefTable().keySet());
            for (COSObjectKey key : keys) {
                COSObject object = objects.getObjectFromPool(key);
                if (object.getObject() instanceof COSStream stream && stream.containsKey(COSName.FILTER)) {
                    expand(stream);
                }
            }
            // left over from the compressed table of objects, which becomes a plain one
            for (COSName name : List.of(COSName.TYPE, COSName.FILTER, COSName.W, COSName.INDEX, COSName.LENGTH)) {
                objects.getTrailer().removeItem(name);
            }
            ByteArrayOutputStream out = new ByteArrayOutputStream(pdf.length * 4);
            document.save(out, CompressParameters.NO_COMPRESSION);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException("memory only, so nothing outside can fail", e);
        }
    }

    private static void expand(COSStream stream) throws IOException {
        byte[] plain;
        try (InputStream in = stream.createInputStream()) {
            plain = in.readAllBytes();
        }
        stream.removeItem(COSName.FILTER);
        stream.removeItem(COSName.DECODE_PARMS);
        try (OutputStream to = stream.createOutputStream()) {
            to.write(plain);
        }
    }
}
