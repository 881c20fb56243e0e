package org.vanewright.sharing.web;

import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.context.request.WebRequest;
import org.vanewright.account.InstanceSettings;
import org.vanewright.platform.Downloads;
import org.vanewright.platform.GeneratedFile;
import org.vanewright.record.RecordNotFoundException;
import org.vanewright.record.RecordService;
import org.vanewright.record.Records;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;
import org.vanewright.record.web.RecordPaths;
import org.vanewright.sharing.CardPictures;

/** Pictures by which other sites show links to records. */
@Controller
class CardEndpoints {
    private final Records records;
    private final CardPictures pictures;
    private final InstanceSettings instance;
    private final Downloads downloads;

    CardEndpoints(Records records, CardPictures pictures, InstanceSettings instance, Downloads downloads) {
        this.records = records;
        this.pictures = pictures;
        this.instance = instance;
        this.downloads = downloads;
    }

    /** Of a public revision only: other sites fetch it without being anybody. */
    @GetMapping("/{plural:[a-z-]{1,40}}/" + RecordPaths.REVISION + "/card.png")
    ResponseEntity<byte[]> card(
            @PathVariable("plural") String plural,
            @PathVariable("slug") String slug,
            @PathVariable("number") int number,
            WebRequest request) {
        RecordService<?> service =
                records.ofPlural(plural).orElseThrow(() -> new RecordNotFoundException("record", slug, number));
        Revision<?> revision = service.find(new RevisionRef(slug, number))
                .filter(Revision::isPublic)
                .orElseThrow(() -> new RecordNotFoundException(service.kind(), slug, number));
        String club = instance.name();
        GeneratedFile file = new GeneratedFile(
                slug + "-card.png",
                MediaType.IMAGE_PNG,
                CardPictures.contentKey(service.kind(), revision, club),
                true,
                () -> pictures.png(service.kind(), revision, club));
        // The name of the instance may change, and with it the picture.
        return downloads.send(request, file, false);
    }
}
