package org.vanewright.security;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.vanewright.account.NewPeople.NewPerson;
import org.vanewright.account.Role;
import org.vanewright.testing.ServerTest;
import org.vanewright.testing.SignedIn;

/** Drafts that a program saves with parts missing or senseless: every page of theirs shows what is there. */
class OddDraftsTest extends ServerTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "airframes | {}",
                "airframes | {\"name\":null,\"surfaces\":null}",
                "airframes | {\"surfaces\":[null]}",
                "airframes | {\"surfaces\":[{}]}",
                "airframes | {\"surfaces\":[{\"kind\":\"WING\",\"panels\":[null],\"keepOuts\":[null]}]}",
                "airframes | {\"surfaces\":[{\"kind\":\"FIN\",\"panels\":[{}],\"keepOuts\":[{}]}]}",
                "airframes | {\"surfaces\":[{\"panels\":[{\"innerSection\":{},\"innerChordMm\":1e300}]}]}",
                "airframes | {\"surfaces\":[{\"panels\":[{\"innerSection\":{\"naca\":\"\"},\"outerStationMm\":-1}]}]}",
                "airframes | {\"masses\":{},\"speeds\":{},\"wingAreaM2\":-1e308}",
                "devices | {}",
                "devices | {\"vane\":null,\"base\":null,\"pair\":null}",
                "devices | {\"vane\":{},\"base\":{},\"pair\":{}}",
                "devices | {\"vane\":{\"heightMm\":1e300,\"lengthMm\":-1},\"densityKgM3\":0}",
                "devices | {\"chordToleranceMm\":1e-300,\"base\":{\"lengthMm\":1e-300}}",
                "campaigns | {}",
                "campaigns | {\"plan\":null,\"points\":[null]}",
                "campaigns | {\"plan\":{\"configurations\":[null,{}],\"instruments\":[{}],\"roles\":[null,{}]}}",
                "campaigns | {\"points\":[{}],\"handling\":[{},null]}",
                "campaigns | {\"tufts\":[null,{},{\"id\":\"../x\",\"wings\":\"LEFT\",\"stationsMm\":[-1,null],\"surveys\":[null,{}]}]}",
                "campaigns | {\"tufts\":[{\"id\":\"x\",\"wings\":\"BOTH\",\"stationsMm\":[1e300],\"chordFractions\":[0],\"surveys\":[{\"states\":\"<\"}]}]}",
                "campaigns | {\"plan\":{\"airframe\":{\"slug\":\"nothing\",\"revision\":9},\"repeats\":{\"perConfiguration\":-1,\"perSortie\":0}}}",
                "installations | {}",
                "installations | {\"conditions\":null,\"samples\":[null,{}],\"leftOff\":[null,{}],\"tolerances\":{}}",
                "installations | {\"layout\":{\"slug\":\"low-wing-pairs-over-the-taper\",\"revision\":1},\"samples\":[{\"at\":{\"surface\":\"Wing\",\"wing\":\"LEFT\",\"device\":-1},\"angleDeg\":1e300}]}",
                "installations | {\"layout\":{\"slug\":\"../x\",\"revision\":-1},\"adhesive\":{\"slug\":\"nothing\",\"revision\":9},\"printRun\":{\"slug\":\"nothing\",\"revision\":9}}",
                "inspections | {}",
                "inspections | {\"losses\":[null,{}],\"hoursFlown\":1e300}",
                "inspections | {\"installation\":{\"slug\":\"../x\",\"revision\":-1},\"losses\":[{\"at\":{}}]}",
                "inspections | {\"installation\":{\"slug\":\"pairs-over-the-taper-put-on-in-spring\",\"revision\":1},\"losses\":[{\"at\":{\"surface\":\"\",\"wing\":\"LEFT\",\"device\":0},\"state\":\"LOOSE\"}]}",
                "layouts | {}",
                "layouts | {\"rows\":null,\"airframe\":null}",
                "layouts | {\"rows\":[]}",
                "layouts | {\"rows\":[null]}",
                "layouts | {\"rows\":[{}]}",
                "layouts | {\"rows\":[null,{},null],\"airframe\":{\"slug\":\"quillmere-tapered-low-wing\",\"revision\":1}}",
                "layouts | {\"rows\":[{\"device\":{\"slug\":\"nothing\",\"revision\":9}}]}",
                "layouts | {\"airframe\":{\"slug\":\"nothing\",\"revision\":2147483647}}",
                "layouts | {\"airframe\":{\"slug\":\"\",\"revision\":-1}}",
                "layouts | {\"airframe\":{\"slug\":\"../x\",\"revision\":1},\"rows\":[{\"pitchMm\":0,\"fromMm\":1e300}]}",
            })
    void whatCanBeSavedCanBeShown(String plural, String document) {
        NewPerson author = newPerson(Role.MEMBER);
        String bearer = bearer(author);
        var saved = postJson("/api/v1/" + plural, document, "Authorization", bearer);
        String id = json(saved, 201).get("id").asString();
        assertThat(json(saved, 201).get("problems").size()).isPositive();

        SignedIn person = signIn(author);
        person.page("/drafts", 200);
        assertThat(person.page("/drafts/" + id, 200).text()).contains("Without a name yet");
        assertThat(person.page("/" + plural + "/drafts/" + id, 200).select("form input[name=name]"))
                .isNotEmpty();
        assertThat(person.page("/drafts/" + id + "/submit", 200).select("section.problems a"))
                .isNotEmpty();
        person.page("/drafts/" + id + "/discard", 200);
        assertThat(json(get("/api/v1/drafts/" + id, "Authorization", bearer), 200)
                        .get("content"))
                .isEqualTo(json(saved, 201).get("content"));
    }
}
