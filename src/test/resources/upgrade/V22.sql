-- What the release with schema 22 kept beside what the one with 19 did: its search, what lists say, a photograph whose bytes
-- lie outside, and work that is done for everybody.
update search_index set version = 1, changes = 7;
insert into search_signature (id, sha256) values
(1, '1212121212121212121212121212121212121212121212121212121212121212');
insert into search_facet (signature_id, facet, choice, label, place) values
(1, 'kind', 'device', 'Device', 0),
(1, 'height', '8-10', '8 to under 10 mm', 2);
insert into search_entry (id, kind, slug, revision, name, summary, picture, invented, contributor, published_at, effect_ppm, effect, prominence, signature_id, version) values
(1, 'device', 'rectangular-vane-8-by-20', 1, 'Rectangular vane, 8 by 20', 'A “vane”', '/devices/rectangular-vane-8-by-20/revisions/1/thumbnail.svg', true, 'Club of the fixture', TIMESTAMP WITH TIME ZONE '2026-11-29 02:40:07.123456+00', -1, NULL, 80, 1, 1);
insert into search_vocabulary (word, stem) values
('vane', 'vane'),
('4412', '4412');
insert into record_summary (kind, slug, revision, version, summary) values
('layout', 'low-wing-pairs-over-the-taper', 1, 1, '{"devices":60}');
insert into photograph (sha256, large, small, is_public, created_at) values
('3434343434343434343434343434343434343434343434343434343434343434', NULL, NULL, true, TIMESTAMP WITH TIME ZONE '2026-11-29 02:40:07.123456+00');
insert into photograph_owner (sha256, person_id, added_at) values
('3434343434343434343434343434343434343434343434343434343434343434', '7d0c2a41-53c7-4f0e-9d3a-0f6d4d0f2b11', TIMESTAMP WITH TIME ZONE '2026-11-29 02:40:07.123456+00');
update job set slot = 'export' where id = 'f0000000-0000-4000-8000-000000000001';
