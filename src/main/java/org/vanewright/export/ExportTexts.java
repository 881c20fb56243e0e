package org.vanewright.export;

import java.util.List;

/** The plain texts of the export. */
final class ExportTexts {
    private ExportTexts() {}

    static String cautions(List<String> cautions) {
        StringBuilder text = new StringBuilder("CAUTIONS\n\n");
        cautions.forEach(c -> text.append("- ").append(c).append('\n'));
        return text.append(
                        "- A revision whose state is WITHDRAWN is not to be built from or relied on; its reason stands"
                                + " beside it.\n")
                .toString();
    }

    static String readMe(DataPackage.Head head) {
        return """
                %s
                %s

                Everything published there, of every kind, with superseded and withdrawn revisions.

                datapackage.json  describes every file for programs (Data Package, specifications v1)
                tables/           comma-separated values (RFC 4180, UTF-8), units in the names of columns
                documents/        the document of every revision as it is hashed (canonical JSON, RFC 8785), one a line;
                                  the table of revisions names file and line
                photographs/      that public revisions show, named by their SHA-256
                CAUTIONS.txt      holds for everything here

                Each revision has a licence of its own: see tables/revisions.csv and tables/licences.csv. Keep the names
                of contributors where the licence asks for it.

                A text that a spreadsheet would run as a formula, since it begins with = + - or @, has an apostrophe in
                front in the tables. The documents have every text as it is.

                Without results of campaigns other than campaign_comparisons, which is computed from the published
                revision of each: it holds for its aircraft, conditions and speeds.

                To check files:    sha256sum -c manifest-sha256.txt
                To check line 12:  sed -n 12p documents/layouts.jsonl | tr -d '\\n' | sha256sum
                The same record gives the same bytes; nothing in the archive is compressed, since compression is not the
                same everywhere.
                """.formatted(head.title(), head.homepage());
    }
}
