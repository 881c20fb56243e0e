package org.vanewright.record.web;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.nio.charset.StandardCharsets;
import org.springframework.http.CacheControl;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RestController;
import org.springframework.web.servlet.support.ServletUriComponentsBuilder;
import org.vanewright.record.CanonicalJson;
import org.vanewright.record.RecordNotFoundException;
import org.vanewright.record.RecordService;
import org.vanewright.record.Records;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;
import org.vanewright.record.provenance.RevisionProvenance;

/** The history of any revision as W3C PROV-JSON, beside its page and beside its JSON. */
@RestController
@Tag(name = "Provenance", description = "Who made a revision from what, as W3C PROV-JSON.")
class RevisionProvenances {
    private static final String PROVENANCE = "/{plural:[a-z]{1,20}}/" + RecordPaths.REVISION + "/provenance.json";

    private final Records records;
    private final CanonicalJson json;

    RevisionProvenances(Records records, CanonicalJson json) {
        this.records = records;
        this.json = json;
    }

    /** The history of one exact revision. */
    @Operation(summary = "Where a revision and its figures come from, as W3C PROV-JSON")
    @GetMapping(path = {"/api/v1" + PROVENANCE, PROVENANCE})
    ResponseEntity<byte[]> provenance(
            @PathVariable("plural") String plural,
            @PathVariable("slug") String slug,
            @PathVariable("number") int number) {
        RecordService<?> service =
                records.ofPlural(plural).orElseThrow(() -> new RecordNotFoundException("kind of record", plural, null));
        Revision<?> revision = service.exactly(new RevisionRef(slug, number));
        String base =
                ServletUriComponentsBuilder.fromCurrentContextPath().path("/").toUriString();
        String prov = json.write(RevisionProvenance.of(base, plural, revision));
        return ResponseEntity.ok()
                .eTag("\"" + json.sha256(prov) + "\"")
                .cacheControl(revision.isPublic() ? CacheControl.noCache() : CacheControl.noStore())
                .contentType(MediaType.APPLICATION_JSON)
                .body(prov.getBytes(StandardCharsets.UTF_8));
    }
}
