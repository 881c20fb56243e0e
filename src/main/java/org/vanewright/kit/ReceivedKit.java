package org.vanewright.kit;

import java.util.List;

/**
 * A kit that was sent and is sound.
 *
 * @param layout path of the layout's document
 * @param documents every revision, a named one before what names it
 * @param photographs hashes of those that come with it
 */
record ReceivedKit(String layout, List<Document> documents, List<String> photographs) {
    /**
     * A revision.
     *
     * @param canonical its document
     * @param provenance its history
     */
    record Document(KitIndex.Entry entry, String canonical, String provenance) {}

    Document main() {
        return documents.stream()
                .filter(d -> layout.equals(d.entry().path()))
                .findFirst()
                .orElseThrow();
    }
}
